/** The desk, for a build that brings its own flow and languages. */
export { defineKeyturnDesk, type DeskParts } from './keyturn-desk.ts';
export { deskSpeaker, type DeskPack, type LoadPack } from './desk-pack.ts';
export type { DeskWords } from './words/desk-words.ts';

/** The seam where a server and a second desk come in. */
export type { DeskBook, DeskStore, Kept } from './store/desk-store.ts';
export type { Caller, CallerField, DeskCase, Sent } from './case/desk-case.ts';

/** What takes cases further, and the two ends of the worker that it runs in. */
export {
  createEngine,
  type Engine,
  type Laid,
  type SpeakerFor,
  type Turned,
} from './engine/engine.ts';
export { callsAt, engineAt, serveEngine, type Port } from './engine/link.ts';

/** The parts counter, the same way: its element, its store, its engine and the calls of its worker. */
export { defineKeyturnCounter, type CounterParts } from './counter/keyturn-counter.ts';
export { counterSpeaker, type CounterPack, type LoadCounterPack } from './counter/counter-pack.ts';
export type { CounterWords } from './counter/words/counter-words.ts';
export type { CounterBook, CounterStore, KeptReturn } from './counter/store/counter-store.ts';
export type { CounterReturn } from './counter/return/counter-return.ts';
export {
  counterCalls,
  createCounterEngine,
  type CounterEngine,
} from './counter/engine/counter-engine.ts';
