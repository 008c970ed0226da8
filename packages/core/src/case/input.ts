/**
 * What comes into a turn, and the shape that it is held to before anything else is done. Written
 * out, since every page carries it.
 */
import type { MeterAccuracy } from '@keyturn/electrics';

/** One check answered: choice ids, a reading, or `done` for work. */
export interface AnswerInput {
  readonly check: string;
  readonly value:
    | readonly string[]
    | {
        readonly value: number;
        readonly unit: string;
        /** The step in which it was typed, in the same unit. */
        readonly resolution?: number | undefined;
        /** The accuracy of the meter; left out it is what the context tells of it. */
        readonly meter?: MeterAccuracy | undefined;
      };
}

/** Talk that every user can always use. */
export type Talk = (typeof talks)[number];

const talks = [
  'dont-know',
  'cannot',
  'why',
  'numbers',
  'back',
  'repeat',
  'person',
  'stop',
] as const;

/** What a channel hands to a turn. */
export type Input =
  /** Answers to the question in hand, or to any other check that was volunteered. */
  | { readonly type: 'answers'; readonly answers: readonly AnswerInput[] }
  /** An earlier answer was wrong. */
  | { readonly type: 'correction'; readonly answers: readonly AnswerInput[] }
  /** A check that need not be in hand is not known or cannot be done; an answer to it is taken back. */
  | {
      readonly type: 'unanswered';
      readonly check: string;
      readonly talk: 'dont-know' | 'cannot';
    }
  | { readonly type: 'talk'; readonly talk: Talk }
  /** The cautions in hand have been read, and it is safe to go on. */
  | { readonly type: 'confirm' }
  | { readonly type: 'interrupt'; readonly interrupt: string }
  /** The interrupt is over. */
  | { readonly type: 'resume' }
  /** Something of the context has changed or become known: context path to value. */
  | { readonly type: 'context'; readonly set: Readonly<Record<string, unknown>> }
  /** Time has passed; `at` of the turn says when it is. */
  | { readonly type: 'tick' }
  /** The wait in hand is over before its time, by the user's word. */
  | { readonly type: 'waited' };

/**
 * Whether something has the shape and the lengths of an input; meanings are checked against the
 * flow afterwards. Fields that an input does not have make it none.
 */
export function isInput(given: unknown): given is Input {
  if (!isRecord(given)) return false;
  const has = (...fields: readonly string[]): boolean => hasOnly(given, ['type', ...fields]);
  switch (given['type']) {
    case 'answers':
    case 'correction':
      return has('answers') && isList(given['answers'], 40, isAnswer);
    case 'unanswered':
      return (
        has('check', 'talk') &&
        isText(given['check'], 80) &&
        isOneOf(given['talk'], ['dont-know', 'cannot'])
      );
    case 'talk':
      return has('talk') && isOneOf(given['talk'], talks);
    case 'interrupt':
      return has('interrupt') && isText(given['interrupt'], 80);
    case 'context':
      return has('set') && isRecord(given['set']);
    case 'confirm':
    case 'resume':
    case 'tick':
    case 'waited':
      return has();
    default:
      return false;
  }
}

function isAnswer(given: unknown): boolean {
  if (!isRecord(given) || !hasOnly(given, ['check', 'value']) || !isText(given['check'], 80)) {
    return false;
  }
  const { value } = given;
  return isReading(value) || isList(value, 20, (choice) => isText(choice, 80));
}

function isReading(given: unknown): boolean {
  return (
    isRecord(given) &&
    hasOnly(given, ['value', 'unit', 'resolution', 'meter']) &&
    Number.isFinite(given['value']) &&
    isText(given['unit'], 20) &&
    (given['resolution'] === undefined || isAbove(given['resolution'], 0)) &&
    (given['meter'] === undefined || isMeter(given['meter']))
  );
}

function isMeter(given: unknown): boolean {
  return (
    isRecord(given) &&
    hasOnly(given, ['percent', 'digits', 'counts']) &&
    isWithin(given['percent'], 100) &&
    isWithin(given['digits'], 1000) &&
    (given['counts'] === undefined || isAbove(given['counts'], 0))
  );
}

function isRecord(given: unknown): given is Readonly<Record<string, unknown>> {
  return typeof given === 'object' && given !== null && !Array.isArray(given);
}

function hasOnly(record: object, fields: readonly string[]): boolean {
  return Object.keys(record).every((field) => fields.includes(field));
}

function isOneOf(given: unknown, texts: readonly string[]): boolean {
  return typeof given === 'string' && texts.includes(given);
}

function isText(given: unknown, most: number): boolean {
  return typeof given === 'string' && given.length <= most;
}

/** A list of at least one item, none of them left out. */
function isList(given: unknown, most: number, isItem: (item: unknown) => boolean): boolean {
  return (
    Array.isArray(given) &&
    given.length >= 1 &&
    given.length <= most &&
    Array.from<unknown>(given).every(isItem)
  );
}

function isAbove(given: unknown, least: number): boolean {
  return Number.isFinite(given) && (given as number) > least;
}

function isWithin(given: unknown, most: number): boolean {
  return Number.isFinite(given) && (given as number) >= 0 && (given as number) <= most;
}
