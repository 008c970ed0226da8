import type { TalkWord } from '../words/words.ts';
import { learn, someOf, type Spoken } from './learned.ts';

/** Talk that is learned. */
export type TaughtTalk =
  Exclude<TalkWord, 'yes' | 'no' | 'done' | 'over' | 'numbers' | 'language'> | 'correction';

/** All of it; yes and no are answers. */
export const taughtTalk: readonly TaughtTalk[] = [
  'dont-know',
  'cannot',
  'why',
  'back',
  'repeat',
  'person',
  'stop',
  'correction',
];

/** What a text most likely is to one check, in shares of one. */
export interface Sense {
  /** That it gives each answer, in the order of the check's. */
  readonly answers: readonly number[];
  /** The talk in place of an answer that it is likeliest to be. */
  readonly talk: { readonly word: TaughtTalk; readonly share: number } | undefined;
  /** That it is something else altogether. */
  readonly other: number;
}

/** What a text is to a check, by all that people are heard to say. */
export type Taught = (text: Spoken) => Sense;

/** What is said in place of an answer, word by word. */
export type TalkLessons = readonly {
  readonly word: TaughtTalk;
  readonly spoken: readonly Spoken[];
}[];

/** What is learned from for one check. */
export interface Lessons {
  /** What says each answer. */
  readonly answers: readonly (readonly Spoken[])[];
  readonly talk: TalkLessons;
  /** What says nothing to the check. */
  readonly unclear: readonly Spoken[];
  /** What is said to other checks: some of it. */
  readonly elsewhere: readonly Spoken[];
}

/** So much of each talk is learned from. */
const mostTalk = 60;

/** Learns what is said to one check. */
export function teach({ answers, talk, unclear, elsewhere }: Lessons): Taught {
  const learned = learn([
    ...answers,
    ...talk.map(({ spoken }) => someOf(spoken, mostTalk)),
    [...unclear, ...elsewhere],
  ]);
  return (text) => {
    const shares = learned(text);
    const said = talk.map(({ word }, index) => ({
      word,
      share: shares[answers.length + index] ?? 0,
    }));
    return {
      answers: shares.slice(0, answers.length),
      talk: said.toSorted((one, other) => other.share - one.share)[0],
      other: shares.at(-1) ?? 0,
    };
  };
}
