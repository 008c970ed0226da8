import type { Token } from '../typed/token.ts';
import { figureWordsOf } from '../words/words.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { onceFor } from '../once.ts';

/** What the vehicle is, and the words that say it. */
interface Said {
  readonly check: string;
  readonly id: string;
}

/** A fact in a text, and how many of its tokens say it. */
interface Found extends Said {
  readonly length: number;
}

/** Facts of the vehicle that stand together, and whether nothing but them stands in the clause. */
interface Run {
  readonly facts: readonly { readonly check: string; readonly value: readonly string[] }[];
  readonly isClause: boolean;
}

/** Such facts are said in so many words at most. */
const longest = 3;

/** Said of anything, it says nothing of the vehicle. */
const other = 'other';

/**
 * What is said of the vehicle in a word or a few, word for word; none that says two things, nor a
 * word that answers something else as well: "normal" alone is no gearbox.
 */
const waysOf = onceFor((lexicon: Lexicon): ReadonlyMap<string, Said> => {
  const ways = new Map<string, Said | undefined>();
  for (const check of lexicon.checks.values()) {
    const isVehicle = isOfVehicle(check);
    for (const { id, spoken, heard } of check.options.filter((option) => option.id !== other)) {
      for (const { words } of [...spoken, ...heard()]) {
        if (words.length > (isVehicle ? longest : 1)) continue;
        const way = words.join(' ');
        const before = ways.get(way);
        const isSame = before?.check === check.id && before.id === id;
        const isOther = !isVehicle || (ways.has(way) && !isSame);
        ways.set(way, isOther ? undefined : { check: check.id, id });
      }
    }
  }
  return new Map([...ways].flatMap(([way, said]) => (said === undefined ? [] : [[way, said]])));
});

/** True for a check that says what the vehicle is. */
export function isOfVehicle({ check: { sets } }: CheckPhrases): boolean {
  return Object.values(sets).some((set) =>
    Object.keys(set).some((key) => key.startsWith('vehicle.')),
  );
}

/** Small words, the vehicle and its engine: "the car's a diesel" says no more than "diesel". */
const smallOf = onceFor(({ words }: Lexicon): ReadonlySet<string> => {
  const { fillers, articles, joins } = words;
  const { vehicle, engine } = figureWordsOf(words);
  return new Set([...fillers, ...articles, ...joins, ...vehicle, ...engine]);
});

/**
 * Facts of the vehicle that stand side by side, or alone between two marks: "manual petrol", "…,
 * diesel, …". Of two answers to one check neither is taken.
 */
export function factRuns(clause: readonly Token[], lexicon: Lexicon): readonly Run[] {
  const small = smallOf(lexicon);
  const words = clause.flatMap((token) =>
    token.kind === 'word'
      ? [lexicon.reader.unjoined(token.text)]
      : token.kind === 'number'
        ? [token.digits]
        : [''],
  );
  const ways = waysOf(lexicon);
  const foundAt = (at: number): Found | undefined => {
    for (let length = Math.min(longest, words.length - at); length > 0; length -= 1) {
      const said = ways.get(words.slice(at, at + length).join(' '));
      if (said !== undefined) return { ...said, length };
    }
    return undefined;
  };
  const runs: Found[][] = [];
  let isOpen = false;
  let isClause = true;
  for (let at = 0; at < words.length; at += 1) {
    const found = foundAt(at);
    if (found !== undefined) {
      if (isOpen) runs.at(-1)?.push(found);
      else runs.push([found]);
      isOpen = true;
      at += found.length - 1;
    } else if (!small.has(words[at] ?? '')) isOpen = isClause = false;
  }
  return runs.map((run) => ({ facts: plain(run), isClause: isClause && runs.length === 1 }));
}

function plain(run: readonly Said[]): Run['facts'] {
  const checks = [...new Set(run.map(({ check }) => check))];
  return checks.flatMap((check) => {
    const ids = [...new Set(run.filter((one) => one.check === check).map(({ id }) => id))];
    return ids.length === 1 ? [{ check, value: ids }] : [];
  });
}
