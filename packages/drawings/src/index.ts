export { drawReading, type ReadingOptions, type RenderedScale } from './reading/draw-reading.ts';
export {
  drawCircuit,
  type CircuitFinding,
  type CircuitView,
  type Probes,
} from './circuit/draw-circuit.ts';
export { circuitOf, isClampInHand, isReadWithClamp, probesInHand } from './circuit/circuit-of.ts';
export type { CircuitVehicle } from './circuit/circuit.ts';
export type { DrawingOptions } from './svg/picture.ts';
export type { Theme } from './theme.ts';
export { drawProbes } from './closeup/draw-probes.ts';
export { drawRanking, type RenderedRanking } from './ranking/draw-ranking.ts';
export { drawClamp } from './clamp/draw-clamp.ts';
export { drawPlaces } from './bay/draw-places.ts';
