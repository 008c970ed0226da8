import type { Source } from '../source.ts';
import { generatorTerminals, terminalDesignations } from '../tables/terminal-designation.ts';

/** One terminal: its mark as the standard writes it, what it means, and its source. */
export type TerminalDesignation = {
  readonly terminal: string;
  readonly meaning: string;
  readonly source: Source;
};

function key(mark: string): string {
  return mark.replace(/\s/gu, '').toLowerCase();
}

const designations: ReadonlyMap<string, TerminalDesignation> = new Map(
  [terminalDesignations, generatorTerminals].flatMap(({ rows, source }) =>
    Object.entries(rows).map(([terminal, meaning]): [string, TerminalDesignation] => [
      key(terminal),
      { terminal, meaning, source },
    ]),
  ),
);

/**
 * What the mark on a terminal means, whatever its case and blanks; undefined for a mark that is
 * not in the tables.
 *
 * 85 and 86 may be exchanged unless the relay has a diode inside, and relays with one exist both
 * ways round: the symbol on its case decides. Sources: DIN 72552 as reported; B+ and D+ from memory.
 *
 * @example
 * terminalDesignation(' 15 A ')?.terminal; // '15a'
 */
export function terminalDesignation(mark: string): TerminalDesignation | undefined {
  return designations.get(key(mark));
}
