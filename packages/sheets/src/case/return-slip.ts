/**
 * The return slip: what was decided of a part that came back, and why, so that the customer can
 * follow every figure of it.
 */
import type { Block, Sheet } from '../sheet.ts';
import { printedFindings } from './findings-block.ts';
import { policyFacts } from './policy-facts.ts';
import { sectionBlocks } from './section-blocks.ts';
import { framed } from './sheet-frame.ts';
import type { SheetOptions } from './sheet-options.ts';
import { tellCase } from './told-case.ts';
import { vehicleFacts } from './vehicle-facts.ts';

/**
 * The slip of a case of a return: the decision in words for the customer, the arithmetic of what is
 * paid back, every figure with its bands and bounds, what to measure on the vehicle before another
 * part is fitted, the customer's rights before the terms of the shop, and places to sign. Pure.
 */
export function returnSlip(options: SheetOptions): Sheet {
  const told = tellCase(options);
  const { chart, case: kase, speaker, words, strip, cautions } = told;
  const blocks: readonly Block[] = [
    {
      kind: 'facts',
      id: 'part',
      heading: words.part,
      facts: vehicleFacts({ flow: chart.flow, state: kase.state, speaker, words }),
    },
    ...sectionBlocks(told, ['refund', 'do', 'stops', 'measure', 'rests']),
    {
      kind: 'strip',
      id: 'found',
      heading: words.found,
      findings: printedFindings(strip.findings, 1, told),
    },
    ...sectionBlocks(told, ['change']),
    { kind: 'cautions', id: 'cautions', heading: words.cautions, cautions },
    ...sectionBlocks(told, ['rights']),
    { kind: 'facts', id: 'terms', heading: words.terms, facts: policyFacts(told) },
    {
      kind: 'fields',
      id: 'signed',
      heading: words.signed,
      fields: [
        { id: 'decided-by', label: words.decidedBy },
        { id: 'read-by', label: words.readBy },
      ],
    },
  ];
  return framed(told, { kind: 'return', title: words.returnSlip, blocks });
}
