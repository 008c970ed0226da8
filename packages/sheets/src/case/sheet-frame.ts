/**
 * What every sheet of a case has: whose it is, what matters most, the code, what stands below.
 */
import type { Case } from '@keyturn/core';
import { encodeFindings } from '../code/encode-findings.ts';
import { drawQr } from '../qr/draw-qr.ts';
import { sheetFormat, type Block, type Fact, type Sheet, type SheetKind } from '../sheet.ts';
import { isolated } from '../words/sheet-words-in.ts';
import type { ToldCase } from './told-case.ts';

/** A sheet of a case, with these blocks on it. */
export function framed(
  told: ToldCase,
  sheet: {
    readonly kind: SheetKind;
    readonly title: string;
    readonly blocks: readonly Block[];
    /** In place of the case and its dates; the case then stands at the foot. */
    readonly head?: readonly Fact[];
    /** In place of the verdict and how sure it is. */
    readonly lead?: Sheet['lead'];
  },
): Sheet {
  const { chart, case: kase, speaker, words, strip, made } = told;
  return {
    format: sheetFormat,
    kind: sheet.kind,
    locale: speaker.locale,
    direction: speaker.direction,
    title: sheet.title,
    subject: speaker.flowName,
    case: {
      id: kase.id,
      flow: chart.flow.id,
      version: chart.flow.version,
      at: instant(kase.state.at),
    },
    made: instant(made),
    head: sheet.head ?? headOf(told),
    decision: decisionOf(kase),
    verdict:
      strip.verdict === null
        ? null
        : {
            fault: strip.verdict.fault,
            strength: strip.verdict.strength,
            probability: strip.verdict.probability,
          },
    lead: sheet.lead ?? leadOf(told),
    code: codeOf(told),
    blocks: sheet.blocks.filter((block) => !isEmpty(block)),
    foot: [
      words.foot,
      ...(sheet.head === undefined
        ? []
        : [`${words.case}: ${isolated(kase.id, speaker.direction)}`]),
    ],
  };
}

/** A time as one way of writing it. Throws RangeError where it is none. */
function instant(time: string): string {
  return new Date(time).toISOString();
}

function decisionOf({ state }: Case): Sheet['decision'] {
  if (state.decision === null) return null;
  const { decide, reason, refund } = state.decision;
  return { decide, reason, ...(refund === undefined ? {} : { refund }) };
}

function headOf({ case: kase, speaker, words, made, timeZone = 'UTC' }: ToldCase): readonly Fact[] {
  const time = new Intl.DateTimeFormat(speaker.locale, {
    dateStyle: 'medium',
    timeStyle: 'short',
    timeZone,
  });
  return [
    { id: 'case', label: words.case, text: kase.id },
    { id: 'as-of', label: words.asOf, text: time.format(new Date(kase.state.at)) },
    { id: 'printed', label: words.printed, text: time.format(new Date(made)) },
  ];
}

function leadOf({ chart, verdict, words }: ToldCase): Sheet['lead'] {
  if (verdict !== undefined) return { title: verdict.title, text: verdict.strength };
  return chart.flow.decisions.length === 0
    ? { title: words.noVerdict, text: words.noVerdictText }
    : { title: words.noDecision, text: words.noDecisionText };
}

function codeOf({ chart, case: kase, words, link }: ToldCase): Sheet['code'] {
  const text = link ?? encodeFindings(chart.flow, kase);
  const caption = link === undefined ? words.code : words.link;
  return { text, caption, picture: drawQr(text, caption) };
}

function isEmpty(block: Block): boolean {
  switch (block.kind) {
    case 'facts':
      return block.facts.length === 0;
    case 'lines':
      return block.lines.length === 0;
    case 'strip':
      return block.findings.length === 0;
    case 'ranking':
      return block.faults.length === 0;
    case 'cautions':
      return block.cautions.length === 0;
    case 'rows':
      return block.rows.length === 0;
    case 'fields':
      return block.fields.length === 0;
    case 'picture':
      return false;
  }
}
