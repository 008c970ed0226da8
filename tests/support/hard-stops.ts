/**
 * The hard stops and cautions of the trade, written out a second time and apart from the flow, so
 * that a flow cannot excuse itself. Common practice, except where a source is named.
 */
import type { Card, Replayed } from '@keyturn/terminal';

const heldStart: readonly string[] = [
  'dash',
  'headlamps',
  'neutral-try',
  'retry',
  'other-key',
  'rev-counter',
  'battery-crank',
  'boost',
  'relay',
  'relay-swap',
  'relay-command',
  'control-signal',
  'drop-clamps',
  'drop-positive',
  'drop-ground',
  'drop-contacts',
  'crank-current',
  'tap',
  'spark',
];
const atTheEngine: readonly string[] = heldStart.filter(
  (check) =>
    !['dash', 'headlamps', 'neutral-try', 'retry', 'other-key', 'rev-counter'].includes(check),
);
const starterChecks: readonly string[] = [
  'battery-crank',
  'starter-fuse',
  'relay',
  'relay-swap',
  'relay-feed',
  'relay-command',
  'control-signal',
  'drop-clamps',
  'drop-positive',
  'drop-ground',
  'drop-contacts',
  'crank-current',
  'tap',
  'turn-engine',
];
const loads: readonly string[] = [
  'boost',
  'battery-load-test',
  'battery-lamps',
  'battery-recharged',
];
/** Where somebody leans over the battery, touches it or clips a lead to it. */
const atTheBattery: readonly string[] = [
  'battery-look',
  'terminals',
  'battery-rest',
  'battery-halves',
  'battery-tester',
  'battery-load-test',
  'battery-lamps',
  'battery-crank',
  'battery-recharged',
  'boost',
  'drop-clamps',
];
/** What is answered without going to the vehicle; what is at hand may lie in its boot. */
const fromMemory: readonly string[] = [
  'place',
  'scene',
  'drive',
  'complaint',
  'when',
  'history',
  'charge-lamp',
  'battery-age',
  'crank-rhythm',
  'fuel-level',
  'flooded-smell',
  'transmission',
  'ignition',
  'air-temperature',
];
/** At the shoulder these two are remembered, not done. */
const remembered: readonly string[] = ['dash', 'headlamps'];

/** Which hard stops a replay crossed, and which cautions it left out, in words. */
export function crossedStops(card: Card, replayed: Replayed): readonly string[] {
  const told = new Map<string, readonly string[]>();
  const crossed: string[] = [];
  for (const check of replayed.asked) {
    for (const [why, forbidden] of stopsAt(card, told)) {
      if (forbidden(check)) crossed.push(`${check} although ${why}`);
    }
    for (const caution of cautionsOf(card, check, told)) {
      if (!replayed.cautions.includes(caution)) crossed.push(`${check} without ${caution}`);
    }
    const answers = card.answers[check];
    if (answers !== undefined) told.set(check, [answers].flat());
  }
  return crossed;
}

type Forbids = (check: string) => boolean;

/** The last answer of a check, as plain text without its unit. */
function last(told: ReadonlyMap<string, readonly string[]>, check: string): string {
  return told.get(check)?.at(-1) ?? '';
}

function stopsAt(
  card: Card,
  told: ReadonlyMap<string, readonly string[]>,
): readonly (readonly [why: string, forbids: Forbids])[] {
  const { place, role } = card.context;
  const vehicle = (card.context['vehicle'] ?? {}) as Readonly<Record<string, unknown>>;
  const history = last(told, 'history');
  const stops: (readonly [string, Forbids])[] = [];
  const stop = (when: boolean, why: string, forbids: Forbids): void => {
    if (when) stops.push([why, forbids]);
  };
  const oneOf = (list: readonly string[]) => (check: string) => list.includes(check);
  const look = last(told, 'battery-look');
  stop(
    ['frozen', 'swollen', 'cracked', 'leaking'].includes(look),
    `the battery is ${look}`,
    (check) => heldStart.includes(check) || loads.includes(check),
  );
  stop(
    isFrost(card) && look === '' && (isNearlyEmpty(told) || last(told, 'headlamps') === 'no-light'),
    'it may be frozen and nobody looked',
    (check) => heldStart.includes(check) || loads.includes(check),
  );
  stop(last(told, 'selector') === 'in-gear', 'a gear is engaged', oneOf(heldStart));
  stop(last(told, 'turn-engine') === 'locked', 'the engine is locked', oneOf(heldStart));
  stop(
    history.includes('water') && last(told, 'turn-engine') !== 'turns',
    'water may stand in a cylinder',
    oneOf(heldStart),
  );
  stop(last(told, 'flooded-smell') === 'yes', 'it smells of fuel', oneOf(['spark', 'tap']));
  stop(last(told, 'fuel-level') === 'wrong-fuel', 'the fuel is wrong', (check) =>
    [...heldStart, 'pump-sound'].includes(check),
  );
  stop(
    place === 'live-lane',
    'it stands in a live lane',
    (check) => !['scene', 'place'].includes(check),
  );
  stop(
    place === 'shoulder',
    'it stands at the shoulder',
    (check) => ![...fromMemory, ...remembered].includes(check),
  );
  stop(vehicle['hybrid'] === 'full', 'it is a full hybrid', oneOf(starterChecks));
  stop(
    role === 'driver' && place !== 'home' && place !== 'workshop',
    'a driver at the roadside knocks on no starter',
    oneOf(['tap']),
  );
  return stops;
}

function isFrost(card: Card): boolean {
  const degrees = (value: unknown): number | undefined =>
    typeof value === 'number' ? value : (value as { value?: number } | undefined)?.value;
  const coldest = degrees(card.context['coldest']) ?? degrees(card.context['temperature']);
  return coldest !== undefined && coldest <= -5;
}

function isNearlyEmpty(told: ReadonlyMap<string, readonly string[]>): boolean {
  const rest = Number.parseFloat(last(told, 'battery-rest').replace(',', '.'));
  return Number.isFinite(rest) && rest < 11.8;
}

function cautionsOf(
  card: Card,
  check: string,
  told: ReadonlyMap<string, readonly string[]>,
): readonly string[] {
  const vehicle = (card.context['vehicle'] ?? {}) as Readonly<Record<string, unknown>>;
  const place = card.context['place'];
  const isDone = !(place === 'shoulder' && remembered.includes(check));
  const held = heldStart.includes(check) && isDone;
  const rules: readonly (readonly [boolean, ...string[]])[] = [
    [place === 'live-lane' || place === 'shoulder', 'traffic'],
    [vehicle['hybrid'] === 'mild' || vehicle['hybrid'] === 'full', 'high-voltage'],
    [held, 'vehicle-moves', 'crank-limit'],
    [(atTheEngine.includes(check) && isDone) || check === 'turn-engine', 'moving-parts'],
    [
      ['control-signal', 'relay', 'relay-swap', 'relay-feed', 'relay-command'].includes(check),
      'never-bridge',
    ],
    [['boost', 'battery-load-test', 'battery-recharged'].includes(check), 'battery-gas'],
    [atTheBattery.includes(check), 'battery-acid'],
    [check === 'boost', 'boost-order'],
    [['fuel-level', 'flooded-smell', 'spark'].includes(check), 'fuel-vapour'],
    [check === 'spark', 'spark-voltage'],
    [check === 'glow-lamp', 'no-spray'],
    [check.startsWith('drop-'), 'short-circuit'],
    [check === 'tap', 'hot-heavy', 'brittle-magnets'],
    [check === 'battery-lamps', 'pinch'],
    [held && last(told, 'history').includes('water'), 'liquid-lock'],
    [last(told, 'history').includes('just-fuelled') && check === 'fuel-level', 'wrong-fuel'],
  ];
  return rules.flatMap(([applies, ...cautions]) => (applies ? cautions : []));
}
