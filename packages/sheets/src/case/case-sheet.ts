/**
 * The case sheet: all that is known of a case, in the order in which it came to be.
 */
import { circuitOf, drawCircuit, drawRanking } from '@keyturn/drawings';
import { doneMessage, type Weighted } from '@keyturn/core';
import type { Block, Sheet } from '../sheet.ts';
import { printedFindings } from './findings-block.ts';
import { openProofs } from './open-proofs.ts';
import { framed } from './sheet-frame.ts';
import type { SheetOptions } from './sheet-options.ts';
import { tellCase, type ToldCase } from './told-case.ts';
import { sectionBlocks } from './section-blocks.ts';
import { vehicleFacts } from './vehicle-facts.ts';

/** How many faults the ranking on a sheet shows. */
const rankedFaults = 5;

/**
 * The case sheet: the vehicle, every finding with its ruler and bounds, the ranking, the verdict
 * and what it rests on, the remedy, cautions, the proof of the repair, the circuit with what was
 * measured, and places to sign. Pure; the same case, words and dates give the same sheet.
 */
export function caseSheet(options: SheetOptions): Sheet {
  const told = tellCase(options);
  const { words, strip, numbers, cautions } = told;
  const losses = numbers.get('losses');
  const blocks: readonly Block[] = [
    vehicleBlock(told),
    {
      kind: 'strip',
      id: 'found',
      heading: words.found,
      findings: printedFindings(strip.findings, 1, told),
    },
    {
      kind: 'lines',
      id: 'losses',
      heading: losses?.heading ?? '',
      lines: losses?.lines ?? [],
    },
    ...rankingBlock(told),
    ...sectionBlocks(told),
    { kind: 'cautions', id: 'cautions', heading: words.cautions, cautions },
    ...proofBlocks(told),
    circuitBlock(told),
    {
      kind: 'fields',
      id: 'signed',
      heading: words.signed,
      fields: [
        { id: 'examined-by', label: words.signedBy },
        { id: 'received-by', label: words.signedFor },
      ],
    },
  ];
  return framed(told, { kind: 'case', title: words.caseSheet, blocks });
}

/** The complaint and what is known of the vehicle. */
export function vehicleBlock(told: ToldCase): Block {
  const { chart, case: kase, speaker, words, strip } = told;
  const { flow } = chart;
  const complaint = strip.findings.filter(({ check }) => check === 'complaint');
  return {
    kind: 'facts',
    id: 'vehicle',
    heading: words.vehicle,
    facts: [
      ...printedFindings(complaint, 1, told).map(({ check, name, said }) => ({
        id: check,
        label: name,
        text: said,
      })),
      ...vehicleFacts({ flow, state: kase.state, speaker, words }),
    ],
  };
}

function rankingBlock({ strip, case: kase, speaker }: ToldCase): readonly Block[] {
  const shares = (strip.verdict?.ranking ?? kase.state.leaders).slice(0, rankedFaults);
  const before: readonly Weighted[] = shares;
  return speaker.render([{ kind: 'ranking', faults: shares, before }]).flatMap((one) => {
    if (one.kind !== 'ranking') return [];
    const faults = one.faults.map(({ id, name, share }) => ({
      id,
      share,
      said: speaker.formatShare(name, share),
    }));
    const svg = drawRanking({ ...one, heading: '' }, { speaker, theme: 'print' });
    const description = faults.map(({ said }) => said).join('\n');
    const picture = { svg, description };
    return [{ kind: 'ranking', id: 'ranking', heading: one.heading, faults, picture }];
  });
}

/** What was measured after the repair, how the case ended, and what is still to be measured. */
function proofBlocks(told: ToldCase): readonly Block[] {
  const { chart, words, strip, case: kase, speaker } = told;
  const outcome =
    kase.state.outcome === null
      ? []
      : speaker
          .render([doneMessage(chart.flow, kase.state)])
          .flatMap((one) => (one.kind === 'done' ? [one.text] : []));
  return [
    {
      kind: 'strip',
      id: 'proof',
      heading: words.proof,
      findings: printedFindings(strip.proving, strip.findings.length + 1, told),
    },
    { kind: 'lines', id: 'outcome', heading: '', lines: outcome },
    openProofs(told),
  ];
}

function circuitBlock({ chart, case: kase, speaker }: ToldCase): Block {
  const view = circuitOf(chart, kase, speaker.faultName);
  const svg = drawCircuit({ ...view, probes: undefined }, { speaker, theme: 'print' });
  const picture = { svg, description: speaker.drawing('circuitShows') };
  return { kind: 'picture', id: 'circuit', heading: speaker.drawing('circuit'), picture };
}
