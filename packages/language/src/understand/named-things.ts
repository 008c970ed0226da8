import { type Heard, findPhrase, hear, hearTokens, partOf } from '../typed/heard.ts';
import type { Terms } from '../typed/terms.ts';
import type { Token } from '../typed/token.ts';
import { phraseAt } from '../readings/word-run.ts';
import { isOfSeveral, likeliest } from './choices.ts';
import { isOfKit } from './kit-told.ts';
import { someOf } from './learned.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { onceFor, onceWith } from '../once.ts';
import { indexByTerm } from './term-index.ts';
import { isTrial } from './unasked.ts';

/** What is said of a thing that it names is as sure as this of its answer. */
const sureNamed = 0.65;

/** A clause as likely as this to answer the question in hand is left to it. */
export const notInHand = 0.2;

type Clause = readonly Token[];

/** What clauses say of a thing that they name. */
export interface NamedAnswer {
  readonly check: string;
  readonly value: readonly [string];
}

/** Among which things a name is looked for. */
interface Among {
  /** The question in hand; what names it, or may well be said to it, names nothing else. */
  readonly inHand: CheckPhrases | undefined;
  readonly lexicon: Lexicon;
}

const comma: Token = { kind: 'mark', text: ',' };

/** Clauses as one text. */
export function joinClauses(clauses: readonly Clause[]): Clause {
  return clauses.flatMap((clause, at) => (at === 0 ? clause : [comma, ...clause]));
}

/** The one answer that clauses give to a check that the first of them names: "the relay clicks". */
export function namedAnswer(
  clauses: readonly Clause[],
  { inHand, lexicon }: Among,
): NamedAnswer | undefined {
  const [first = []] = clauses;
  const heard = hearTokens(joinClauses(clauses), lexicon);
  const told = namedIn(first, { inHand, lexicon }).flatMap(({ check, name }) => {
    if (isOfSeveral(check) || isNameAlone(first, name, lexicon)) return [];
    const { id, share } = likeliest(heard, check);
    if (share < sureNamed || id === undefined) return [];
    return isTried(check) && !saysTried(heard, name, { check, id })
      ? []
      : [{ check: check.id, id, share }];
  });
  const [best] = told.sort((one, other) => other.share - one.share);
  return best === undefined ? undefined : { check: best.check, value: [best.id] };
}

/**
 * What clauses say came of trying a thing that the first of them names: "swapped the relay, no
 * change". It is said as surely without the name, which most answers have anyway.
 */
export function triedIn(clauses: readonly Clause[], lexicon: Lexicon): NamedAnswer | undefined {
  const [first = [], ...others] = clauses;
  const heard = hearTokens(joinClauses(clauses), lexicon);
  const [told] = namedIn(first, { inHand: undefined, lexicon }).flatMap(({ check, name }) => {
    // A steering wheel may be locked without anybody having tried to free it.
    if (!isTrial(check.check) || check.check.does.length === 0) return [];
    const isName = (token: Token): boolean =>
      lexicon.reader.literally([token]).every((term) => name.includes(term));
    const rest = others.length > 0 ? joinClauses(others) : first.filter((one) => !isName(one));
    // "Changed" is said of any work: the thing itself is named beside it.
    const isThing = lexicon.reader
      .literally(first)
      .some((term) => check.topic.has(term) && !name.includes(term));
    if (!isThing && isSaidOfWork(name, lexicon)) return [];
    const { id, share } = likeliest(heard, check);
    const left = likeliest(hearTokens(rest, lexicon), check);
    const isSaid = share >= sureNamed && left.id === id && left.share >= sureNamed;
    return isSaid && id !== undefined ? [{ check: check.id, value: [id] as const }] : [];
  });
  return told;
}

/** True for the check of what was done or happened before. */
export function isOfPast(check: CheckPhrases): boolean {
  return check.check.at === 'memory' && isOfSeveral(check) && !isOfKit(check);
}

/** True where what was done before is told by that name as well. */
const isSaidOfWork = onceWith((name: Terms, { checks }: Lexicon): boolean =>
  [...checks.values()]
    .filter(isOfPast)
    .flatMap(({ options }) => options.flatMap(({ literal }) => literal()))
    .some((said) => name.every((term) => said.includes(term))),
);

/** What was just said, said of another thing as well: "goes dim, the headlights too". */
export function likewise(
  clause: Clause,
  said: readonly Clause[],
  { inHand, lexicon }: Among,
): NamedAnswer | undefined {
  const { likewise: too = [] } = lexicon.words;
  if (said.length === 0 || !clause.some((_, at) => phraseAt(clause, at, too) > 0)) return undefined;
  const heard = hearTokens(joinClauses(said), lexicon);
  const told = namedIn(clause, { inHand, lexicon }, false).flatMap(({ check, name }) => {
    if (!isNameAlone(clause, name, lexicon)) return [];
    // Of what was tried the same is that nothing changed: "in P, and the same in neutral".
    if (isTried(check) && !isTried(inHand)) {
      const tried = likeliest(hearTokens(clause, lexicon), check);
      const isSame = tried.id === unchanged && tried.share >= sureNamed;
      return isSame ? [{ check: check.id, id: unchanged }] : [];
    }
    const { id, share } = likeliest(heard, check);
    const same = share < sureNamed ? sameOf(heard, inHand, check) : id;
    return same === undefined ? [] : [{ check: check.id, id: same }];
  });
  const [only, more] = told;
  if (only === undefined || more !== undefined) return undefined;
  return { check: only.check, value: [only.id] };
}

/** Words beside its name say what came of trying a thing as surely as this. */
const sureTried = 0.8;

/** True where more than the name of what was tried says what came of it: the spare key is in a bag. */
function saysTried(
  heard: Heard,
  name: Terms,
  { check, id }: { readonly check: CheckPhrases; readonly id: string },
): boolean {
  const rest = partOf(heard, (term) => !name.includes(term.replace('!', '')));
  const left = likeliest(rest, check);
  return left.id === id && left.share >= sureTried;
}

/** The answer that nothing came of what was tried. */
const unchanged = 'no-change';

function isTried(check: CheckPhrases | undefined): boolean {
  return check?.options.some(({ id }) => id === unchanged) === true;
}

/** So much of what people say for an answer is looked at to find the same one of another thing. */
const mostSaid = 40;

/** So much of it says that answer there as well. */
const leastSame = 0.6;

/** The answer of another check that is said as the answer in hand is: lamps and dash that go out. */
function sameOf(
  heard: Heard,
  inHand: CheckPhrases | undefined,
  other: CheckPhrases,
): string | undefined {
  if (inHand === undefined) return undefined;
  const { id, share } = likeliest(heard, inHand);
  const option = inHand.options.find((one) => one.id === id);
  if (share < sureNamed || option === undefined || !other.isWellHeard) return undefined;
  const said = someOf([...option.spoken, ...option.heard()], mostSaid);
  const sums = other.options.map(() => 0);
  for (const one of said) {
    other
      .taught()(one)
      .answers.forEach((own, at) => {
        sums[at] = (sums[at] ?? 0) + own;
      });
  }
  const best = Math.max(...sums);
  return best >= leastSame * said.length ? other.options[sums.indexOf(best)]?.id : undefined;
}

/** A check that a clause names, and by what. */
interface Named {
  readonly check: CheckPhrases;
  readonly name: Terms;
}

/** Every check of which a clause has a name, with those that it has. */
const namesIn = onceWith((clause: Clause, { reader, vocabulary, checks }: Lexicon) => {
  const literal = hear(reader.literally(clause), vocabulary);
  const said = new Map<CheckPhrases, Terms[]>();
  for (const { check, name } of namedBy(checks)(literal)) {
    if (findPhrase(literal, name) < 0) continue;
    const names = said.get(check);
    if (names === undefined) said.set(check, [name]);
    else names.push(name);
  }
  return [...said].map(([check, names]) => ({ check, names }));
});

/** Every name of every check, by its terms. */
const namedBy = onceFor((checks: Lexicon['checks']) =>
  indexByTerm(
    [...checks.values()].flatMap((check) => check.names.map((name): Named => ({ check, name }))),
    ({ name }) => name,
  ),
);

/**
 * The checks that a clause names; none where it names the one in hand, or may be one of several
 * answers to it. A name that is said to the one in hand as well counts only where that is no matter.
 */
function namedIn(
  clause: Clause,
  { inHand, lexicon }: Among,
  isOnlyOthers = true,
): readonly Named[] {
  const said = namesIn(clause, lexicon);
  if (said.some(({ check }) => check === inHand)) return [];
  const mayBeOneOfSeveral =
    inHand !== undefined &&
    isOfSeveral(inHand) &&
    likeliest(hearTokens(clause, lexicon), inHand).share >= notInHand;
  if (mayBeOneOfSeveral) return [];
  return said.flatMap(({ check, names }) => {
    const { form, like } = check.check;
    if (form.kind !== 'choice' || like !== undefined || isOfThing(inHand, check)) return [];
    const name = names.find(
      (one) => !isOnlyOthers || inHand === undefined || !isSaidTo(inHand, one),
    );
    return name === undefined ? [] : [{ check, name }];
  });
}

/** True where the question in hand is about a part of the thing: the switch of the clutch pedal. */
export function isOfThing(
  inHand: CheckPhrases | undefined,
  thing: CheckPhrases | undefined,
): boolean {
  const topic = [...(thing?.topic ?? [])];
  return topic.length > 1 && topic.every((term) => inHand?.topic.has(term) === true);
}

/** True where a clause has no more than a name, small words, and that it is the same with it. */
function isNameAlone(clause: Clause, name: Terms, { words, reader }: Lexicon): boolean {
  const { likewise: too = [], fillers, articles, joins } = words;
  const isSmall = (word: string): boolean =>
    fillers.includes(word) || articles.includes(word) || joins.includes(word);
  for (let at = 0; at < clause.length; at += 1) {
    const token = clause[at];
    const length = phraseAt(clause, at, too);
    if (length > 0) at += length - 1;
    else if (
      token?.kind === 'number' ||
      (token?.kind === 'word' &&
        !isSmall(token.text) &&
        !reader.literally([token]).every((term) => name.includes(term)))
    )
      return false;
  }
  return true;
}

/** A name that stands in this much of what says one answer to a check is no name of another there. */
const leastRate = 0.03;

/** True where what answers the check is said by that name as well: the spare key that is at hand. */
const isSaidTo = onceWith((check: CheckPhrases, name: Terms): boolean =>
  check.options.some(({ literal }) => {
    const said = literal();
    return said.filter((way) => isIn(way, name)).length >= leastRate * said.length;
  }),
);

/** True where all of a name stands in a row. */
function isIn(said: Terms, name: Terms): boolean {
  return said.some((_, start) => name.every((term, at) => said[start + at] === term));
}
