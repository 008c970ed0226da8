import { hearTokens, wordsOf } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { figureWordsOf } from '../words/words.ts';
import type { Lexicon } from './lexicon.ts';
import { onceFor } from '../once.ts';
import type { Wholly } from './turn.ts';

/** A word or two are said of too many things. */
const leastWords = 3;

/** What is said so speaks of its check as likely as this. */
const leastShare = 0.4;

/** What is said of the vehicle itself may stand without it: "the car does nothing at all". */
export function saidWholly(clause: readonly Token[], lexicon: Lexicon): Wholly | undefined {
  if (!lexicon.isHeard) return undefined;
  const words = wordsOf(clause).map(lexicon.reader.unjoined);
  const ways = waysOf(lexicon);
  const told = ways.get(words.join(' ')) ?? ways.get(withoutVehicle(words, lexicon).join(' '));
  if (told === undefined) return undefined;
  const share = lexicon.subject()(hearTokens(clause, lexicon)).shareOf(told.check) ?? 0;
  return share < leastShare ? undefined : told;
}

/** The words behind what joins them to others, and behind the vehicle. */
function withoutVehicle(words: readonly string[], lexicon: Lexicon): readonly string[] {
  const { articles, joins, clauseBreaks } = lexicon.words;
  const { vehicle } = figureWordsOf(lexicon.words);
  const small = [...articles, ...joins, ...clauseBreaks];
  const at = words.slice(0, mostBefore).findLastIndex((word) => vehicle.includes(word));
  const rest = words.slice(at + 1);
  return rest.slice(
    Math.max(
      rest.findIndex((word) => !small.includes(word)),
      0,
    ),
  );
}

/** The vehicle stands among so many of the first words: "and now my old car". */
const mostBefore = 4;

/** What people are heard to say of one thing, of those that are told unasked, and of no other. */
const waysOf = onceFor((lexicon: Lexicon): ReadonlyMap<string, Wholly> => {
  const ways = new Map<string, Wholly | undefined>();
  for (const check of lexicon.checks.values()) {
    if (!check.isToldUnasked || check.check.form.kind !== 'choice') continue;
    for (const { id, spoken, heard } of check.options) {
      for (const { words } of [...spoken, ...heard()]) {
        if (words.length < leastWords) continue;
        const way = words.join(' ');
        const isOther = ways.has(way) && ways.get(way)?.check !== check.id;
        ways.set(way, isOther ? undefined : { check: check.id, value: [id] });
      }
    }
  }
  return new Map([...ways].flatMap(([way, told]) => (told === undefined ? [] : [[way, told]])));
});
