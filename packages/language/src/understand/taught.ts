import type { TalkWord } from '../words/words.ts';
import { asDenied, learn, mostOf, type Spoken } from './learned.ts';
import type { Learning } from './lesson.ts';
import { onceFor } from '../once.ts';

/** Talk that is learned. */
export type TaughtTalk =
  | Exclude<TalkWord, 'yes' | 'no' | 'done' | 'over' | 'false-alarm' | 'numbers' | 'language'>
  | 'correction';

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
  /** That it is talk in place of an answer. */
  readonly talk: number;
}

/** How likely it is that it gives an answer, whichever. */
export function shareOfAnswers({ answers }: Sense): number {
  return answers.reduce((sum, share) => sum + share, 0);
}

/** What a text is to a check, by all that people are heard to say. */
export type Taught = (text: Spoken) => Sense;

/** What is learned from for one check. */
export interface Lessons {
  /** What says each answer. */
  readonly answers: readonly (readonly Spoken[])[];
  /** What is said in place of one. */
  readonly talk: readonly Spoken[];
  /** What says nothing to the check. */
  readonly other: readonly Spoken[];
}

/** Learns what is said to one check. */
export function* teach({ answers, talk, other }: Lessons): Learning<Taught> {
  const learned = yield* learn([...answers, talk, other], {
    made: asDenied,
    rounds: 6,
    learners: 2,
  });
  return onceFor((text) => {
    const shares = learned(text);
    return { answers: shares.slice(0, answers.length), talk: shares[answers.length] ?? 0 };
  });
}

/** The talk that a text is likeliest to be, and how likely it is to be that. */
export type TalkHeard = (text: Spoken) => { readonly word: TaughtTalk; readonly share: number };

/** What is said in place of an answer, word by word. */
export type TalkLessons = ReadonlyMap<TaughtTalk, readonly Spoken[]>;

/** Learns to tell talk apart, and from what is none; without any a text is none. */
export function* teachTalk(talk: TalkLessons, other: readonly Spoken[]): Learning<TalkHeard> {
  const words = [...talk.keys()];
  const learned = yield* learn([...talk.values(), other]);
  return onceFor((text) => {
    const { place, share } = mostOf(learned(text), words.length);
    return { word: words[place] ?? 'dont-know', share };
  });
}

/** The check that a text is likeliest to speak of without being asked, and how likely it is. */
export type SubjectHeard = (text: Spoken) => {
  readonly check: string;
  readonly share: number;
  /** How likely it is to speak of another; undefined for one of which nothing was learned. */
  readonly shareOf: (check: string) => number | undefined;
};

/** Learns which check a text speaks of; `other` speaks of none. */
export function* teachSubjects(
  subjects: ReadonlyMap<string, readonly Spoken[]>,
  other: readonly Spoken[],
): Learning<SubjectHeard> {
  const checks = [...subjects.keys()];
  const places = new Map(checks.map((check, place) => [check, place]));
  const learned = yield* learn([...subjects.values(), other]);
  return onceFor((text) => {
    const shares = learned(text);
    const { place, share } = mostOf(shares, checks.length);
    const shareOf = (check: string): number | undefined => shares[places.get(check) ?? -1];
    return { check: checks[place] ?? '', share, shareOf };
  });
}
