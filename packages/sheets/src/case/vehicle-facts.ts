/**
 * What is known of the vehicle, or of a part that was sold, in words: those of the check that asks for it where there is one,
 * so that what was told beforehand reads as what was answered.
 */
import {
  isSaid,
  type CaseState,
  type Check,
  type ContextValue,
  type Flow,
  type PartLimits,
} from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import type { Fact } from '../sheet.ts';
import { fill, isolated } from '../words/sheet-words-in.ts';
import type { SheetWords } from '../words/sheet-words.ts';

/** All that a vehicle is told with. */
interface Telling {
  readonly flow: Flow;
  readonly state: CaseState;
  readonly speaker: Speaker;
  readonly words: SheetWords;
}

/** A fact, and the fields of the context that it tells. */
interface Told {
  readonly fact: Fact;
  readonly paths: readonly string[];
}

/** The facts of a vehicle and where it stands, or of a part; those that the flow asks for first. */
export function vehicleFacts(telling: Telling): readonly Fact[] {
  const { flow, state } = telling;
  const { context } = state;
  const asked = flow.stages
    .flatMap(({ checks }) => checks)
    .flatMap((id) => toldByCheck(flow.checks[id], telling));
  const told = new Set(asked.flatMap(({ paths }) => paths));
  const others = Object.entries(context).flatMap(([path, value]): readonly Fact[] => {
    if (told.has(path)) return [];
    if (path === 'part.limits') return limitFacts(value as PartLimits, telling);
    const fact = ownFact(path, value, telling);
    return fact === undefined ? [] : [{ id: path, ...fact }];
  });
  return [...asked.map(({ fact }) => fact), ...others.toSorted((a, b) => (a.id < b.id ? -1 : 1))];
}

/** What the context says to a check that asks for a part of it, in that check's words. */
function toldByCheck(
  check: Check | undefined,
  { state: { answers, context }, speaker }: Telling,
): readonly Told[] {
  if (check === undefined) return [];
  const { id, form, sets, writes } = check;
  const fact = (text: string): Fact => ({ id, label: speaker.checkName(id), text });
  if (writes !== undefined) {
    const value = context[writes];
    if (form.kind !== 'reading' || typeof value !== 'number') return [];
    const text = speaker.formatQuantity({ value, unit: form.unit });
    return [{ fact: fact(text), paths: [writes] }];
  }
  const holding = Object.entries(sets).filter(([, said]) =>
    Object.entries(said).every(([path, value]) => context[path] === value),
  );
  // Of the choices that hold, the one that says most: a hybrid burns petrol, too.
  const most = Math.max(...holding.map(([, said]) => Object.keys(said).length));
  const best = holding.filter(([, said]) => Object.keys(said).length === most);
  const given = answers[id]?.findLast(isSaid);
  const isGiven = ([choice]: (typeof best)[number]): boolean =>
    Array.isArray(given) && given.includes(choice);
  // Where two say the same of the part, only who was asked can tell which of them it is.
  const told = best.length > 1 ? best.find(isGiven) : best[0];
  return told === undefined
    ? []
    : [{ fact: fact(speaker.answerLabel(id, told[0])), paths: Object.keys(told[1]) }];
}

/** A fact that no check asks for; undefined for what is not of the vehicle. */
function ownFact(
  path: string,
  value: ContextValue,
  { state: { context, policy }, speaker, words }: Telling,
): Omit<Fact, 'id'> | undefined {
  if (typeof value === 'object') return undefined;
  const figure = (unit: string): string => speaker.formatQuantity({ value: Number(value), unit });
  const yesOrNo = value === true ? words.yes : words.no;
  const text = String(value);
  switch (path) {
    case 'vehicle.nominal':
    case 'part.nominal':
      return { label: words.nominal, text: figure('V') };
    case 'vehicle.hybrid': {
      const kinds = { full: words.hybridFull, mild: words.hybridMild, none: words.no };
      return { label: words.hybrid, text: kinds[text as keyof typeof kinds] };
    }
    case 'vehicle.startStop':
      return { label: words.startStop, text: yesOrNo };
    case 'vehicle.smartCharging':
      return { label: words.smartCharging, text: yesOrNo };
    case 'vehicle.cylinders':
      return { label: words.cylinders, text: figure('1') };
    case 'vehicle.displacement':
      return { label: words.displacement, text: figure('L') };
    case 'vehicle.battery.technology':
    case 'part.battery.technology':
      return { label: words.technology, text: words[text as 'flooded' | 'efb' | 'agm' | 'gel'] };
    case 'vehicle.battery.rating':
    case 'part.battery.rating': {
      const standard = context[path.replace('rating', 'standard')];
      const by = typeof standard === 'string' ? ` ${standard.toUpperCase()}` : '';
      return { label: words.rating, text: `${figure('A')}${by}` };
    }
    case 'vehicle.battery.location': {
      const places = { 'engine-bay': words.engineBay, boot: words.boot, seat: words.seat };
      return { label: words.location, text: places[text as keyof typeof places] };
    }
    case 'stud.material': {
      const { copper, brass, steel } = words;
      const materials = { copper, brass, steel };
      return { label: words.stud, text: materials[text as keyof typeof materials] };
    }
    case 'part.battery.age':
      return { label: words.age, text: figure('a') };
    case 'part.build':
      return { label: words.build, text: value === 'geared' ? words.geared : words.direct };
    case 'part.class':
      return { label: words.partClass, text: value === 'car' ? words.car : words.heavy };
    case 'sale.price':
      return policy === null
        ? undefined
        : { label: words.price, text: speaker.formatMoney(Number(value), policy.currency) };
    case 'sale.oldUnit':
      return { label: words.oldUnit, text: value === 'owed' ? words.owed : words.returned };
    case 'coldest':
      return { label: words.coldest, text: figure('Cel') };
    case 'vehicle.notes.expectedCurrent':
      return { label: words.expectedCurrent, text: figure('A') };
    case 'vehicle.notes':
      return { label: words.notes, text };
    case 'vehicle.notes.starter':
      return { label: words.starter, text };
    case 'vehicle.notes.relay':
      return { label: words.relay, text };
    case 'vehicle.notes.fuses':
      return { label: words.fuses, text };
    case 'vehicle.notes.boostPosts':
      return { label: words.boostPosts, text };
    case 'vehicle.notes.torques':
      return { label: words.torques, text };
    default:
      return undefined;
  }
}

/** The maker's figures for a part, each under the name of its check. */
function limitFacts(limits: PartLimits, { speaker, words }: Telling): readonly Fact[] {
  return Object.entries(limits).map(([check, { low, high, unit }]) => {
    const figure = (value: number): string => speaker.formatQuantity({ value, unit });
    const text =
      low === undefined || high === undefined
        ? `${low === undefined ? '≤' : '≥'} ${figure(low ?? high ?? 0)}`
        : `${figure(low)} – ${figure(high)}`;
    const label = fill(words.byMaker, { name: speaker.checkName(check) }, speaker.direction);
    return { id: `part.limits.${check}`, label, text: isolated(text, speaker.direction) };
  });
}
