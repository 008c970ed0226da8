/**
 * What the pictures show of a case: the circuit with what was measured, and the present leads. Pure.
 */
import { isReading, positionOf, type Case, type Chart, type Check } from '@keyturn/core';
import type { CircuitVehicle } from './circuit.ts';
import type { CircuitFinding, CircuitView, Probes } from './draw-circuit.ts';

/** The leads of the check in hand; undefined where it needs none. */
export function probesInHand(chart: Chart, kase: Case): Probes | undefined {
  const position = positionOf(kase);
  return position.awaiting === 'answer' ? chart.flow.checks[position.check]?.probes : undefined;
}

/** True where the check in hand is read with a clamp meter, which has to be held rightly. */
export function isClampInHand(chart: Chart, kase: Case): boolean {
  const position = positionOf(kase);
  return position.awaiting === 'answer' && isReadWithClamp(chart.flow.checks[position.check]);
}

/** True for a current that is read without a lead, with a clamp meter. */
export function isReadWithClamp(check: Check | undefined): boolean {
  return (
    check?.form.kind === 'reading' &&
    check.form.unit === 'A' &&
    check.needs.flat().includes('clamp-meter')
  );
}

/** The start circuit of a case: what is known of it, what was measured, and the suspect. */
export function circuitOf(
  chart: Chart,
  kase: Case,
  nameOf: (fault: string) => string,
): CircuitView {
  const { order, answers, verdict, leaders, context } = kase.state;
  const fault = verdict?.fault ?? leaders[0]?.[0];
  const found = order.flatMap((check): readonly CircuitFinding[] => {
    const answer = answers[check]?.at(-1);
    const { probes, form } = chart.flow.checks[check] ?? {};
    // Without leads only a clamp meter measures in the circuit.
    const isThere = probes !== undefined || (form?.kind === 'reading' && form.unit === 'A');
    return isReading(answer) && isThere ? [{ check, quantity: answer, probes }] : [];
  });
  const vehicle = Object.fromEntries(
    ['nominal', 'transmission', 'ignition'].flatMap((field) => {
      const value = context[`vehicle.${field}`];
      return value === undefined ? [] : [[field, value]];
    }),
  ) as CircuitVehicle;
  return {
    vehicle,
    probes: probesInHand(chart, kase),
    found,
    suspect: fault === undefined ? undefined : { id: fault, name: nameOf(fault) },
  };
}
