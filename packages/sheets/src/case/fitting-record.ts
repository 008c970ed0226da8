/**
 * The fitting record: each step of taking out and fitting a part with what was read at it, and what
 * proves that it is done.
 */
import type { Block, Sheet } from '../sheet.ts';
import { printedFindings } from './findings-block.ts';
import { sectionBlocks } from './section-blocks.ts';
import { framed } from './sheet-frame.ts';
import type { SheetOptions } from './sheet-options.ts';
import { tellCase } from './told-case.ts';
import { vehicleFacts } from './vehicle-facts.ts';

/**
 * The record of a case of a fitting: the outcome, every step in its order with its judged reading,
 * torque figures with where they come from, what is still to be done, and places to sign. Pure.
 */
export function fittingRecord(options: SheetOptions): Sheet {
  const told = tellCase(options);
  const { chart, case: kase, speaker, words, strip, cautions } = told;
  const blocks: readonly Block[] = [
    {
      kind: 'facts',
      id: 'vehicle',
      heading: words.vehicle,
      facts: vehicleFacts({ flow: chart.flow, state: kase.state, speaker, words }),
    },
    ...sectionBlocks(told, ['do', 'stops', 'rests']),
    {
      kind: 'strip',
      id: 'steps',
      heading: words.steps,
      findings: printedFindings(strip.findings, 1, told),
    },
    { kind: 'cautions', id: 'cautions', heading: words.cautions, cautions },
    {
      kind: 'fields',
      id: 'signed',
      heading: words.signed,
      fields: [
        { id: 'fitted-by', label: words.fittedBy },
        { id: 'received-by', label: words.signedFor },
      ],
    },
  ];
  return framed(told, { kind: 'fitting', title: words.fittingRecord, blocks });
}
