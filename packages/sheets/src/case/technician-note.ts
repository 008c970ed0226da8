/**
 * The technician's note: what it is, how sure, what to bring, what was measured and what to watch
 * out for, to be taken in within ten seconds.
 */
import { isReading } from '@keyturn/core';
import type { Block, Sheet } from '../sheet.ts';
import { isolated } from '../words/sheet-words-in.ts';
import { vehicleBlock } from './case-sheet.ts';
import { framed } from './sheet-frame.ts';
import type { SheetOptions } from './sheet-options.ts';
import { tellCase, type ToldCase } from './told-case.ts';

/** How many faults are named while there is no verdict. */
const namedFaults = 3;

/**
 * The note for whoever takes over. Pure; the same case, words and dates give the same note.
 */
export function technicianNote(options: SheetOptions): Sheet {
  const told = tellCase(options);
  const { words } = told;
  const rows = [
    { id: 'also', label: words.also, lines: alsoLines(told) },
    { id: 'so-far', label: words.soFar, lines: soFarLines(told) },
    { id: 'do', label: words.do, lines: sectionLines(told, 'do').slice(0, 1) },
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

/** Every figure that was read, shortly. */
function measuredLines(told: ToldCase): readonly string[] {
  const { strip, case: kase, speaker, words } = told;
  const readings = [...strip.findings, ...strip.proving].flatMap(({ check, message }) => {
    const isMeasured = message.kind === 'reading' && isReading(kase.state.answers[check]?.at(-1));
    if (!isMeasured || told.chart.flow.checks[check]?.writes !== undefined) return [];
    const figure = speaker.formatQuantity(message.quantity);
    const band = message.band === '' ? '' : ` (${speaker.answerLabel(check, message.band)})`;
    return [isolated(`${speaker.checkName(check)}: ${figure}${band}`, speaker.direction)];
  });
  return readings.length === 0 ? [words.nothingMeasured] : readings;
}

/** What must not be done, and what can hurt. */
function watchLines(told: ToldCase): readonly string[] {
  const { cautions, speaker } = told;
  return [
    ...sectionLines(told, 'stops'),
    ...cautions.map(({ said, text }) => isolated(`${said}: ${text}`, speaker.direction)),
  ];
}
