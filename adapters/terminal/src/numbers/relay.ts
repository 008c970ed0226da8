import {
  coilCheck,
  contactCheck,
  terminalDesignation,
  windingCheck,
  windingResistance,
  type RelayKind,
  type Winding,
} from '@keyturn/electrics';
import { figureText, spanText } from './figure-text.ts';
import { problem, type Kind } from './kind.ts';
import type { Question } from './question.ts';
import { takeNominal } from './vehicle.ts';
import { figures, takeFigures } from './wanted.ts';

function takeRelayKind(question: Question): RelayKind | undefined {
  if (question.says('micro', 'micro relay')) return 'micro';
  if (question.says('sealed')) return 'sealed-power';
  if (question.says('starter rated', 'starter relay', 'starter')) return 'starter-rated';
  return question.says('mini', 'mini relay', 'iso') ? 'mini' : undefined;
}

const coilVerdicts = {
  sound: 'A sound coil. It says nothing of the contacts.',
  open: 'An open coil.',
  shorted: 'Shorted turns.',
  'cannot-tell':
    'Cannot tell: it may be a relay of another kind, a resistor beside the coil, or a corroded pin.',
} as const;

/** A relay's coil by its resistance. */
export const coil: Kind = {
  group: 'Fuses, relays, terminals',
  examples: ['coil 85 Ohm mini relay'],
  read: (question) => {
    const isCoil = question.says('coil');
    const isRelay = question.says('relay');
    const isOhms = question.figures('resistance').length > 0;
    if (!isCoil && !(isRelay && isOhms)) return undefined;
    question.says('resistance', '85 and 86', '85 to 86', 'pin');
    const kind = takeRelayKind(question);
    question.says('power', '12 v');
    const isOverload = question.says('ol', 'overload', 'open', 'infinite', 'nothing');
    const found = isOverload
      ? undefined
      : takeFigures(question, { resistance: figures.resistanceOhm }, {});
    if (found?.type === 'problem') return found;
    const told = coilCheck(found?.resistance.quantity ?? 'overload', kind ?? 'mini');
    return {
      type: 'answer',
      lines: [
        coilVerdicts[told.verdict],
        `sound: ${spanText(told.sound)}; below ${figureText(told.shorted.low, 'Ohm')} shorted; above ${figureText(told.open.high, 'Ohm')} open`,
      ],
      assumed: [
        ...(kind === undefined ? ['a mini relay'] : []),
        '12 V, out of its socket, at -20 to 60 °C',
        ...(isOverload ? [] : ['an ohmmeter of usual accuracy']),
      ],
      sources: [told.sound.source],
    };
  },
};

const contactVerdicts = {
  sound: 'Sound contacts.',
  'high-resistance': 'Contacts of high resistance.',
  open: 'Open contacts.',
  'cannot-tell': 'Cannot tell: too near to the limit, or too little current.',
} as const;

/** A relay's contacts by their drop. */
export const contacts: Kind = {
  group: 'Fuses, relays, terminals',
  examples: ['relay contacts 0.05 V at 10 A'],
  read: (question) => {
    const isRelay = question.says('relay');
    const isContact = question.says('contact');
    if (
      !(isRelay && (isContact || question.figures('voltage').length > 0)) ||
      question.says('solenoid')
    ) {
      return undefined;
    }
    question.says('drop', 'across', 'mini');
    const needed = {
      drop: { ...figures.dropV, low: -30 },
      current: { ...figures.currentA, low: 0 },
    };
    const found = takeFigures(question, needed, {});
    if (found.type === 'problem') return found;
    const told = contactCheck({ drop: found.drop.quantity, current: found.current.quantity });
    return {
      type: 'answer',
      lines: [contactVerdicts[told.verdict], `new contacts drop at most ${spanText(told.limit)}`],
      assumed: ['a 12 V relay, pulled in', 'meters of usual accuracy'],
      sources: [told.limit.source],
    };
  },
};

function takeWinding(question: Question): Winding | undefined {
  if (question.says('hold in', 'holdin', 'holding')) return 'hold-in';
  if (question.says('pull in', 'pullin')) return 'pull-in';
  return question.says('both windings', 'both') ? 'both' : undefined;
}

const windingVerdicts = {
  sound: 'A sound winding.',
  'shorted-turns': 'Shorted turns: too much current.',
  'high-resistance': 'Too little current: a resistance.',
  open: 'An open winding.',
  'cannot-tell': 'Cannot tell: too near to an end.',
} as const;

/** A solenoid's winding by its current, or its usual resistance. */
export const winding: Kind = {
  group: 'The engine and its starter',
  examples: ['hold-in winding 14 A at 10 V'],
  read: (question) => {
    const isSaid = question.says('winding', 'solenoid winding');
    const which = takeWinding(question);
    if (which === undefined || (which === 'both' && !isSaid)) {
      return isSaid ? problem('which winding (hold-in, pull-in or both) is missing') : undefined;
    }
    question.says('solenoid', 'current', 'resistance', 'starter');
    const kind = question.says('machine', 'tractor')
      ? 'machine'
      : takeNominal(question) === 24
        ? '24-volt'
        : 'car';
    const assumed = [
      ...(kind === 'car' ? ['a car’s solenoid'] : []),
      'the first reading of a pulse of at most 15 s',
    ];
    const noCurrent = question.figures('current').length + question.figures('voltage').length === 0;
    if (noCurrent && which !== 'both') {
      const { source, ...resistance } = windingResistance(kind, which);
      return {
        type: 'answer',
        lines: [spanText(resistance)],
        assumed: assumed.slice(0, -1),
        sources: [source],
      };
    }
    const needed = { current: { ...figures.currentA, low: 0 }, voltage: figures.systemV };
    const found = takeFigures(question, needed, {});
    if (found.type === 'problem') return found;
    const told = windingCheck({
      kind,
      winding: which,
      current: found.current.quantity,
      voltageV: found.voltage.value,
    });
    return {
      type: 'answer',
      lines: [windingVerdicts[told.verdict], `sound: ${spanText(told.sound)}`],
      assumed: [...assumed, 'a clamp of usual accuracy'],
      sources: [told.sound.source],
    };
  },
};

/** The longest mark of a terminal has three characters. */
const mark = /\b(?:terminal|term|pin)\s+([\p{L}\d]{1,4}\s?\+?)/iu;

/** What the mark on a terminal means. */
export const terminal: Kind = {
  group: 'Fuses, relays, terminals',
  examples: ['terminal 50', 'terminal 87a', 'terminal B+'],
  read: (question) => {
    if (!question.says('terminal', 'term', 'pin')) return undefined;
    const said = mark.exec(question.text);
    const [whole = '', name = ''] = said ?? [];
    const start = (said?.index ?? 0) + whole.length - name.length;
    const place = { start, end: start + name.trimEnd().length };
    if (name === '') return problem('the mark of the terminal (as in terminal 50) is missing');
    const told = terminalDesignation(name);
    if (told === undefined) {
      return problem(
        `${name.trim()} is no mark known here (30, 15, 50, 85, 86, 87, 87a, 31, B+ …)`,
        place,
      );
    }
    takeWithin(question, place);
    question.says('mean', 'meaning', 'relay', 'starter');
    const isCoil = told.terminal === '85' || told.terminal === '86';
    return {
      type: 'answer',
      lines: [
        `${told.terminal}: ${told.meaning}`,
        ...(isCoil
          ? ['85 and 86 may be exchanged unless a diode is inside: the symbol on the case decides.']
          : []),
      ],
      sources: [told.source],
    };
  },
};

function takeWithin(question: Question, { start, end }: { start: number; end: number }): void {
  const inside = question.tokens.filter((token) => token.start < end && token.end > start);
  for (const { text } of inside) question.says(text);
  for (const kind of ['bare', 'current', 'time', 'temperature'] as const) {
    for (const figure of question.figures(kind)) if (figure.start === start) question.take(figure);
  }
}
