/**
 * What would change a decision, as far as a customer can bring it or have it measured. What another
 * answer about the part itself would have led to is for the shop alone: it stands on its screen.
 */
import { isReading, isSaid, type Case, type DecisionMessage } from '@keyturn/core';
import type { SheetWords } from '../words/sheet-words.ts';
import type { ToldCase } from './told-case.ts';

type BringWord = Extract<keyof SheetWords, `bring${string}`>;

/** How many lines there are at most. */
const mostLines = 4;

/** Without one of these nothing else counts. */
const missing: Readonly<Partial<Record<string, BringWord>>> = {
  'no-proof-of-sale': 'bringReceipt',
  'not-the-part-sold': 'bringPart',
  'out-of-term': 'bringDay',
};

/** What can be brought or measured, by the check that it would answer. */
const brought: Readonly<Partial<Record<string, BringWord>>> = {
  'sale-proof': 'bringReceipt',
  'vehicle-proof': 'bringReadings',
  'ring-teeth': 'bringRing',
  'charge-take': 'bringCharged',
  'battery-recharged': 'bringCharged',
  'battery-load-test': 'bringCharged',
  'battery-tester': 'bringCharged',
  'cell-spread': 'bringCharged',
  'stand-loss': 'bringStood',
};

/** The lines of a decision; none while there is none. */
export function customerChanges(told: ToldCase): readonly string[] {
  const { words } = told;
  const { decision } = told.case.state;
  if (decision === null) return [];
  if (decision.decide === 'accept') return [words.changeSettled];
  const owed: readonly BringWord[] = paysDeposit(told, decision) ? ['bringOldUnit'] : [];
  const bring = [...new Set(changesIn(decision, told.case))].slice(0, mostLines - owed.length);
  const lines = [...bring, ...owed].map((word) => words[word]);
  if (lines.length > 0) return lines;
  return [decision.decide === 'test-further' ? words.changeTest : words.changeNone];
}

/** True where the shop's terms pay a deposit for the old unit of this sale, and it is still owed. */
function paysDeposit(
  { chart, case: { state } }: ToldCase,
  { reason }: Pick<DecisionMessage, 'reason'>,
): boolean {
  const { part } = chart.flow;
  const deposit = part === undefined ? undefined : state.policy?.['exchange-deposit']?.[part];
  const isOurs = reason !== 'no-proof-of-sale' && reason !== 'not-the-part-sold';
  return isOurs && deposit !== undefined && state.context['sale.oldUnit'] === 'owed';
}

function changesIn(decision: DecisionMessage, kase: Case): readonly BringWord[] {
  const only = missing[decision.reason];
  if (only !== undefined) return [only];
  return decision.changes.flatMap(({ check, decide }) => {
    const word = decide === 'decline' ? undefined : brought[check];
    return word === undefined || isDone(check, decision, kase) ? [] : [word];
  });
}

/** True for what was brought or measured already, and is not asked for once more. */
function isDone(check: string, { again }: DecisionMessage, { state }: Case): boolean {
  const said = state.answers[check]?.findLast(isSaid);
  if (said === undefined || again.includes(check)) return false;
  return isReading(said) || !said.includes('incomplete');
}
