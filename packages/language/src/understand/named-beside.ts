import type { AnswerInput } from '@keyturn/core';
import { type Heard, findPhrase, hear, hearTokens } from '../typed/heard.ts';
import type { Terms } from '../typed/terms.ts';
import type { Token } from '../typed/token.ts';
import { chooseOption, chooseSeveral } from './choices.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { factsIn } from './told-facts.ts';
import { type Turn, mostClauses, optionsInHand } from './turn.ts';

/** What is said of a thing that it names is as sure as this of its answer. */
const sureNamed = 0.8;

/** A fact told beside is less likely than this to answer the question in hand. */
const notInHand = 0.2;

/** An answer told beside the one in hand, and where its clauses end. */
interface Beside {
  readonly check: string;
  readonly values: readonly string[];
  readonly to: number;
}

/**
 * The answer in hand, and what is told of other things beside it by their names, or of the vehicle
 * and its place: "it's sound, and the relay clicks", "safe, we're at home". Undefined where nothing
 * is told beside, or nothing answers what was asked.
 */
export function namedBeside(turn: Turn): readonly AnswerInput[] | undefined {
  const { lexicon } = turn.listener;
  const check = optionsInHand(turn);
  if (check === undefined || !lexicon.isHeard) return undefined;
  const clauses = turn.clauses.slice(0, mostClauses);
  const own: (readonly Token[])[] = [];
  const beside: Beside[] = [];
  for (let at = 0; at < clauses.length; at += 1) {
    const told = [at + 1, at + 2]
      .filter((to) => to <= clauses.length)
      .map((to) => toldOf(clauses.slice(at, to), check, turn))
      .find((one) => one !== undefined);
    if (told === undefined) own.push(clauses[at] ?? []);
    else {
      beside.push({ ...told, to: at + told.to });
      at += told.to - 1;
    }
  }
  if (beside.length === 0 || own.length === 0) return undefined;
  const values = chosen(own, check, lexicon);
  if (values.length === 0) return undefined;
  return [{ check: check.id, value: values }, ...plain(beside)];
}

/** Of two answers to one check neither is taken. */
function plain(beside: readonly Beside[]): readonly AnswerInput[] {
  const byCheck = new Map<string, Set<string>>();
  for (const { check, values } of beside)
    byCheck.set(check, new Set([...(byCheck.get(check) ?? []), ...values]));
  return [...byCheck]
    .filter(([, values]) => values.size === 1)
    .map(([check, values]) => ({ check, value: [...values] }));
}

const comma: Token = { kind: 'mark', text: ',' };

function joined(clauses: readonly (readonly Token[])[]): readonly Token[] {
  return clauses.flatMap((clause, at) => (at === 0 ? clause : [comma, ...clause]));
}

function chosen(
  clauses: readonly (readonly Token[])[],
  check: CheckPhrases,
  lexicon: Lexicon,
): readonly string[] {
  const { form } = check.check;
  const heardOf = (clause: readonly Token[]): Heard => hearTokens(clause, lexicon);
  if (form.kind === 'choice' && form.several) return chooseSeveral(clauses.map(heardOf), check);
  const choice = chooseOption(heardOf(joined(clauses)), check);
  return choice.type === 'one' ? [choice.fit.id] : [];
}

/** The one answer that clauses give to a check that the first of them names, or to a fact. */
function toldOf(
  clauses: readonly (readonly Token[])[],
  inHand: CheckPhrases,
  turn: Turn,
): Beside | undefined {
  const { lexicon } = turn.listener;
  const { reader, vocabulary, checks } = lexicon;
  const [first = []] = clauses;
  const literal = hear(reader.literally(first), vocabulary);
  const isNamed = (name: Terms): boolean => findPhrase(literal, name) >= 0;
  if (inHand.names.some(isNamed)) return undefined;
  const heard = hearTokens(joined(clauses), lexicon);
  const told = [...checks.values()].flatMap((check) => {
    const { form, like } = check.check;
    if (form.kind !== 'choice' || like !== undefined) return [];
    const isOther = (name: Terms): boolean => isNamed(name) && !isOf(name, inHand, lexicon);
    const name = check.names.find(isOther);
    // A name alone says nothing of the thing.
    if (name === undefined || literal.at.length <= name.length) return [];
    const shares = check.taught()(heard).answers;
    const most = Math.max(0, ...shares);
    const value = check.options[shares.indexOf(most)]?.id;
    return most < sureNamed || value === undefined || value === 'none'
      ? []
      : [{ check: check.id, values: [value], to: clauses.length, most }];
  });
  return told.sort((one, other) => other.most - one.most)[0] ?? factOf(clauses, inHand, turn);
}

/** The fact of the vehicle or its place that a clause tells, where it answers nothing that was asked. */
function factOf(
  clauses: readonly (readonly Token[])[],
  inHand: CheckPhrases,
  turn: Turn,
): Beside | undefined {
  const [clause, more] = clauses;
  if (clause === undefined || more !== undefined) return undefined;
  const heard = hearTokens(clause, turn.listener.lexicon);
  if (Math.max(0, ...inHand.taught()(heard).answers) >= notInHand) return undefined;
  const { checks } = turn.listener.lexicon;
  const usual = new Set(inHand.options.flatMap(({ usual: own }) => [...own()]));
  const fact = factsIn(heard, turn).find(
    ({ answer, terms }) =>
      Object.keys(checks.get(answer.check)?.check.sets ?? {}).length > 0 &&
      ![...terms].every((term) => usual.has(term)),
  );
  if (fact === undefined) return undefined;
  return { check: fact.answer.check, values: fact.answer.value, to: 1 };
}

/** A name that stands in this much of what says one answer to a check is no name of another there. */
const leastRate = 0.03;

const kept = new WeakMap<CheckPhrases, Map<Terms, boolean>>();

/** True where what answers the check is said by that name as well: the spare key that is at hand. */
function isOf(name: Terms, check: CheckPhrases, { reader }: Lexicon): boolean {
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
