import { hasPhrase } from '../readings/word-run.ts';
import { hear, isPhrase } from '../typed/heard.ts';
import { isQuestion } from './said-talk.ts';
import { input, type Turn } from './turn.ts';
import type { Understood } from './understood.ts';

/**
 * That a danger never was: "false alarm", "there was no smoke", and "nonsense" right after it was
 * taken from a text. "The smoke is gone" is something else, and so is "no smoke", which may say that
 * there is none any more: what a danger forbids stands until somebody says that there was none.
 */
export function readFalseAlarm(turn: Turn): Understood | undefined {
  const { clauses, hearing, listener, text } = turn;
  const { raised = [], interrupt = raised.at(-1) } = hearing;
  if (interrupt === undefined || !raised.includes(interrupt) || isQuestion(text)) return undefined;
  const { reader, retractions, talk, vocabulary } = listener.lexicon;
  const phrases = [
    ...talk['false-alarm'].literal,
    ...(hearing.awaiting === 'resume' ? retractions : []),
  ];
  const isRetracted = clauses.some((part) => {
    const literal = hear(reader.literally(part), vocabulary);
    return phrases.some((phrase) => isPhrase(literal, phrase));
  });
  return isRetracted || isDenied(turn, interrupt)
    ? input([{ type: 'withdraw', interrupt }])
    : undefined;
}

/** True where a clause says that what the danger is told by never was, and nothing says that it was. */
function isDenied({ clauses, heard, listener }: Turn, interrupt: string): boolean {
  const { lexicon } = listener;
  const alarm = lexicon.alarms.find((one) => one.interrupt === interrupt);
  const isSign = (term: string): boolean => alarm?.signs.has(term) === true;
  return (
    !heard.terms.some(isSign) &&
    clauses.some(
      (clause) =>
        hasPhrase(clause, lexicon.words.neverWas ?? []) &&
        lexicon.reader
          .fromTokens(clause)
          .some((term) => term.startsWith('!') && isSign(term.slice(1))),
    )
  );
}
