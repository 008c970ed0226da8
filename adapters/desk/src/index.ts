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
export { engineAt, serveEngine, type Port } from './engine/link.ts';
