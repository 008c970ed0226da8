/**
 * How well and how fast typed texts are understood, by language, on the phrases of `tests/phrases`.
 *
 * Baseline for the time, in the same run: the longest common subsequence of the text with every
 * phrase of the flow in that language, the plainest way to find the nearest one.
 */
import { createSpeaker, localeTags } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import {
  type Phrase,
  phrasesOf,
  scorePhrases,
  type Scored,
  seenPhrasesOf,
} from '../support/phrases.ts';

/** So many messages come before those that are timed, behind all that is learned ahead as a bot does. */
const before = 600;

/** ms. A message is to take no more. */
const aim = 5;

const kinds = ['choice', 'reading', 'interrupt', 'talk', 'ask back'] as const;

for (const locale of localeTags) {
  const scored = scorePhrases(locale);
  if (scored.length === 0) continue;
  process.stdout.write(`\n${locale}: ${String(scored.length)} phrases\n`);
  for (const kind of kinds) {
    const those = scored.filter((one) => one.kind === kind);
    process.stdout.write(`  ${kind.padEnd(10)} ${share(those)}\n`);
  }
  const off = scored.filter(({ isOffByTen }) => isOffByTen).length;
  process.stdout.write(
    `  ${'all'.padEnd(10)} ${share(scored)}; wrong by a factor of ten: ${String(off)}\n`,
  );
  for (const line of confusion(scored)) process.stdout.write(`    ${line}\n`);
  time(locale);
}

function share(those: readonly Scored[]): string {
  const count = (outcome: Scored['outcome']): string => {
    const found = those.filter((one) => one.outcome === outcome).length;
    return `${((100 * found) / Math.max(those.length, 1)).toFixed(1).padStart(5)} %`;
  };
  return `right ${count('right')}  part ${count('part')}  asked ${count('asked')}  wrong ${count('wrong')}  of ${String(those.length)}`;
}

/** What was taken for what, where it was wrong. */
function confusion(scored: readonly Scored[]): string[] {
  return scored
    .filter(({ outcome }) => outcome === 'wrong')
    .map(({ phrase, meaning }) => {
      const said = (list: readonly { readonly check: string; readonly value: unknown }[]): string =>
        list
          .map(
            ({ check, value }) =>
              `${check}=${typeof value === 'string' ? value : JSON.stringify(value)}`,
          )
          .join(' ');
      const wanted = phrase.talk ?? said(phrase.understood ?? phrase.anyOf?.[0] ?? []);
      const got = meaning.talk ?? said(meaning.understood);
      return `“${phrase.text}”: ${wanted === '' ? 'ask back' : wanted} was taken for ${got}`;
    });
}

function time(locale: string): void {
  const { chart, texts } = shippedFlow('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  const learning = speaker.learnAhead(chart.flow.checks)[Symbol.iterator]();
  while (learning.next().done !== true);
  const phrases = phrasesOf(locale);
  const timeOf = ({ check, text }: Phrase): number =>
    measure(() =>
      speaker.understand(text, {
        awaiting: 'answer',
        check,
        checks: chart.flow.checks,
        interrupts: Object.keys(chart.flow.interrupts),
        answered: [],
        kit: [],
        nominal: 12,
        lamp: false,
      }),
    );
  seenPhrasesOf(locale).slice(-before).forEach(timeOf);
  // Each is new to the speaker, and its time counts with whatever garbage is collected in it.
  const timed = phrases.map((phrase) => ({
    isFirst: phrase.check === null,
    took: timeOf(phrase),
  }));
  const known = Object.values(texts.checks).flatMap(({ answers = {} }) =>
    Object.values(answers).flatMap(({ label, said = [] }) => [label, ...said]),
  );
  const nearest = ({ text }: Phrase): number =>
    measure(() => known.reduce((most, one) => Math.max(most, common(text, one)), 0));
  const base = [...phrases.slice(0, 100), ...phrases.slice(0, 100)].map(nearest).slice(100);
  const all = timed.map(({ took }) => took);
  const firsts = timed.filter(({ isFirst }) => isFirst).map(({ took }) => took);
  const answers = timed.filter(({ isFirst }) => !isFirst).map(({ took }) => took);
  const within = all.filter((took) => took <= aim).length / all.length;
  process.stdout.write(
    `  a message: ${spread(all)}; ${(100 * within).toFixed(1)} % within ${String(aim)} ms; ` +
      `${(at(all, 0.5) / at(base, 0.5)).toFixed(2)} × the baseline\n` +
      `    where nothing was asked: ${spread(firsts)}; where something was: ${spread(answers)}\n`,
  );
}

function spread(times: readonly number[]): string {
  const mean = times.reduce((sum, one) => sum + one, 0) / times.length;
  return `mean ${mean.toFixed(2)} ms, median ${at(times, 0.5).toFixed(2)} ms, 95th ${at(times, 0.95).toFixed(2)} ms, 99th ${at(times, 0.99).toFixed(2)} ms`;
}

function at(times: readonly number[], part: number): number {
  const inOrder = times.toSorted((one, other) => one - other);
  return inOrder[Math.floor((inOrder.length - 1) * part)] ?? 0;
}

function measure(work: () => unknown): number {
  const begin = performance.now();
  work();
  return performance.now() - begin;
}

function common(one: string, other: string): number {
  let row = new Uint16Array(other.length + 1);
  for (const letter of one) {
    const next = new Uint16Array(other.length + 1);
    for (let at = 0; at < other.length; at += 1) {
      next[at + 1] =
        letter === other[at] ? (row[at] ?? 0) + 1 : Math.max(row[at + 1] ?? 0, next[at] ?? 0);
    }
    row = next;
  }
  return row[other.length] ?? 0;
}
