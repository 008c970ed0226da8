/**
 * A random vehicle that does not start, the person at it, and everything that they would answer.
 */
import type { Card } from '@keyturn/terminal';
import { causeChances, causes, type Cause } from './causes.ts';
import { choiceChances, choiceChecks, historyChances } from './choices.ts';
import { circuitState, hidden, isNoStart, type CircuitState } from './circuit-state.ts';
import { rightRemedies, rightSends } from './consequences.ts';
import {
  answerChance,
  grossError,
  grossRange,
  lampChecks,
  meters,
  personChances,
  recallChance,
  type Meter,
} from './person.ts';
import { Random, type Chances } from './random.ts';
import { readingChecks, trueFigure, type TrueFigure } from './readings.ts';
import { contextOf, drawSetting, drawTold, type Setting, type Untold } from './setting.ts';

/** An answer as it was given. */
export type Given =
  | { readonly kind: 'choice'; readonly choice: string }
  | { readonly kind: 'several'; readonly choices: readonly string[] }
  | { readonly kind: 'lamp'; readonly glow: 'dark' | 'dim' | 'bright' }
  | {
      readonly kind: 'reading';
      readonly value: number;
      readonly resolution: number;
      readonly unit: 'V' | 'A' | 'a';
    };

/** A virtual vehicle: its case card, and what nobody at it knows. */
export type VirtualVehicle = {
  readonly seed: number;
  readonly card: Card;
  readonly given: ReadonlyMap<string, Given>;
  readonly setting: Setting;
  readonly told: ReadonlySet<Untold>;
  readonly meter: Meter;
  readonly cause: Cause;
  readonly state: CircuitState;
};

/** The chances of a test lamp at so many volts of a 12 V supply. */
export function lampGlow(volts: number): Chances<'dark' | 'dim' | 'bright'> {
  const lit = 1 / (1 + Math.exp(-(volts - 3) / 0.6));
  const bright = 1 / (1 + Math.exp(-(volts - 8) / 0.7));
  return { dark: 1 - lit, dim: Math.max(0, lit - bright), bright };
}

function drawCause(
  setting: Setting,
  random: Random,
): { readonly cause: Cause; readonly state: CircuitState } {
  const chances = causeChances(setting);
  const byId = Object.fromEntries(causes.map(({ id }, index) => [id, chances[index]!]));
  for (;;) {
    const id = random.pick(byId);
    const cause = causes.find((one) => one.id === id)!;
    for (let time = 0; time < 300; time += 1) {
      const state = circuitState(setting, cause.electrics, random.normals(hidden.length));
      if (isNoStart(state)) return { cause, state };
    }
  }
}

/** What hangs on the meter and is the same at every reading. */
type MeterError = {
  readonly gain: number;
  readonly offset: number;
  readonly clampGain: number;
  readonly clampOffset: number;
};

function meterOf(setting: Setting, random: Random): Meter {
  const isMechanic = setting.role === 'mechanic';
  return meters[
    random.pick(
      isMechanic
        ? { simple: 0.1, usual: 0.65, fine: 0.25 }
        : { simple: 0.5, usual: 0.48, fine: 0.02 },
    )
  ];
}

function readFigure(
  figure: TrueFigure,
  by: { readonly meter: Meter; readonly error: MeterError; readonly random: Random },
): Given {
  const { meter, error, random } = by;
  const { value, spread } = figure;
  const unit = figure.by === 'voltmeter' ? 'V' : figure.by === 'memory' ? 'a' : 'A';
  const wavered = value + spread * random.normal();
  const shown =
    figure.by === 'voltmeter'
      ? wavered * (1 + error.gain) + error.offset
      : figure.by === 'clamp'
        ? wavered * (1 + error.clampGain) + error.clampOffset
        : wavered;
  const resolution =
    figure.by === 'voltmeter'
      ? meter.resolutionV
      : figure.by === 'memory'
        ? 1
        : figure.by === 'tester'
          ? 5
          : 1;
  const told = random.happens(grossError) ? random.between(0, grossRange[unit]) : shown;
  return {
    kind: 'reading',
    value: Math.max(0, Math.round(told / resolution) * resolution),
    resolution,
    unit,
  };
}

/** The answer as somebody would type it, or the choices' ids. */
function textOf(given: Given): string {
  switch (given.kind) {
    case 'choice':
      return given.choice;
    case 'several':
      return given.choices.join(', ');
    case 'lamp':
      return given.glow;
    case 'reading': {
      const digits = given.resolution < 0.05 ? 2 : given.resolution < 0.5 ? 1 : 0;
      return `${given.value.toFixed(digits)} ${given.unit === 'a' ? 'years' : given.unit}`;
    }
  }
}

/** The vehicle of a seed, always the same. */
export function virtualVehicle(seed: number): VirtualVehicle {
  const random = new Random(seed);
  const setting = drawSetting(random);
  const told = drawTold(setting, random);
  const { cause, state } = drawCause(setting, random);
  const meter = meterOf(setting, random);
  const error: MeterError = {
    gain: meter.gain * random.normal(),
    offset: meter.offsetV * random.normal(),
    clampGain: meter.clampGain * random.normal(),
    clampOffset: meter.clampOffsetA * random.normal(),
  };
  const given = new Map<string, Given>();
  const answers = (check: string): boolean => random.happens(answerChance(check, setting));
  for (const check of choiceChecks) {
    const careful = choiceChances(check, cause, state);
    if (careful === undefined || !answers(check)) continue;
    const choice = random.pick(personChances(check, careful, setting));
    given.set(check, { kind: 'choice', choice });
  }
  if (answers('history')) {
    const choices = Object.entries(historyChances(cause)).flatMap(([event, chance]) =>
      random.happens(chance * recallChance(setting)) ? [event] : [],
    );
    given.set('history', { kind: 'several', choices: choices.length > 0 ? choices : ['none'] });
  }
  for (const check of readingChecks) {
    const figure = trueFigure(check, cause, state);
    if (figure === undefined || !answers(check)) continue;
    if (lampChecks.includes(check) && !setting.kit.includes('voltmeter')) {
      const glow = random.pick(lampGlow(figure.value / (setting.nominal / 12)));
      given.set(check, { kind: 'lamp', glow });
    } else given.set(check, readFigure(figure, { meter, error, random }));
  }
  const card: Card = {
    id: `virtual-${String(seed)}`,
    flow: 'no-start',
    locale: 'en',
    context: contextOf(setting, told),
    answers: Object.fromEntries([...given].map(([check, one]) => [check, textOf(one)])),
    accept: {
      fault: cause.faults,
      remedy: rightRemedies(cause.faults),
      send: rightSends(cause.faults),
    },
    forbid: [],
  };
  return { seed, card, given, setting, told, meter, cause, state };
}
