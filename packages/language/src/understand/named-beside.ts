import type { AnswerInput } from '@keyturn/core';
import { type Heard, findPhrase, hear, hearTokens } from '../typed/heard.ts';
import type { Terms } from '../typed/terms.ts';
import type { Token } from '../typed/token.ts';
import { phraseAt } from '../readings/word-run.ts';
import { chooseOption, chooseSeveral } from './choices.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { factsIn } from './told-facts.ts';
import { type Turn, mostClauses, optionsInHand } from './turn.ts';

/** What is said of a thing that it names is as sure as this of its answer. */
const sureNamed = 0.65;

/** A fact told beside is less likely than this to answer the question in hand. */
const notInHand = 0.2;

type Clause = readonly Token[];

/** An answer told beside the one in hand, and how many clauses it takes. */
interface Beside {
  readonly check: string;
  readonly values: readonly string[];
  readonly length: number;
  /** The answer in hand that it says as well: who is at home is safe. */
  readonly also?: string | undefined;
}

/**
 * The answer in hand, and what is told beside it: of other things by their names, of the vehicle and
 * its place: "it's sound, and the relay clicks", "safe, we're at home". Undefined where nothing is
 * told beside, or nothing answers what was asked.
 */
export function namedBeside(turn: Turn): readonly AnswerInput[] | undefined {
  const { lexicon } = turn.listener;
  const check = optionsInHand(turn);
  if (check === undefined || !lexicon.isHeard) return undefined;
  const clauses = turn.clauses.slice(0, mostClauses);
  const own: Clause[] = [];
  const beside: Beside[] = [];
  for (let at = 0; at < clauses.length; at += 1) {
    const rest = clauses.slice(at);
    const told =
      toldOf(rest.slice(0, 1), check, turn) ??
      toldOf(rest.slice(0, 2), check, turn) ??
      likewise(rest, own, { check, lexicon }) ??
      factOf(rest, check, turn);
    if (told === undefined) own.push(clauses[at] ?? []);
    else {
      beside.push(told);
      at += told.length - 1;
    }
  }
  if (beside.length === 0 || own.length === 0) return undefined;
  const values = chosen(own, check, lexicon);
  if (values.length === 0) return undefined;
  const agreeing = beside.filter(({ also }) => also === undefined || values.includes(also));
  return [{ check: check.id, value: values }, ...plain(agreeing, lexicon)];
}

/** Of two answers to a check that has one neither is taken. */
function plain(beside: readonly Beside[], { checks }: Lexicon): readonly AnswerInput[] {
  const byCheck = new Map<string, Set<string>>();
  for (const { check, values } of beside)
    byCheck.set(check, new Set([...(byCheck.get(check) ?? []), ...values]));
  return [...byCheck]
    .filter(([check, values]) => values.size === 1 || isOfSeveral(checks.get(check)))
    .map(([check, values]) => ({ check, value: [...values] }));
}

function isOfSeveral(check: CheckPhrases | undefined): boolean {
  return check?.check.form.kind === 'choice' && check.check.form.several;
}

const comma: Token = { kind: 'mark', text: ',' };

function joined(clauses: readonly Clause[]): Clause {
  return clauses.flatMap((clause, at) => (at === 0 ? clause : [comma, ...clause]));
}

function chosen(
  clauses: readonly Clause[],
  check: CheckPhrases,
  lexicon: Lexicon,
): readonly string[] {
  const heardOf = (clause: Clause): Heard => hearTokens(clause, lexicon);
  if (isOfSeveral(check)) return chooseSeveral(clauses.map(heardOf), check);
  const choice = chooseOption(heardOf(joined(clauses)), check);
  return choice.type === 'one' ? [choice.fit.id] : [];
}

/** A check that a clause names, and by what. */
interface Named {
  readonly check: CheckPhrases;
  readonly name: Terms;
}

/** The checks that a clause names; none where it names the one in hand, or may be one of several answers to it. */
function namedIn(clause: Clause, inHand: CheckPhrases, lexicon: Lexicon): readonly Named[] {
  const { reader, vocabulary, checks } = lexicon;
  const literal = hear(reader.literally(clause), vocabulary);
  const isNamed = (name: Terms): boolean => findPhrase(literal, name) >= 0;
  if (inHand.names.some(isNamed)) return [];
  if (isOfSeveral(inHand) && mostLikely(hearTokens(clause, lexicon), inHand).share >= notInHand)
    return [];
  return [...checks.values()].flatMap((check) => {
    const { form, like } = check.check;
    if (form.kind !== 'choice' || like !== undefined) return [];
    const name = check.names.find((one) => isNamed(one) && !isSaidTo(inHand, one, lexicon));
    return name === undefined ? [] : [{ check, name }];
  });
}

function mostLikely(
  heard: Heard,
  check: CheckPhrases,
): { readonly id: string | undefined; readonly share: number } {
  const shares = check.taught()(heard).answers;
  const share = Math.max(0, ...shares);
  return { id: check.options[shares.indexOf(share)]?.id, share };
}

/** The one answer that clauses give to a check that the first of them names. */
function toldOf(
  clauses: readonly Clause[],
  inHand: CheckPhrases,
  { listener: { lexicon } }: Turn,
): Beside | undefined {
  const [first = []] = clauses;
  const heard = hearTokens(joined(clauses), lexicon);
  const told = namedIn(first, inHand, lexicon).flatMap(({ check, name }) => {
    if (isNameAlone(first, name, lexicon)) return [];
    const { id, share } = mostLikely(heard, check);
    return share < sureNamed || id === undefined || isOfSeveral(check)
      ? []
      : [{ check: check.id, values: [id], length: clauses.length, share }];
  });
  return told.sort((one, other) => other.share - one.share)[0];
}

/** What was just said, said of another thing as well: "goes dim, the headlights too". */
function likewise(
  [clause = []]: readonly Clause[],
  own: readonly Clause[],
  { check: inHand, lexicon }: { readonly check: CheckPhrases; readonly lexicon: Lexicon },
): Beside | undefined {
  const { likewise: too = [] } = lexicon.words;
  const said = hearTokens(joined(own), lexicon);
  if (own.length === 0 || !clause.some((_, at) => phraseAt(clause, at, too) > 0)) return undefined;
  const told = namedIn(clause, inHand, lexicon).flatMap(({ check, name }) => {
    if (!isNameAlone(clause, name, lexicon)) return [];
    const { id, share } = mostLikely(said, check);
    return share < sureNamed || id === undefined ? [] : [{ check: check.id, id }];
  });
  const [only, more] = told;
  if (only === undefined || more !== undefined) return undefined;
  return { check: only.check, values: [only.id], length: 1 };
}

/** True where a clause has no more than a name, small words, and that it is the same with it. */
function isNameAlone(clause: Clause, name: Terms, { words, reader }: Lexicon): boolean {
  const { likewise: too = [], fillers, articles, joins } = words;
  const small = new Set([...fillers, ...articles, ...joins]);
  for (let at = 0; at < clause.length; at += 1) {
    const token = clause[at];
    const length = phraseAt(clause, at, too);
    if (length > 0) at += length - 1;
    else if (
      token?.kind === 'number' ||
      (token?.kind === 'word' &&
        !small.has(token.text) &&
        !reader.literally([token]).every((term) => name.includes(term)))
    )
      return false;
  }
  return true;
}

/** The fact of the vehicle or its place that a clause tells beside the answer in hand. */
function factOf(
  [clause = []]: readonly Clause[],
  inHand: CheckPhrases,
  turn: Turn,
): Beside | undefined {
  const { lexicon } = turn.listener;
  const { at } = inHand.check;
  const heard = hearTokens(clause, lexicon);
  if (at !== 'memory' && at !== 'seat') return undefined;
  const answered = mostLikely(heard, inHand);
  const usual = new Set(inHand.options.flatMap(({ usual: own }) => [...own()]));
  const fact = factsIn(heard, turn).find(({ answer, terms }) => {
    const check = lexicon.checks.get(answer.check)?.check;
    const isOfVehicle = Object.keys(check?.sets ?? {}).length > 0;
    return isOfVehicle && ![...terms].every((term) => usual.has(term));
  });
  return fact === undefined
    ? undefined
    : {
        check: fact.answer.check,
        values: fact.answer.value,
        length: 1,
        also: answered.share < notInHand ? undefined : answered.id,
      };
}

/** A name that stands in this much of what says one answer to a check is no name of another there. */
const leastRate = 0.03;

const kept = new WeakMap<CheckPhrases, Map<Terms, boolean>>();

/** True where what answers the check is said by that name as well: the spare key that is at hand. */
function isSaidTo(check: CheckPhrases, name: Terms, { reader }: Lexicon): boolean {
  const known = kept.get(check) ?? new Map<Terms, boolean>();
  kept.set(check, known);
  const found = known.get(name);
  if (found !== undefined) return found;
  const wanted = ` ${name.join(' ')} `;
  const is = check.options.some(({ spoken, heard }) => {
    const said = [...spoken, ...heard()];
    const holds = said.filter(({ words }) =>
      ` ${reader.literally(words.join(' ')).join(' ')} `.includes(wanted),
    );
    return holds.length >= leastRate * said.length;
  });
  known.set(name, is);
  return is;
}
