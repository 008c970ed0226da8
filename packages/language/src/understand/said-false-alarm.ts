import { hasPhrase } from '../readings/word-run.ts';
import { hear, hearTokens, isPhrase, type Heard } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { findTalk } from './talk.ts';
import { input, type Turn } from './turn.ts';
import type { Understood } from './understood.ts';

/**
 * That a danger never was: "false alarm", "there was no smoke", and "nonsense" right after it was
 * taken from a text. "The smoke is gone" is something else, and so is "no smoke", which may say that
 * there is none any more: what a danger forbids stands until somebody says that there was none.
 */
export function readFalseAlarm(turn: Turn): Understood | undefined {
  const { hearing, tokens, text } = turn;
  const interrupt = hearing.interrupt ?? hearing.raised?.at(-1);
  if (interrupt === undefined || hearing.raised?.includes(interrupt) !== true) return undefined;
  if (/[?؟]/u.test(text)) return undefined;
  const isMeant =
    [tokens, ...turn.clauses].some((part) => isRetracted(part, turn)) || isDenied(turn, interrupt);
  return isMeant ? input([{ type: 'withdraw', interrupt }]) : undefined;
}

/** True where a part of a text says, and nothing else, that there was no danger. */
function isRetracted(part: readonly Token[], { hearing, listener }: Turn): boolean {
  const { lexicon } = listener;
  const heard = hearTokens(part, lexicon);
  const literal = hear(lexicon.reader.literally(part), lexicon.vocabulary);
  if (findTalk({ heard, literal }, lexicon, ['false-alarm']) !== undefined) return true;
  return (
    hearing.awaiting === 'resume' && lexicon.retractions.some((phrase) => isPhrase(literal, phrase))
  );
}

/** True where a clause says that what the danger is told by never was, and nothing says that it was. */
function isDenied({ clauses, heard, listener }: Turn, interrupt: string): boolean {
  const { lexicon } = listener;
  const signs = lexicon.alarms.find((alarm) => alarm.interrupt === interrupt)?.signs;
  if (signs === undefined) return false;
  const saysNot = ({ terms }: Heard): boolean =>
    terms.some((term) => term.startsWith('!') && signs.has(term.slice(1)));
  return (
    !heard.terms.some((term) => signs.has(term)) &&
    clauses.some(
      (clause) =>
        hasPhrase(clause, lexicon.words.neverWas ?? []) && saysNot(hearTokens(clause, lexicon)),
    )
  );
}
