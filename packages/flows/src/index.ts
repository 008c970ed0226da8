/** The flows of this checkout, and their words in each language. */
export {
  FlowError,
  shippedFlow,
  shippedFlowNames,
  shippedLocales,
  shippedTexts,
  type ShippedFlow,
} from './shipped-flow.ts';
export { shippedVehicle } from './shipped-vehicle.ts';
export { shopTerms, TermsError } from './shop-terms.ts';
