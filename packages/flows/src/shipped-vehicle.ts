import { flowByHand, type Chart } from '@keyturn/core';
import { createSpeaker, textsByHand, type VehicleListener } from '@keyturn/language';
import { shippedFlow, shippedTexts } from './shipped-flow.ts';

/** The flow of vehicles' cases. */
const vehicleFlow = 'no-start';

/** The flow of vehicles' cases, and who hears readings of it by hand in one language. */
type ShippedVehicle = VehicleListener & { readonly chart: Chart };

const made = new Map<string, ShippedVehicle>();

/** Gives them for a language; made once for each. */
export function shippedVehicle(locale: string): ShippedVehicle {
  const vehicle = made.get(locale) ?? makeVehicle(locale);
  made.set(locale, vehicle);
  return vehicle;
}

function makeVehicle(locale: string): ShippedVehicle {
  const { chart } = shippedFlow(vehicleFlow, 'en');
  const flow = flowByHand(chart.flow);
  const flowTexts = textsByHand(flow, shippedTexts(vehicleFlow, locale));
  return { chart, flow, speaker: createSpeaker({ locale, flowTexts, checks: flow.checks }) };
}
