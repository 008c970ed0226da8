import type { Figures } from './numbers/figures.ts';
import type { FlowWords } from './flow-words.ts';
import type { Say } from './texts/text-key.ts';

/** All that a message needs to be put into words. */
export interface Voice {
  readonly say: Say;
  readonly flow: FlowWords;
  readonly figures: Figures;
  /** Who reads it; a driver is given the driver's words where a remedy has them. */
  readonly role: string | undefined;
}
