/**
 * The person at a virtual vehicle: what they can do there, how often they cannot say, and how they
 * mistake one answer for its neighbour. Every share is common practice, no source.
 */
import type { Chances } from './random.ts';
import type { Role, Setting } from './setting.ts';

type Where = 'memory' | 'seat' | 'bonnet' | 'below';

type Need = { readonly where: Where; readonly kit?: readonly (readonly string[])[] };

const meter: readonly string[] = ['voltmeter'];
const meterOrLamp: readonly string[] = ['voltmeter', 'test-lamp'];
const helped = (where: Where, tools: readonly string[]): Need => ({
  where,
  kit: [tools, ['helper']],
});
const withTool = (where: Where, ...tools: readonly string[]): Need => ({ where, kit: [tools] });

const needs: Readonly<Record<string, Need>> = {
  dash: { where: 'seat' },
  headlamps: { where: 'seat' },
  selector: { where: 'seat' },
  clutch: { where: 'seat' },
  'brake-lamps': { where: 'seat' },
  'steering-wheel': { where: 'seat' },
  'ready-lamp': { where: 'seat' },
  'security-lamp': { where: 'seat' },
  'other-key': { where: 'seat' },
  'neutral-try': { where: 'seat' },
  'rev-counter': { where: 'seat' },
  'pump-sound': { where: 'seat' },
  'glow-lamp': { where: 'seat' },
  isolator: { where: 'bonnet' },
  codes: withTool('seat', 'code-reader'),
  'battery-look': { where: 'bonnet' },
  terminals: { where: 'bonnet' },
  'battery-rest': withTool('bonnet', ...meter),
  'battery-lamps': withTool('bonnet', ...meter),
  'battery-load-test': withTool('bonnet', 'load-tester'),
  'battery-tester': withTool('bonnet', 'electronic-tester'),
  'battery-recharged': { where: 'bonnet', kit: [['charger'], meter] },
  'battery-halves': withTool('bonnet', ...meter),
  'battery-crank': helped('bonnet', meter),
  boost: withTool('bonnet', 'boost-source'),
  'main-fuse': withTool('bonnet', ...meterOrLamp),
  'starter-fuse': { where: 'bonnet' },
  relay: withTool('bonnet', 'helper'),
  'relay-swap': { where: 'bonnet' },
  'relay-feed': withTool('bonnet', ...meterOrLamp),
  'relay-command': helped('bonnet', meterOrLamp),
  'control-signal': helped('below', meterOrLamp),
  'drop-clamps': helped('bonnet', meter),
  'drop-positive': helped('below', meter),
  'drop-ground': helped('below', meter),
  'drop-contacts': helped('below', meter),
  'crank-current': helped('bonnet', ['clamp-meter']),
  tap: withTool('below', 'helper'),
  'turn-engine': withTool('below', 'hand-tools'),
  spark: withTool('bonnet', 'hand-tools'),
};

/** Where a check is done; what is not listed is remembered. */
function whereOf(check: string): Where {
  return needs[check]?.where ?? 'memory';
}

const answered: Readonly<Record<Role, Readonly<Record<Where, number>>>> = {
  driver: { memory: 0.93, seat: 0.93, bonnet: 0.62, below: 0.04 },
  dispatcher: { memory: 0.88, seat: 0.8, bonnet: 0.18, below: 0 },
  mechanic: { memory: 0.88, seat: 0.97, bonnet: 0.95, below: 0.75 },
};

const mistaken: Readonly<Record<Role, Readonly<Record<Where, number>>>> = {
  driver: { memory: 0.07, seat: 0.07, bonnet: 0.1, below: 0.15 },
  dispatcher: { memory: 0.1, seat: 0.1, bonnet: 0.15, below: 0.2 },
  mechanic: { memory: 0.04, seat: 0.02, bonnet: 0.025, below: 0.03 },
};

/** How much of what happened is remembered and told. */
const recalled: Readonly<Record<Role, number>> = { driver: 0.9, dispatcher: 0.8, mechanic: 0.75 };

/** Fuse boxes and relays are not found by everyone. */
const hardToFind: readonly string[] = [
  'main-fuse',
  'starter-fuse',
  'relay',
  'relay-swap',
  'relay-feed',
  'relay-command',
];

/** The chance that this person gives an answer to the check at all; the cause has no part in it. */
export function answerChance(check: string, { role, kit }: Setting): number {
  const tools = needs[check]?.kit ?? [];
  if (!tools.every((some) => some.some((tool) => kit.includes(tool)))) return 0;
  if (check === 'scene' || check === 'complaint') return 1;
  if (check === 'other-key' && !kit.includes('second-key')) return 0.35;
  const found = hardToFind.includes(check) ? (role === 'mechanic' ? 0.85 : 0.3) : 1;
  return answered[role][whereOf(check)] * found;
}

/** The chance of something that happened to be told. */
export function recallChance({ role }: Setting): number {
  return recalled[role];
}

/** What a test lamp in place of a meter can answer. */
export const lampChecks: readonly string[] = ['relay-feed', 'relay-command', 'control-signal'];

const neighbours: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  complaint: {
    silent: ['single-click'],
    'single-click': ['silent', 'rapid-clicking', 'slow-crank'],
    'rapid-clicking': ['single-click', 'silent'],
    'slow-crank': ['single-click', 'normal-crank'],
    'normal-crank': ['slow-crank', 'starts-then-stops'],
    'free-spin': ['normal-crank', 'grinding'],
    grinding: ['free-spin', 'rapid-clicking'],
    'starts-then-stops': ['normal-crank'],
    'key-stuck': ['silent'],
  },
  dash: {
    off: ['goes-out'],
    'goes-out': ['off', 'dim'],
    dim: ['goes-out', 'stays-bright'],
    'stays-bright': ['dim'],
  },
  headlamps: {
    'no-light': ['go-out'],
    'go-out': ['no-light', 'dim'],
    dim: ['go-out', 'stay-bright'],
    'stay-bright': ['dim'],
  },
  boost: {
    'cranks-normally': ['cranks-slowly'],
    'cranks-slowly': ['cranks-normally', 'clicks'],
    clicks: ['silent', 'cranks-slowly'],
    silent: ['clicks'],
    starts: ['starts'],
  },
};

/** Answers of one check that nobody mixes up: it starts or it does not. */
const certain: readonly string[] = ['scene', 'other-key', 'neutral-try', 'relay-swap', 'tap'];

/** Plain to see, or measured: mistaken less often than other things at the same place. */
const plain: readonly string[] = [
  'battery-look',
  'main-fuse',
  'starter-fuse',
  'isolator',
  'ready-lamp',
];

function errorOf(check: string, role: Role): number {
  if (certain.includes(check)) return 0.005;
  return mistaken[role][whereOf(check)] * (plain.includes(check) ? 0.3 : 1);
}

/** How likely each answer of this person is, where a careful observer's are these. */
export function personChances(check: string, careful: Chances, { role }: Setting): Chances {
  const sum = Object.values(careful).reduce<number>((total, chance) => total + (chance ?? 0), 0);
  const error = errorOf(check, role);
  const answers: Record<string, number> = {};
  for (const [answer, chance] of Object.entries(careful)) {
    const share = (chance ?? 0) / sum;
    const near =
      neighbours[check]?.[answer] ?? Object.keys(careful).filter((other) => other !== answer);
    const wrong = near.length > 0 ? error : 0;
    answers[answer] = (answers[answer] ?? 0) + share * (1 - wrong);
    for (const other of near)
      answers[other] = (answers[other] ?? 0) + (share * wrong) / near.length;
  }
  return answers;
}

/** How likely this person gives one answer, where a careful observer's are these. */
export function personChance(
  check: string,
  at: { readonly careful: Chances; readonly answer: string },
  { role }: Setting,
): number {
  const { careful, answer } = at;
  const error = errorOf(check, role);
  const near = neighbours[check];
  let total = 0;
  let count = 0;
  let chance = 0;
  for (const other in careful) {
    total += careful[other] ?? 0;
    count += 1;
  }
  for (const other in careful) {
    const share = (careful[other] ?? 0) / total;
    if (share === 0) continue;
    const list = near?.[other];
    const places = list?.length ?? count - 1;
    if (other === answer) {
      chance += share * (places > 0 ? 1 - error : 1);
      if (list?.includes(other) === true) chance += (share * error) / places;
    } else if (list === undefined ? answer in careful : list.includes(answer)) {
      chance += (share * error) / places;
    }
  }
  return chance;
}

/** A meter's class and what its class may be off by: per cent of the reading and V, as spreads. */
export type Meter = {
  readonly name: 'simple' | 'usual' | 'fine';
  readonly gain: number;
  readonly offsetV: number;
  readonly clampGain: number;
  readonly clampOffsetA: number;
  readonly resolutionV: number;
};

const third = Math.sqrt(3);

/** Meters by class; a limit of ± a is a spread of a / √3 (JCGM 100, 4.3.7). */
export const meters: Readonly<Record<Meter['name'], Meter>> = {
  simple: {
    name: 'simple',
    gain: 0.01 / third,
    offsetV: 0.03 / third,
    clampGain: 0.03 / third,
    clampOffsetA: 5 / third,
    resolutionV: 0.1,
  },
  usual: {
    name: 'usual',
    gain: 0.005 / third,
    offsetV: 0.02 / third,
    clampGain: 0.02 / third,
    clampOffsetA: 3 / third,
    resolutionV: 0.01,
  },
  fine: {
    name: 'fine',
    gain: 0.001 / third,
    offsetV: 0.02 / third,
    clampGain: 0.01 / third,
    clampOffsetA: 3 / third,
    resolutionV: 0.01,
  },
};

/** How often a figure has nothing to do with what was to be measured: a probe or a scale was wrong. */
export const grossError = 0.004;

/** Where such a figure may lie. */
export const grossRange: Readonly<Record<'V' | 'A' | 'a', number>> = { V: 14, A: 600, a: 12 };
