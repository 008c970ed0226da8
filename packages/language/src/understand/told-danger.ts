/** A danger that a thing and what it does tell, held against how it sounds and what it answers. */
import { hearTokens, stretchesOf } from '../typed/heard.ts';
import type { Alarmed } from './alarms.ts';
import { type DangerSign, readSigns } from './danger-signs.ts';
import type { Lexicon } from './lexicon.ts';
import { onceFor } from '../once.ts';
import { dangersPossible } from './said-interrupt.ts';
import { shareOfAnswers } from './taught.ts';
import type { ToldDanger, Turn } from './turn.ts';

/**
 * A thing and what it does tell a danger where some words of a clause sound like it at all, or they
 * themselves do; where nothing was asked, a clause. Where they answer what was asked they must
 * sound so surely. Set on the texts of `tests/phrases`.
 */
const sounding = { least: 0.03, themselves: 0.6, clause: 0.3, surely: 0.9 };

/** So much like an answer they are rather that, and so much nothing else. */
const [anAnswer, onlyAnswer] = [0.9, 0.97];

/** Else it is asked about, where nothing was asked and where they answer only so. */
const asking = { clause: 0.05, themselves: 0.5, answer: 0.5 };

/** The danger that a thing and what it does tell in a text. */
export const dangerTold: (turn: Turn) => ToldDanger | undefined = onceFor((turn) => {
  return surest(signsIn(turn, dangersPossible(turn)), turn);
});

/** What tells these dangers in a text. */
export function signsIn(
  { hearing, tokens, listener }: Turn,
  possible: readonly string[],
): readonly DangerSign[] {
  return signsOf(listener.lexicon)(tokens, { check: hearing.check, possible });
}

const signsOf = onceFor(({ texts, words }: Lexicon) => readSigns(texts.heard?.signs ?? {}, words));

/** The danger of these that is surest. */
function surest(signs: readonly DangerSign[], turn: Turn): ToldDanger | undefined {
  const { inHand, tokens, clauses, listener } = turn;
  const { lexicon } = listener;
  if (signs.length === 0) return undefined;
  const alarmed = lexicon.alarmed();
  const alarms = clauses.flatMap((tokensOf) => {
    const clause = hearTokens(tokensOf, lexicon);
    return (inHand === undefined ? [clause] : stretchesOf(clause)).map(alarmed);
  });
  const told = signs.map(({ interrupt, isOrdinary, start, end }) => {
    const words = hearTokens(tokens.slice(start, end), lexicon);
    const shareOf = (one: ReturnType<Alarmed>): number =>
      one.interrupt === interrupt ? one.share : 0;
    const share = Math.max(...alarms.map(shareOf));
    const themselves = shareOf(alarmed(words));
    const answer = inHand === undefined ? undefined : shareOfAnswers(inHand.taught()(words));
    const { isSure, isAsked } = judge({ share, themselves, answer });
    return { interrupt, share, isSure: isSure && !isOrdinary, isAsked };
  });
  const byShare = told
    .filter(({ isSure, isAsked }) => isSure || isAsked)
    .sort((one, other) => other.share - one.share);
  return byShare.find(({ isSure }) => isSure) ?? byShare[0];
}

/** Whether words are a danger, by how much the text and they themselves sound like it, and like an answer. */
function judge({
  share,
  themselves,
  answer,
}: {
  readonly share: number;
  readonly themselves: number;
  readonly answer: number | undefined;
}): { readonly isSure: boolean; readonly isAsked: boolean } {
  if (answer === undefined)
    return {
      isSure: share >= sounding.clause,
      isAsked: share >= asking.clause || themselves >= asking.themselves,
    };
  return {
    isSure:
      answer < anAnswer
        ? share >= sounding.least || themselves >= sounding.themselves
        : answer < onlyAnswer && share >= sounding.surely,
    isAsked: answer < onlyAnswer || share >= asking.answer,
  };
}
