import type { Figure } from '../numbers/figures.ts';
import type { AnswerInput, Input } from '@keyturn/core';
import type { Heard } from '../typed/heard.ts';
import type { DangerSign } from './danger-signs.ts';
import type { LanguageNames } from './language-names.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import type { Token } from '../typed/token.ts';
import type { HeardTalk, Hearing, UnclearCode, Understood } from './understood.ts';

/** A text is repeated to its writer up to this length. */
const longestGiven = 80;

/** An answer in more clauses than this is a story: the first are held against the phrases. */
export const mostClauses = 12;

/** The same answers, with more of them or fewer. */
type Weighing = (given: readonly AnswerInput[], turn: Turn) => readonly AnswerInput[];

/**
 * What is made of answers by all that people are heard to say. A page knows none of that, and does
 * without.
 */
export interface AsHeard {
  /** What was typed, spelled as people spell it, without what tells nothing. */
  readonly asMeant: (
    tokens: readonly Token[],
    lexicon: Lexicon,
    hearing: Hearing,
  ) => readonly Token[];
  /** With what other words of the text surely tell. */
  readonly withMore: Weighing;
  /** Without what other words of it make doubtful. */
  readonly withoutDoubtful: Weighing;
  /** A first message without what it says of a thing that was tried. */
  readonly withoutTrials: (turn: Turn) => Untried;
  /** The answer that a clause is, word for word. */
  readonly saidWholly: (clause: readonly Token[], lexicon: Lexicon) => Wholly | undefined;
  /** Whether a text, or a clause of it, says that it starts, where nothing was tried. */
  readonly saysStart: (turn: Turn) => boolean;
  /** What an answer tells in words of a danger, in place of that; `withoutIt` understands it as none. */
  readonly asAnswered: (
    understood: Understood,
    turn: Turn,
    withoutIt: (danger: string) => Understood,
  ) => Understood;
  /** The danger that a thing and what it does tell. */
  readonly dangerTold: (turn: Turn) => ToldDanger | undefined;
  /** What tells these dangers so. */
  readonly signsIn: (turn: Turn, possible: readonly string[]) => readonly DangerSign[];
  /** What a clause tells surely, beside the answer to the question in hand. */
  readonly surelyBeside: (
    clause: readonly Token[],
    inHand: CheckPhrases,
    turn: Turn,
  ) => SurelyBeside | undefined;
}

/** An answer that a clause is, word for word. */
export interface Wholly {
  readonly check: string;
  readonly value: readonly [string];
}

/** A danger that is told, and whether it is raised or only asked about. */
export interface ToldDanger {
  readonly interrupt: string;
  readonly isSure: boolean;
}

/** What a clause tells beside the answer in hand, and how surely it might give that itself. */
export interface SurelyBeside {
  readonly told: readonly { readonly check: string; readonly value: readonly string[] }[];
  readonly length: number;
  readonly asked: number;
}

/** What is left of a text without what was tried, and what came of that. */
export interface Untried {
  readonly turn: Turn;
  readonly tried: readonly AnswerInput[];
}

/** What one text is understood with. */
export interface Listener {
  /** BCP 47. */
  readonly locale: string;
  readonly lexicon: Lexicon;
  readonly asHeard?: AsHeard | undefined;
  /** Any figure in a unit, in the language: "a figure (V)". */
  readonly figureIn: (unit: string) => string;
  /** A figure as the language writes it. */
  readonly formatQuantity: (figure: Figure) => string;
  /** A day, ISO 8601, as a date. */
  readonly formatDay: (day: string) => string;
  /** The unit in which a bare figure of a unit is meant. */
  readonly unitHere: (unit: string) => string;
  /** The names of the languages that there are, each in itself. */
  readonly languages: readonly string[];
  /** Their BCP 47 tags. */
  readonly locales: readonly string[];
  /** The language that a word names, in any language, whether it is one of these or not. */
  readonly languageNamed: LanguageNames;
}

/** One text on its way to being understood. */
export interface Turn {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly clauses: readonly (readonly Token[])[];
  readonly heard: Heard;
  /** Every word of it, fillers and all. */
  readonly literal: Heard;
  readonly hearing: Hearing;
  readonly listener: Listener;
  readonly inHand: CheckPhrases | undefined;
}

/** One way of understanding a text; undefined leaves it to the next. */
export type Reading = (turn: Turn) => Understood | undefined;

/** A text as it is said back: where it is longer than 80 characters, cut, with a sign that it is. */
export function cut(text: string): string {
  const whole = Array.from(text.trim());
  return whole.length <= longestGiven
    ? whole.join('')
    : `${whole
        .slice(0, longestGiven - 1)
        .join('')
        .trimEnd()}…`;
}

/** Understood as these inputs. */
export function input(inputs: readonly Input[], talk?: HeardTalk): Understood {
  return talk === undefined ? { type: 'input', inputs } : { type: 'input', inputs, talk };
}

/** Understood as these answers. */
export function answers(given: readonly AnswerInput[], talk?: HeardTalk): Understood {
  return input([{ type: 'answers', answers: given }], talk);
}

/** The inputs with other answers, and without those that have none left. */
export function withAnswers(
  inputs: readonly Input[],
  change: (given: readonly AnswerInput[]) => readonly AnswerInput[],
): readonly Input[] {
  return inputs.flatMap((one): readonly Input[] => {
    if (one.type !== 'answers') return [one];
    const answers = change(one.answers);
    return answers.length === 0 ? [] : [{ ...one, answers }];
  });
}

/** Not understood, with what is possible at the check in hand. */
export function unclear(turn: Turn, code: UnclearCode, talk?: HeardTalk): Understood {
  const { text, listener } = turn;
  const possible = code === 'which-language' ? listener.languages : possibleOf(turn);
  const said = { type: 'unclear', code, given: cut(text), possible } as const;
  return talk === undefined ? said : { ...said, talk };
}

/** What is possible at the check in hand, in words: its answers, or a figure in its unit. */
export function possibleOf({ inHand, hearing, listener }: Turn): string[] {
  if (inHand === undefined) return [];
  const { form } = inHand.check;
  const labels = inHand.options.map(({ label }) => label);
  if (form.kind !== 'reading') return labels;
  const figure = listener.figureIn(form.unit);
  return hearing.lamp ? [...labels, figure] : [figure];
}

/** True where an answer is awaited. */
export function isAsked({ hearing }: Turn): boolean {
  return hearing.awaiting === 'answer';
}

/** The check in hand, where it is answered in words. */
export function optionsInHand(turn: Turn): CheckPhrases | undefined {
  return isAsked(turn) && turn.inHand !== undefined && turn.inHand.options.length > 0
    ? turn.inHand
    : undefined;
}
