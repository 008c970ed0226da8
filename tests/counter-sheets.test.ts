/**
 * Sheets of what happens at the counter: the return slip, in every language that the flow has, and
 * a sheet of every flow. The shop, the parts and every figure are invented.
 */
import { existsSync } from 'node:fs';
import {
  openCase,
  positionOf,
  turn,
  type Case,
  type Chart,
  type Opening,
  type Policy,
} from '@keyturn/core';
import { shippedFlow, shippedFlowNames } from '@keyturn/flows';
import { createSpeaker, localeTags } from '@keyturn/language';
import {
  caseSheet,
  decodeFindings,
  encodeFindings,
  replayFindings,
  sheetOf,
  sheetText,
  type Block,
  type Sheet,
} from '@keyturn/sheets';
import { printSheet } from '@keyturn/sheets/pdf';
import { sheetShape } from '@keyturn/sheets/schema';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { again, startBrowser, whyNoBrowser } from './support/browser.ts';
import { bare, firstWrongLine, lettersOf, linesOf, pdfPages } from './support/pdf-text.ts';
import { paragraphsOf } from './support/sheet-paragraphs.ts';

const at = '2026-03-31T10:00:00.000Z';
const { chart } = shippedFlow('starter-return', 'en');

const policy: Policy = {
  shop: 'Corner <Parts> & Sons',
  address: 'Lower Row, Millbrook',
  currency: 'EUR',
  'time-zone': 'Europe/Berlin',
  'return-window': { days: 30, restocking: { percent: 15 } },
  warranty: { starter: { months: 24, 'pro-rata': 'by-month' } },
  'exchange-deposit': { starter: 4000 },
};

const context = {
  role: 'clerk',
  kit: ['bench-tester', 'speed-meter'],
  part: {
    nominal: 12,
    build: 'geared',
    class: 'car',
    limits: { 'no-load-current': { low: 40, high: 85, unit: 'A' } },
  },
  sale: { price: 12_900, oldUnit: 'owed' },
};

const slow: Readonly<Record<string, string | number>> = {
  'part-number': 'matches-sale',
  'sale-proof': 'shown',
  'sale-date': '2025-11-30',
  claim: 'slow-crank',
  handling: 'fitted',
  stud: 'sound',
  housing: 'sound',
  pinion: 'clean',
  soiling: 'dry',
  'suits-vehicle': 'suits',
  'heat-marks': 'none',
  'drive-turn': 'one-way',
  plunger: 'throws-and-holds',
  'bench-run': 'slow',
  'bench-supply': 11.8,
  'no-load-current': 25,
  'no-load-speed': 2100,
};

type Given = Readonly<Record<string, string | number>>;

/**
 * A case of a flow played to its end, or until a check is asked, or, with `decided`, whatever is
 * asked after the decision; what is not answered can't be done.
 */
function playFlow(flow: Chart, opening: Partial<Opening>, given: Given, until?: string): Case {
  let kase = openCase(flow, { id: 'r-17', at, ...opening }).case;
  for (let turns = 0; turns < 100; turns += 1) {
    const position = positionOf(kase);
    if (position.awaiting === 'nothing') return kase;
    const check = 'check' in position ? position.check : '';
    const isReached = until === 'decided' ? kase.state.decision !== null : check === until;
    if (isReached && position.awaiting === 'answer') return kase;
    const input = inputFor(flow, position.awaiting, { check, said: given[check] });
    kase = turn(flow, kase, { at, input }).case;
  }
  throw new Error('the case never ends');
}

function inputFor(
  { flow }: Chart,
  awaiting: string,
  { check, said }: { readonly check: string; readonly said: string | number | undefined },
): unknown {
  if (awaiting === 'confirm') return { type: 'confirm' };
  if (awaiting === 'wait') return { type: 'waited' };
  if (said === undefined) return { type: 'talk', talk: 'cannot' };
  const form = flow.checks[check]?.form;
  const value =
    typeof said === 'number'
      ? { value: said, unit: form?.kind === 'reading' ? form.unit : '', resolution: 0.01 }
      : [said];
  return { type: 'answers', answers: [{ check, value }] };
}

const play = (given: Given, terms?: Policy): Case =>
  playFlow(chart, { context, ...(terms === undefined ? {} : { policy: terms }) }, given);

const taken = play(slow, policy);

/** The languages that a flow has words in. */
function localesOf(flow: string): readonly string[] {
  return localeTags.filter((locale) =>
    existsSync(new URL(`../flows/${flow}/texts/${locale}.json`, import.meta.url)),
  );
}

function slip(kase: Case, locale = 'en'): Sheet {
  const { texts } = shippedFlow('starter-return', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  const sold = { name: 'Starter S 14', number: 'S14-0220', receipt: 'B 1107' };
  return sheetOf({ chart, case: kase, speaker, made: at, timeZone: 'Europe/Berlin', sold });
}

function slipOfBattery(kase: Case): Sheet {
  const { texts } = shippedFlow('battery-return', 'en');
  const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: battery.flow.checks });
  return sheetOf({ chart: battery, case: kase, speaker, made: at });
}

/** A starter on which nothing was found, with nothing measured on the vehicle. */
const good: Given = {
  ...slow,
  'bench-run': 'even',
  'no-load-current': 62,
  'no-load-speed': 3000,
  'warm-repeat': 'same',
};

const { chart: battery } = shippedFlow('battery-return', 'en');

/** A battery with every figure that a bench can take of it, and the shop's longest terms. */
const batteryTerms: Policy = {
  ...policy,
  warranty: {
    battery: {
      months: 36,
      'pro-rata': [
        { from: 0, to: 12, percent: 100 },
        { from: 12, to: 24, percent: 60 },
        { from: 24, to: 36, percent: 30 },
      ],
    },
  },
  'exchange-deposit': { battery: 1000 },
};
const batteryContext = {
  role: 'clerk',
  kit: ['voltmeter', 'charger', 'load-tester', 'electronic-tester', 'hydrometer', 'thermometer'],
  part: { battery: { technology: 'flooded', rating: 640, standard: 'en' } },
  sale: { price: 11_990, oldUnit: 'owed' },
};
const charged: Given = {
  'part-number': 'matches-sale',
  'sale-proof': 'shown',
  'sale-date': '2025-01-10',
  claim: 'goes-flat',
  handling: 'fitted',
  'battery-look': 'sound',
  posts: 'sound',
  'suits-vehicle': 'suits',
  electrolyte: 'covered',
  'case-temperature': 20,
  'received-volts': 12.05,
  'charge-take': 'takes',
  'battery-recharged': 12.72,
  'cell-spread': 0.015,
  'battery-load-test': 8.7,
  'battery-tester': 330,
  'stand-loss': 0.04,
  'vehicle-proof': 'incomplete',
};
const batterySale = { context: batteryContext, policy: batteryTerms };
const playBattery = (given: Given): Case => playFlow(battery, batterySale, given);
const tired = playBattery(charged);
const disputed = playBattery({
  ...charged,
  'battery-load-test': 10.3,
  'battery-tester': 600,
  'vehicle-proof': 'points-elsewhere',
});

/** The slip of a part that was put aside at ten o'clock, while a check waits for its answer. */
function asideAt(
  flow: Chart,
  check: string,
  { given, context: known }: { readonly given: Given; readonly context: object },
): Sheet {
  const kase = playFlow(flow, { context: { ...known }, policy: batteryTerms }, given, check);
  expect(positionOf(kase)).toEqual({ awaiting: 'answer', check });
  const { texts } = shippedFlow(flow.flow.id, 'en');
  const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: flow.flow.checks });
  return sheetOf({ chart: flow, case: kase, speaker, made: at, aside: at });
}

function blockOf(sheet: Sheet, id: string): Block | undefined {
  return sheet.blocks.find((block) => block.id === id);
}

function linesOfBlock(sheet: Sheet, id: string): readonly string[] {
  const block = blockOf(sheet, id);
  return block?.kind === 'lines' ? block.lines : [];
}

describe('a return slip', () => {
  const sheet = slip(taken);

  test('says the decision and its reason in words for the customer', () => {
    expect(sheet.kind).toBe('return');
    expect(sheet.lead.title).toBe('We take it back');
    expect(linesOfBlock(sheet, 'reasons')[0]).toMatch(/turns too slowly/);
    expect(sheet.decision).toMatchObject({ decide: 'accept', reason: 'motor-resistance' });
  });

  test('shows the arithmetic of what is paid back, as worked by hand', () => {
    // 30 November to 31 March are four whole months; 129.00 × 20 / 24 = 107.50; and the deposit.
    expect(sheet.decision?.refund?.total).toBe(10_750 + 4000);
    expect(linesOfBlock(sheet, 'refund')).toEqual([
      '€129.00 paid for the part',
      '€21.50 kept back: 4 of 24 months used, 20 left',
      '€40.00 deposit for the old unit',
      '€147.50 in all',
    ]);
  });

  test('shows no amount where the shop has given no terms', () => {
    const without = slip(play({ ...slow, 'sale-date': 'warranty' }));
    expect(without.decision).toEqual({ decide: 'accept', reason: 'motor-resistance' });
    expect(blockOf(without, 'terms')).toBeUndefined();
    expect(sheetText(without)).not.toContain('€');
  });

  test('has the maker’s figure before the general one, with where it comes from', () => {
    const found = blockOf(sheet, 'found');
    const current = (found?.kind === 'strip' ? found.findings : []).find(
      ({ check }) => check === 'no-load-current',
    );
    expect(current?.reading?.band).toBe('low');
    expect(current?.notes[1]).toBe('Limit 40 A: the maker’s figure for this part');
    expect(JSON.stringify(blockOf(sheet, 'seen'))).toContain('40 A – 85 A');
  });

  test('says the day of the sale and what it means', () => {
    expect(sheetText(sheet)).toContain('November 30, 2025, within the warranty');
  });

  test('is in the order in which a customer asks, and has places to sign', () => {
    expect(sheet.head.map(({ id }) => id)).toEqual([
      'shop',
      'address',
      'sold',
      'receipt',
      'price',
      'old-unit',
      'day',
    ]);
    expect(sheet.blocks.map(({ id }) => id)).toEqual([
      'refund',
      'reasons',
      'measure',
      'rights',
      'change',
      'terms',
      'seen',
      'found',
      'signed',
    ]);
    expect(sheet.foot.at(-1)).toBe('Case: r-17');
  });

  test('says of what would change it only what the customer can bring or have measured', () => {
    expect(linesOfBlock(sheet, 'change')).toEqual([
      'Nothing: it is taken back, and nothing more is needed from you.',
    ]);
    const declined = play(good, policy);
    expect(declined.state.decision).toMatchObject({ decide: 'decline', reason: 'no-fault-found' });
    expect(declined.state.decision?.changes.length).toBeGreaterThan(5);
    expect(linesOfBlock(slip(declined), 'change')).toEqual([
      'Readings taken on your vehicle, or the code of its case: bring them, and we look at it again.',
      'The old unit: its deposit is paid back once you bring it.',
    ]);
    expect(sheetText(slip(declined))).not.toMatch(/would have been|with “/);
  });

  test('asks for nothing that was just done', () => {
    const changeOf = (given: Given): readonly string[] => {
      return linesOfBlock(slipOfBattery(playBattery({ ...charged, ...given })), 'change');
    };
    const tests = { 'battery-load-test': 10.3, 'battery-tester': 600 };
    const { 'stand-loss': _lost, ...untested } = charged;
    const stood = linesOfBlock(slipOfBattery(playBattery({ ...untested, ...tests })), 'change');
    expect(stood.join(' ')).toMatch(/Readings taken.*How much it loses while it stands/su);
    expect(changeOf(tests).join(' ')).not.toMatch(/loses while it stands|full charge/u);
    expect(changeOf({ ...tests, 'vehicle-proof': 'points-elsewhere' }).join(' ')).not.toMatch(
      /Readings taken/u,
    );
    // Not charged yet: a charge is what it waits for.
    const { 'charge-take': _take, ...empty } = charged;
    const waits = slipOfBattery(playBattery(empty));
    expect(linesOfBlock(waits, 'change')[0]).toMatch(/full charge/u);
  });

  test('has lines for shop, number and receipt where nobody has entered them', () => {
    const { texts } = shippedFlow('starter-return', 'en');
    const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: chart.flow.checks });
    const kase = play({ ...slow, 'sale-date': 'warranty' });
    const wanted = blockOf(sheetOf({ chart, case: kase, speaker, made: at }), 'wanted');
    expect(wanted?.kind === 'fields' ? wanted.fields.map(({ id }) => id) : []).toEqual([
      'shop',
      'number',
      'receipt',
    ]);
    expect(blockOf(sheet, 'wanted')).toBeUndefined();
  });

  test('says the old unit with its deposit, nothing twice, and nothing of the kit', () => {
    const text = sheetText(sheet);
    expect(text).toContain('Old unit: still to be brought; its deposit of €40.00 is held');
    const seen = blockOf(sheet, 'seen');
    const facts = seen?.kind === 'facts' ? seen.facts : [];
    expect(new Set(facts.map(({ label }) => label)).size).toBe(facts.length);
    expect(facts.at(-1)?.id).toBe('usual');
    expect(facts.at(-1)?.text).toContain('Housing');
    const asked = playFlow(
      battery,
      { context: { role: 'clerk' } },
      { ...charged, 'sale-date': 'warranty', 'battery-kind': 'sealed' },
    );
    const said = sheetText(slipOfBattery(asked));
    expect(said.match(/Kind of battery/gu)).toHaveLength(1);
    expect(said).toContain('Kind of battery: flooded, sealed');
    expect(said).not.toMatch(/Test equipment/u);
  });

  test('names the missing proof of sale', () => {
    const without = play({ ...slow, 'sale-proof': 'none' });
    expect(without.state.decision).toMatchObject({ decide: 'decline', reason: 'no-proof-of-sale' });
    expect(linesOfBlock(slip(without), 'change')[0]).toMatch(/^Proof of the sale: a receipt/);
    const named = play({ ...slow, 'sale-proof': 'none' }, policy);
    expect(linesOfBlock(slip(named), 'change')).toHaveLength(1);
  });

  test('has bounds without the notes of the workshop, which stand on the case sheet', () => {
    const { texts } = shippedFlow('starter-return', 'en');
    const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: chart.flow.checks });
    const whole = sheetText(caseSheet({ chart, case: taken, speaker, made: at }));
    for (const note of [/no source/, /shows of nothing/, /That makes it/]) {
      expect(whole).toMatch(note);
      expect(sheetText(sheet)).not.toMatch(note);
    }
    expect(sheetText(sheet)).toMatch(/Limit 5 A: common practice/);
    // The number of a manual means nothing to a customer, and stays in the data.
    expect(sheetText(sheet)).toMatch(/Limit 11 V: published$/m);
    expect(JSON.stringify(sheet)).toContain("a vehicle maker's service manual");
  });

  test('has a code from which the return is judged again, without the terms of the shop', () => {
    const code = encodeFindings(chart.flow, taken);
    const found = decodeFindings([chart.flow], code);
    expect(found.answers).toContainEqual({
      check: 'sale-date',
      answer: ['2025-11-30', 'warranty'],
    });
    expect(found.context['part.limits']).toEqual(context.part.limits);
    const again = replayFindings(chart, found).case;
    expect(again.state.decision).toMatchObject({ decide: 'accept', reason: 'motor-resistance' });
  });

  test('of a battery that came in flat says that it was charged here, and what was not tested', () => {
    const { texts } = shippedFlow('battery-return', 'en');
    const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: battery.flow.checks });
    const said = (given: Given): string => {
      const kase = playBattery({
        ...charged,
        'battery-load-test': 10.3,
        'battery-tester': 600,
        ...given,
      });
      expect(kase.state.decision).toMatchObject({ decide: 'decline', reason: 'no-fault-found' });
      return linesOfBlock(
        sheetOf({ chart: battery, case: kase, speaker, made: at }),
        'reasons',
      ).join(' ');
    };
    const { 'stand-loss': _lost, ...untested } = charged;
    const flat = said({ 'received-volts': 11.62 });
    expect(flat).toMatch(/holds what it must.*It came in discharged\./u);
    expect(flat).not.toMatch(/every figure|not tested/u);
    const full = said({ 'received-volts': 12.7 });
    expect(full).toContain('it holds what it must');
    expect(full).not.toContain('discharged');
    const kase = playBattery({ ...untested, 'battery-load-test': 10.3, 'battery-tester': 600 });
    const open = sheetOf({ chart: battery, case: kase, speaker, made: at });
    expect(linesOfBlock(open, 'reasons').join(' ')).toMatch(
      /Not tested: whether it empties itself/u,
    );
  });

  test.each([
    ['en', 'Starter'],
    ['es', 'Motor de arranque'],
    ['de', 'Anlasser'],
    ['fr', 'Démarreur'],
    ['pl', 'Rozrusznik'],
    ['ar', 'بادئ حركة'],
  ])('names in %s the kind of part where nobody has entered what it is called', (locale, kind) => {
    const { texts } = shippedFlow('starter-return', locale);
    const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
    const bare = sheetOf({ chart, case: taken, speaker, made: at });
    expect(bare.head.find(({ id }) => id === 'sold')?.text).toBe(kind);
    const named = slip(taken, locale).head.find(({ id }) => id === 'sold')?.text;
    expect(named).toContain(kind);
    expect(named).toContain('S14-0220');
  });

  test('taken back by the vehicle’s readings says what the bench showed, and asks for none anew', () => {
    const proved = play({ ...good, 'vehicle-proof': 'against-part' }, policy);
    expect(proved.state.decision).toMatchObject({ decide: 'accept', reason: 'vehicle-evidence' });
    expect(linesOfBlock(slip(proved), 'reasons')[0]).toMatch(
      /bench.*without a load.*showed nothing/u,
    );
    expect(blockOf(slip(proved), 'measure')).toBeUndefined();
  });

  test.each([
    ['no-throw', 'did not pull the pinion out', 'hold'],
    ['drops-out', 'did not hold it', 'did not pull'],
  ])('says of a solenoid that %s what was seen, and nothing else', (plunger, said, other) => {
    const kase = play({ ...slow, plunger }, policy);
    expect(kase.state.decision).toMatchObject({ decide: 'accept', reason: 'solenoid-fault' });
    const [why] = linesOfBlock(slip(kase), 'reasons');
    expect(why).toContain(said);
    expect(why).not.toContain(other);
  });

  test('names no answer as a change that only leads to the same question', () => {
    const late = play({ ...slow, 'sale-date': '2022-01-10' }, policy);
    expect(late.state.decision?.reason).toBe('out-of-term');
    expect(late.state.decision?.changes.map(({ check }) => check)).not.toContain('part-number');
  });

  test('says of a battery what was found, and not what is to be done next', () => {
    const { texts } = shippedFlow('battery-return', 'en');
    const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: battery.flow.checks });
    const dead = playBattery({ ...charged, 'received-volts': 10.4, 'battery-recharged': 10.6 });
    expect(dead.state.decision).toMatchObject({ decide: 'accept', reason: 'cell-fault' });
    const said = sheetText(sheetOf({ chart: battery, case: dead, speaker, made: at }));
    expect(said).not.toMatch(/Charge it|it is harmed/u);
    expect(said).toMatch(/10\.40? V.*may be harmed, or a cell is dead/su);
  });

  test('claims neither side of a figure that is too close to call', () => {
    const { 'vehicle-proof': _proof, ...rest } = good;
    const { limits: _limits, ...part } = context.part;
    const opening = { context: { ...context, part }, policy };
    const near = playFlow(chart, opening, { ...rest, 'no-load-current': 90 }, 'decided');
    expect(near.state.decision).toMatchObject({ reason: 'too-close-to-call' });
    const found = blockOf(slip(near), 'found');
    const current = (found?.kind === 'strip' ? found.findings : []).find(
      ({ check }) => check === 'no-load-current',
    );
    expect(current?.means).toBe('Too close to call: good or too high.');
    expect(current?.reading?.ruler?.svg).not.toMatch(/font-weight="bold"/u);
    const sure = slip(taken).blocks.find(({ id }) => id === 'found');
    expect(JSON.stringify(sure)).toMatch(/font-weight=.{1,2}bold/u);
    expect(sheetText(slip(near))).not.toMatch(/% that|that it is good/u);
  });

  test.each<[string, Chart, Given]>([
    ['is empty', battery, { 'charge-take': 'unsaid' }],
    ['did not keep its charge', battery, { 'battery-recharged': 12.2 }],
    ['has cells that differ', battery, { 'cell-spread': 0.035 }],
    ['is too cold', battery, { 'case-temperature': -6 }],
    ['has no temperature', battery, { 'case-temperature': 'unsaid', 'battery-load-test': 9.3 }],
    ['lies on a weak bench', chart, { 'bench-supply': 9 }],
    ['has no number', chart, { 'part-number': 'unreadable' }],
    ['was not run', chart, { plunger: 'unsaid', 'bench-run': 'unsaid' }],
  ])('of a part that %s has no word to the clerk', (_, flow, given) => {
    const all = { ...(flow === battery ? charged : good), ...given };
    const told = Object.fromEntries(Object.entries(all).filter(([, said]) => said !== 'unsaid'));
    const opening = flow === battery ? batterySale : { context, policy };
    const kase = playFlow(flow, opening, told, 'decided');
    expect(kase.state.decision?.decide).toBe('test-further');
    const { texts } = shippedFlow(flow.flow.id, 'en');
    const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: flow.flow.checks });
    const [screen] = speaker.render(kase.state.decision === null ? [] : [kase.state.decision]);
    const steps = screen?.kind === 'verdict' ? screen.sections.find(({ id }) => id === 'do') : null;
    const said = sheetText(sheetOf({ chart: flow, case: kase, speaker, made: at, aside: at }));
    expect(steps?.lines.length).toBeGreaterThan(0);
    for (const line of steps?.lines ?? []) expect(said).not.toContain(line);
    expect(said).not.toMatch(/(?:^|- |[.:] )(?:Charge|Leave|Let|Clean|Do not|Run|Clamp|Now) /mu);
  });

  test('warns of a battery that can burst, in whoever’s hands it is', () => {
    const look = { ...charged, 'battery-look': 'frozen' };
    const frozen = playFlow(battery, batterySale, look, 'decided');
    const said = sheetText(slipOfBattery(frozen));
    expect(said).toMatch(/before it has thawed/u);
    expect(said).toMatch(/This battery can burst/u);
    expect(said).not.toMatch(/goggles|hazardous waste/u);
  });

  test.each([
    ['swollen', 'overcharged-or-frozen'],
    ['leaking', 'case-defect'],
    ['cracked', 'outside-damage'],
  ])('says what becomes of a battery that is %s, whatever was decided', (look, reason) => {
    const unfit = playBattery({ ...charged, 'battery-look': look });
    expect(unfit.state.decision).toMatchObject({ reason });
    const [line] = linesOfBlock(slipOfBattery(unfit), 'stops');
    expect(line).toMatch(
      /not charge it and do not use it.*upright.*gloves.*eyes covered.*hazardous waste.*local/u,
    );
    expect(sheetText(slipOfBattery(unfit))).not.toMatch(/nobody near/iu);
  });

  test.each([
    ['nothing was measured', {}, /unless charging and current at rest .* measured good.*bring/su],
    [
      'the readings point elsewhere',
      { 'vehicle-proof': 'points-elsewhere' },
      /readings of your vehicle point to something other/u,
    ],
  ])('says how a swollen battery is judged where %s, and claims no cause', (_, given, how) => {
    const swollen = slipOfBattery(playBattery({ ...charged, 'battery-look': 'swollen', ...given }));
    const [why] = linesOfBlock(swollen, 'reasons');
    expect(why).toMatch(how);
    expect(why).not.toMatch(/badly made|it was overcharged/u);
    expect(linesOfBlock(swollen, 'measure')).toHaveLength(2);
  });

  test.each([
    ['no-fault-found', 'incomplete'],
    ['cause-elsewhere', 'points-elsewhere'],
  ])('of a starter that tested good, %s, says what the bench does not show', (reason, proof) => {
    const why = (claim: string): string | undefined => {
      const kase = play({ ...good, claim, 'vehicle-proof': proof }, policy);
      expect(kase.state.decision).toMatchObject({ reason });
      return linesOfBlock(slip(kase), 'reasons')[0];
    };
    expect(why('slow-crank')).toMatch(/torque under load/u);
    expect(why('slow-crank')).not.toMatch(/ring gear/u);
    expect(why('noise')).toMatch(/teeth of the ring gear/u);
    expect(why('no-crank')).toMatch(/spins free/u);
  });

  test('does not call it the part that was sold where nothing shows that it was sold here', () => {
    const kase = play({ ...slow, 'sale-proof': 'none' }, policy);
    expect(sheetText(slip(kase))).toContain('Nothing shows that it was bought here');
    expect(sheetText(slip(kase))).not.toContain('it is the part we sold');
    expect(sheetText(slip(taken))).toContain('it is the part we sold');
  });

  test('of a number that nobody compared says that, and not that none can be read', () => {
    const { 'part-number': _number, ...unsaid } = slow;
    expect(
      linesOfBlock(slip(playFlow(chart, { context }, unsaid, 'decided')), 'reasons')[0],
    ).toMatch(/has not been compared yet/u);
    const rubbed = { ...slow, 'part-number': 'unreadable' };
    const unread = slip(playFlow(chart, { context }, rubbed, 'decided'));
    expect(linesOfBlock(unread, 'reasons')[0]).toMatch(/No number can be read/u);
  });

  test('forbids running the part only where somebody has looked at it', () => {
    const late = play({ ...slow, 'sale-date': '2022-01-10' }, policy);
    expect(late.state.decision).toMatchObject({ decide: 'decline', reason: 'out-of-term' });
    expect(blockOf(slip(late), 'stops')).toBeUndefined();
    const broken = play({ ...slow, housing: 'cracked' }, policy);
    expect(linesOfBlock(slip(broken), 'stops')[0]).toMatch(/must not be run/u);
  });

  test('of a return not decided yet says so', () => {
    const begun = openCase(chart, { id: 'r-18', at, context, policy }).case;
    expect(slip(begun).lead.title).toBe('Not decided yet');
  });

  test.each([
    ['the charger', 'charge-take', /11:00 AM at the earliest$/],
    [
      'the rest after it',
      'battery-recharged',
      /12:00 PM at the earliest, if the charge was full .* 2 hours after/,
    ],
    ['standing a day', 'stand-loss', /April 1, 2026 at 10:00 AM at the earliest, if/],
  ])('of a battery that waits for %s says when it can be looked at again', (_, check, earliest) => {
    const held = { ...charged, 'battery-load-test': 10.3, 'battery-tester': 600 };
    const sheet = asideAt(battery, check, { given: held, context: batteryContext });
    const rows = blockOf(sheet, 'aside');
    const again = rows?.kind === 'rows' ? rows.rows.find(({ id }) => id === 'earliest') : undefined;
    expect(again?.lines[0]).toMatch(earliest);
    expect(sheet.blocks.map(({ id }) => id)).toContain('again');
  });

  test('of a part that hangs on nothing but the shop has a line to write the day in', () => {
    const sheet = asideAt(chart, 'no-load-current', { given: slow, context });
    const rows = blockOf(sheet, 'aside');
    expect(rows?.kind === 'rows' ? rows.rows.map(({ id }) => id) : []).toEqual([
      'since',
      'follows',
    ]);
    const agreed = blockOf(sheet, 'again');
    expect(agreed?.kind === 'fields' ? agreed.fields : []).toEqual([
      { id: 'agreed', label: 'Agreed: looked at again on, at' },
    ]);
    expect(blockOf(slip(taken), 'again')).toBeUndefined();
  });
});

describe('a fitting record', () => {
  const fitting = shippedFlow('starter-fitting', 'en');
  const speaker = createSpeaker({
    locale: 'en',
    flowTexts: fitting.texts,
    checks: fitting.chart.flow.checks,
  });
  const work: Given = {
    'fault-proved': 'proved',
    secured: 'done',
    'settings-kept': 'done',
    'ground-lead-off': 'done',
    support: 'stands',
    'stud-dead': 0.01,
    'leads-off': 'done',
    'starter-out': 'done',
    'ring-teeth': 'sound',
    'part-compare': 'same',
    'mating-face': 'clean',
    'bolts-by-hand': 'all-start',
    'bolts-tight': 45,
    'stud-nuts': 10,
    'leads-clear': 'clear',
    'ground-lead-on': 'done',
    'battery-look': 'sound',
    'battery-rest': 12.64,
    'first-crank': 'even',
    'battery-crank': 10.6,
    'drop-positive': 0.16,
    'drop-ground': 0.12,
    charging: 14.2,
    'repeat-starts': 'all-good',
    'lamps-clear': 'clear',
  };
  const made = (given: Given): Sheet => {
    const kase = playFlow(
      fitting.chart,
      {
        context: {
          place: 'workshop',
          temperature: 22,
          kit: ['voltmeter', 'torque-wrench', 'hand-tools', 'helper', 'stands', 'charger'],
          vehicle: { fuel: 'petrol', nominal: 12, battery: { technology: 'flooded' } },
          bolt: { size: 'M10', class: '8.8', material: 'steel' },
          stud: { size: 'M8', material: 'copper' },
        },
      },
      given,
    );
    return sheetOf({ chart: fitting.chart, case: kase, speaker, made: at });
  };

  test('has each step, torque figures with their source, and the outcome that readings prove', () => {
    const sheet = made(work);
    expect(sheet.kind).toBe('fitting');
    expect(sheet.decision?.decide).toBe('proved');
    const steps = blockOf(sheet, 'steps');
    const findings = steps?.kind === 'strip' ? steps.findings : [];
    expect(findings.map(({ check }) => check)).toEqual(
      expect.arrayContaining(['ground-lead-off', 'bolts-tight', 'stud-nuts', 'charging']),
    );
    const bolts = findings.find(({ check }) => check === 'bolts-tight');
    expect(bolts?.said).toBe('45.00 N·m');
    expect(bolts?.reading?.bounds.every(({ source }) => source !== '')).toBe(true);
    expect(bolts?.notes.join(' ')).toMatch(/Bound/);
  });

  test('that was stopped names the step', () => {
    const sheet = made({ ...work, 'bolts-by-hand': 'binds' });
    expect(sheet.decision).toEqual({ decide: 'stopped', reason: 'bolts-by-hand' });
  });
});

describe.each(shippedFlowNames())('the flow %s', (name) => {
  const flow = shippedFlow(name, 'en').chart;
  const kase = openCase(flow, { id: 'k1', at, context: {} }).case;

  test('has no two findings with the same mark in a code', () => {
    const code = encodeFindings(flow.flow, kase);
    const flows = shippedFlowNames().map((other) => shippedFlow(other, 'en').chart.flow);
    expect(decodeFindings(flows, code).flow).toBe(name);
  });

  test.each(localesOf(name))('has a sheet in %s', (locale) => {
    const { texts } = shippedFlow(name, locale);
    const speaker = createSpeaker({ locale, flowTexts: texts, checks: flow.flow.checks });
    const sheet = sheetOf({ chart: flow, case: kase, speaker, made: at });
    expect(sheetShape.parse(JSON.parse(JSON.stringify(sheet)))).toEqual(sheet);
    expect(sheetText(sheet)).toContain(texts.name);
  });
});

describe.skipIf(whyNoBrowser !== undefined)('printed', again, () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(async () => {
    await browser.close();
  });

  test.each(localesOf('starter-return'))('a slip in %s is one page', async (locale) => {
    for (const kase of [taken, play(good, policy)]) {
      const pdf = await printSheet(slip(kase, locale), { browser, paper: 'A4' });
      expect(await pdfPages(pdf)).toHaveLength(1);
    }
  });

  test.each(localesOf('battery-return'))('a battery’s slip in %s is one page', async (locale) => {
    const { texts } = shippedFlow('battery-return', locale);
    const speaker = createSpeaker({ locale, flowTexts: texts, checks: battery.flow.checks });
    for (const kase of [tired, disputed]) {
      const sold = { name: 'Battery 64 Ah 640 A', number: 'BT-0640', receipt: 'W-09815' };
      const made = {
        chart: battery,
        case: kase,
        speaker,
        made: at,
        sold,
        timeZone: 'Europe/Berlin',
      };
      for (const paper of ['A4', 'Letter'] as const) {
        const pdf = await printSheet(sheetOf(made), { browser, paper });
        expect(await pdfPages(pdf), paper).toHaveLength(1);
      }
    }
  });

  test.each(localesOf('starter-return'))(
    'a slip in %s holds all that stands on it',
    async (locale) => {
      const sheet = slip(taken, locale);
      const pages = await pdfPages(await printSheet(sheet, { browser, paper: 'Letter' }));
      const paragraphs = paragraphsOf(sheet).filter(({ text }) => bare(text) !== '');
      if (sheet.direction === 'rtl') {
        expect(firstWrongLine(linesOf(pages), paragraphs)).toBeUndefined();
      } else {
        expect(lettersOf(pages)).toBe(bare(paragraphs.map(({ text }) => text).join('')));
      }
    },
  );
});
