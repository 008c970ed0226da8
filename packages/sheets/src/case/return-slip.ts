/**
 * The return slip: what was decided of a part that came back, and why, on one page for the customer
 * to take away.
 */
import { positionOf, type Check } from '@keyturn/core';
import type { Block, Fact, Sheet } from '../sheet.ts';
import { fill } from '../words/sheet-words-in.ts';
import { customerChanges } from './customer-changes.ts';
import { earliestAgain } from './looked-at-again.ts';
import { plainReadings, seenFacts } from './plain-findings.ts';
import { policyFacts } from './policy-facts.ts';
import { sectionBlocks } from './section-blocks.ts';
import { framed } from './sheet-frame.ts';
import type { SheetOptions } from './sheet-options.ts';
import { tellCase, type ToldCase } from './told-case.ts';
import { vehicleFacts } from './vehicle-facts.ts';

/**
 * The slip of a case of a return, in the order in which a customer asks: whose it is, with lines to
 * write in what nobody has entered, the decision, the arithmetic of what is paid back, why, what
 * must not be done with the part, what to measure on the vehicle before another is fitted, the
 * customer's rights, then the terms of the shop and what would change the decision, every figure
 * with its bounds, what was measured on the vehicle, and places to sign. What the clerk is to do next is no word to a customer, and
 * stands on the screen alone. Pure.
 */
export function returnSlip(options: SheetOptions): Sheet {
  const told = tellCase(options);
  const { words, verdict } = told;
  const blocks: readonly Block[] = [
    { kind: 'fields', id: 'wanted', heading: '', fields: wantedFields(told) },
    { kind: 'rows', id: 'aside', heading: words.aside, rows: asideRows(told) },
    { kind: 'fields', id: 'again', heading: '', fields: agreedField(told) },
    ...sectionBlocks(told, ['refund']),
    { kind: 'lines', id: 'reasons', heading: words.reasons, lines: reasonLines(told) },
    { kind: 'lines', id: 'elsewhere', heading: '', lines: elsewhereLines(told) },
    ...sectionBlocks(told, ['stops', 'measure']),
    { kind: 'cautions', id: 'cautions', heading: words.cautions, cautions: ofPart(told) },
    ...sectionBlocks(told, ['rights']),
    { kind: 'lines', id: 'change', heading: words.change, lines: customerChanges(told) },
    { kind: 'facts', id: 'terms', heading: words.terms, facts: policyFacts(told) },
    { kind: 'facts', id: 'seen', heading: words.seen, facts: factsOf(told) },
    { kind: 'strip', id: 'found', heading: words.measured, findings: plainReadings(told) },
    { kind: 'facts', id: 'on-vehicle', heading: words.onVehicle, facts: vehicleReadings(told) },
    {
      kind: 'fields',
      id: 'signed',
      heading: '',
      fields: [
        { id: 'decided-by', label: words.decidedBy },
        { id: 'read-by', label: words.readBy },
      ],
    },
  ];
  return framed(told, {
    kind: 'return',
    title: words.returnSlip,
    blocks,
    head: headOf(told),
    ...(verdict === undefined ? {} : { lead: { title: verdict.title, text: '' } }),
  });
}

/** The shop, the part, the receipt and the day, as far as they are known. */
function headOf(told: ToldCase): Fact[] {
  const { case: kase, sold = {}, speaker, words, timeZone = 'UTC' } = told;
  const { policy, at } = kase.state;
  const day = new Intl.DateTimeFormat(speaker.locale, { dateStyle: 'medium', timeZone });
  const fact = (id: string, label: string, text = ''): Fact => ({ id, label, text });
  return [
    fact('shop', words.shop, policy?.shop),
    fact('address', words.address, policy?.address),
    fact('sold', words.part, [kindOf(told), sold.name, sold.number].filter(Boolean).join(' · ')),
    fact('receipt', words.receipt, sold.receipt),
    fact('price', words.price, priceOf(told)),
    fact('old-unit', words.oldUnit, oldUnitOf(told)),
    fact('day', words.day, day.format(new Date(at))),
  ].filter(({ text }) => text !== '');
}

/** What a slip is worth little without, as far as nobody has entered it, to be written in. */
function wantedFields({
  case: kase,
  sold = {},
  words,
}: ToldCase): Extract<Block, { kind: 'fields' }>['fields'] {
  return [
    { id: 'shop', label: words.shop, known: kase.state.policy?.shop },
    { id: 'number', label: words.number, known: sold.number },
    { id: 'receipt', label: words.receipt, known: sold.receipt },
  ].flatMap(({ id, label, known = '' }) => (known === '' ? [{ id, label }] : []));
}

/** What was paid for it; empty where nobody has said, or in which currency. */
function priceOf({ case: { state }, speaker }: ToldCase): string {
  const price = state.context['sale.price'];
  return typeof price !== 'number' || state.policy === null
    ? ''
    : speaker.formatMoney(price, state.policy.currency);
}

/** Whether the old unit was brought, and with it the deposit that the shop's terms hold for it. */
function oldUnitOf({ chart: { flow }, case: { state }, speaker, words }: ToldCase): string {
  const { policy, context } = state;
  const unit = context['sale.oldUnit'];
  if (unit === undefined) return '';
  const deposit = flow.part === undefined ? undefined : policy?.['exchange-deposit']?.[flow.part];
  if (unit !== 'owed') return words.returned;
  return policy === null || deposit === undefined
    ? words.owed
    : fill(
        words.owedDeposit,
        { amount: speaker.formatMoney(deposit, policy.currency) },
        speaker.direction,
      );
}

/** What kind of part it is, whatever it is called. */
function kindOf({ chart: { flow }, words }: ToldCase): string | undefined {
  const kinds = { starter: words.soldStarter, battery: words.soldBattery };
  return flow.part === undefined ? undefined : kinds[flow.part];
}

/** Since when a part that is put aside waits, what follows, and when at the earliest. */
function asideRows(told: ToldCase): Extract<Block, { kind: 'rows' }>['rows'] {
  const { aside, speaker, words, timeZone = 'UTC' } = told;
  if (aside === undefined) return [];
  const how = { dateStyle: 'full', timeStyle: 'short', timeZone } as const;
  const format = new Intl.DateTimeFormat(speaker.locale, how);
  const rows = [
    { id: 'since', label: words.asideSince, lines: [format.format(new Date(aside))] },
    { id: 'follows', label: words.asideNext, lines: nextSteps(told) },
    {
      id: 'earliest',
      label: words.asideAgain,
      lines: earliestAgain(told, (time) => format.format(time)),
    },
  ];
  return rows.filter(({ lines }) => lines.length > 0);
}

/** When it is to be looked at again, to be written in: the shop and the customer agree on that. */
function agreedField({ aside, words }: ToldCase): Extract<Block, { kind: 'fields' }>['fields'] {
  return aside === undefined ? [] : [{ id: 'agreed', label: words.asideAgreed }];
}

/** What can hurt whatever is done with the part, and not in the clerk's next step alone. */
function ofPart({ chart, cautions }: ToldCase): ToldCase['cautions'] {
  const { cautions: all } = chart.flow;
  return cautions.filter(({ id }) =>
    all[id]?.before.some((cover) => Object.keys(cover).length === 0),
  );
}

/** What is found out next. How that is done is for whoever does it, on the screen. */
function nextSteps({ case: kase, speaker }: ToldCase): readonly string[] {
  const position = positionOf(kase);
  return 'check' in position ? [speaker.checkName(position.check)] : [];
}

/** What is known of the part, but for what stands at the top or was measured; what was seen, told. */
function factsOf(told: ToldCase): readonly Fact[] {
  const { chart, case: kase, speaker, words, strip } = told;
  const { flow } = chart;
  const measured = strip.findings.map(({ check }) => check);
  const facts = vehicleFacts({ flow, state: kase.state, speaker, words }).filter(
    ({ id }) => !inHead.includes(id) && !isMeasured(flow.checks[id], measured),
  );
  // Without proof that it was sold here, its number does not make it the part that was.
  const isUnproved = kase.state.decision?.reason === 'no-proof-of-sale';
  const seen = seenFacts(told).filter(({ id }) => !(isUnproved && id === 'part-number'));
  return [...facts, ...seen];
}

/** What was measured on the vehicle, each with what that is in a word: on paper it needs no ruler. */
function vehicleReadings({ onVehicle }: ToldCase): readonly Fact[] {
  if (onVehicle === undefined) return [];
  const { readings, teller } = onVehicle;
  return readings.map((reading) => ({
    id: reading.check,
    label: teller.checkName(reading.check),
    text: [teller.formatQuantity(reading.quantity), teller.readingFound(reading)]
      .filter((one) => one !== '')
      .join(', '),
  }));
}

/** Paths of the context that the head of a slip tells. */
const inHead = ['sale.price', 'sale.oldUnit'];

function isMeasured(check: Check | undefined, measured: readonly string[]): boolean {
  return check?.form.kind === 'reading' && measured.includes(check.id);
}

/** What of the vehicle points elsewhere, where the part is not taken back. */
function elsewhereLines({ onVehicle, case: kase }: ToldCase): readonly string[] {
  const { decision } = kase.state;
  return decision === null || decision.decide === 'accept' ? [] : (onVehicle?.elsewhere ?? []);
}

/** Why, in words for the customer; of what is tested further also what it hangs on. */
function reasonLines({ verdict, case: kase }: ToldCase): readonly string[] {
  if (verdict === undefined) return [];
  const isOpen = kase.state.decision?.decide === 'test-further';
  const rests = isOpen ? verdict.sections.filter(({ id }) => id === 'rests') : [];
  return [verdict.strength, ...rests.flatMap(({ lines }) => lines)];
}
