/**
 * The technician's note: what it is, how sure, what to bring, what was measured and what to watch
 * out for, to be taken in within ten seconds.
 */
import type { CautionMessage } from '@keyturn/core';
import type { Block, Sheet } from '../sheet.ts';
import { isolated } from '../words/sheet-words-in.ts';
import { vehicleBlock } from './case-sheet.ts';
import { framed } from './sheet-frame.ts';
import type { SheetOptions } from './sheet-options.ts';
import { sayCautions, tellCase, type ToldCase } from './told-case.ts';

/** How many faults are named while there is no verdict. */
const namedFaults = 3;

/** More figures than this are not taken in at a glance; the case sheet has them all. */
const shownReadings = 6;

/**
 * The note for whoever takes over. Pure; the same case, words and dates give the same note.
 */
export function technicianNote(options: SheetOptions): Sheet {
  const told = tellCase(options);
  const { words } = told;
  const rows = [
    { id: 'also', label: words.also, lines: alsoLines(told) },
    { id: 'so-far', label: words.soFar, lines: soFarLines(told) },
    { id: 'bring', label: words.bring, lines: bringLines(told) },
    { id: 'measured', label: words.measured, lines: measuredLines(told) },
    { id: 'watch', label: words.watch, lines: watchLines(told) },
  ].filter(({ lines }) => lines.length > 0);
  const blocks: readonly Block[] = [
    { kind: 'rows', id: 'note', heading: '', rows },
    vehicleBlock(told),
    {
      kind: 'fields',
      id: 'signed',
      heading: '',
      fields: [{ id: 'examined-by', label: words.signedBy }],
    },
  ];
  return framed(told, { kind: 'technician', title: words.technicianNote, blocks });
}

function sectionLines({ verdict }: ToldCase, id: string): readonly string[] {
  return verdict?.sections.find((section) => section.id === id)?.lines ?? [];
}

/** The second fault, where there are two at once. */
function alsoLines({ speaker, strip }: ToldCase): readonly string[] {
  const also = strip.verdict?.also?.fault;
  return also === undefined ? [] : [speaker.faultName(also)];
}

/** The likeliest faults while nothing is decided. */
function soFarLines({ strip, case: kase, speaker }: ToldCase): readonly string[] {
  return strip.verdict === null
    ? kase.state.leaders
        .slice(0, namedFaults)
        .map(([id, share]) => speaker.formatShare(speaker.faultName(id), share))
    : [];
}

/** What whoever is sent brings, and what would settle what is open. */
function bringLines(told: ToldCase): readonly string[] {
  const lacks = told.strip.verdict?.settle.some((one) => one.lacks.length > 0) === true;
  return [...sectionLines(told, 'send'), ...(lacks ? sectionLines(told, 'change') : [])];
}

/** The figures that were read, shortly: those that the verdict rests on first. */
function measuredLines(told: ToldCase): readonly string[] {
  const { chart, strip, speaker, words } = told;
  const proof = new Set(strip.verdict?.proof.map(([check]) => check));
  const readings = [...strip.findings, ...strip.proving].flatMap(({ check, message }) =>
    // What only fills the context, such as the air temperature, stands with the vehicle.
    message.kind === 'reading' && chart.flow.checks[check]?.writes === undefined ? [message] : [],
  );
  const lines = readings
    .toSorted((a, b) => Number(proof.has(b.check)) - Number(proof.has(a.check)))
    .slice(0, shownReadings)
    .map(({ check, quantity, band }) => {
      const figure = speaker.formatQuantity(quantity);
      const meaning = band === '' ? '' : ` (${speaker.answerLabel(check, band)})`;
      return isolated(`${speaker.checkName(check)}: ${figure}${meaning}`, speaker.direction);
    });
  return lines.length === 0 ? [words.nothingMeasured] : lines;
}

/** What can hurt in the work that is left to the technician, where nobody else may do it. */
function cautionsOfWork({ chart, strip }: ToldCase): readonly CautionMessage[] {
  const { flow } = chart;
  if (strip.verdict?.waits !== true) return [];
  return (flow.faults[strip.verdict.fault]?.cautions ?? []).flatMap((id) => {
    const caution = flow.cautions[id];
    return caution === undefined
      ? []
      : [{ kind: 'caution', caution: id, word: caution.word, confirm: caution.confirm }];
  });
}

/** What must not be done, and what can hurt. */
function watchLines(told: ToldCase): readonly string[] {
  const { cautions, speaker } = told;
  const ofWork = sayCautions(cautionsOfWork(told), speaker).filter(
    ({ id }) => !cautions.some((one) => one.id === id),
  );
  return [
    ...sectionLines(told, 'stops'),
    ...[...cautions, ...ofWork].map(({ said, text }) =>
      isolated(`${said}: ${text}`, speaker.direction),
    ),
  ];
}
