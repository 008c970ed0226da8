import type {
  AnswerTexts,
  CheckTexts,
  DecisionTexts,
  ReasonTexts,
  RemedyTexts,
  ToldTexts,
} from './flow-texts.ts';
import { LanguageError } from './language-error.ts';
import type { Say } from './texts/text-key.ts';

/** Which check's words a check uses; a flow's checks fit here. */
export type CheckLikes = Readonly<Record<string, { readonly like?: string }>>;

/**
 * The texts of a flow by id. What is missing is thrown as `text-missing` with the whole key, such
 * as `checks.dash.answers.dim.label`; nothing is ever put in its place.
 */
export interface FlowWords {
  readonly texts: ToldTexts;
  /** A check's words, its own before those of the check that it is like. */
  readonly check: (id: string) => CheckTexts;
  /** The name of a check or of a computed reading. */
  readonly checkName: (id: string) => string;
  readonly answerLabel: (check: string, answer: string) => string;
  /** What an answer means, or its label where that says it all. */
  readonly answerMeaning: (check: string, answer: string) => string;
  /** What to let pass where time settles a reading of this check. */
  readonly settling: (check: string) => string;
  readonly decision: (id: string) => DecisionTexts;
  readonly reason: (id: string) => ReasonTexts;
  /** What is said of a reason where it is given for a decision. */
  readonly reasonSaid: (id: string, decide: string) => readonly string[];
  readonly measure: (id: string) => string;
  readonly beside: (id: string) => string;
  readonly fault: (id: string) => string;
  readonly caution: (id: string) => string;
  readonly stop: (id: string) => string;
  readonly interrupt: (id: string) => ToldTexts['interrupts'][string];
  readonly root: (id: string) => string;
  readonly remedy: (id: string) => RemedyTexts;
  readonly send: (id: string) => string;
  readonly kit: (id: string) => string;
  readonly probe: (id: string) => string;
}

function pick<Item>(items: Readonly<Record<string, Item>> | undefined, key: string): Item {
  const id = key.slice(key.indexOf('.') + 1);
  const found = items !== undefined && Object.hasOwn(items, id) ? items[id] : undefined;
  if (found === undefined || found === '') throw new LanguageError('text-missing', key);
  return found;
}

/** The words of one flow; `likes` says whose words a check shares. */
export function createFlowWords(texts: ToldTexts, likes: CheckLikes, say: Say): FlowWords {
  const check = (id: string): CheckTexts => {
    const like = Object.hasOwn(likes, id) ? likes[id]?.like : undefined;
    if (like === undefined) return pick(texts.checks, `checks.${id}`);
    return { ...pick(texts.checks, `checks.${like}`), ...texts.checks[id] };
  };

  const isComputed = (id: string): boolean =>
    texts.computed !== undefined && Object.hasOwn(texts.computed, id);

  const answer = (checkId: string, id: string): AnswerTexts | undefined => {
    const own = isComputed(checkId) ? texts.computed?.[checkId]?.answers : check(checkId).answers;
    const holder = [own, texts.lamp].find(
      (those) => those !== undefined && Object.hasOwn(those, id),
    );
    return holder?.[id];
  };

  const answerLabel = (checkId: string, id: string): string => {
    const own = answer(checkId, id)?.label;
    if (own !== undefined && own !== '') return own;
    if (id === 'done') return say('question.done');
    throw new LanguageError('text-missing', `checks.${checkId}.answers.${id}.label`);
  };

  const reason = (id: string): ReasonTexts => pick(texts.reasons, `reasons.${id}`);

  return {
    texts,
    check,
    checkName: (id) =>
      isComputed(id) ? pick(texts.computed, `computed.${id}`).name : check(id).name,
    answerLabel,
    answerMeaning: (checkId, id) => answer(checkId, id)?.means ?? answerLabel(checkId, id),
    settling: (id) => pick({ settle: check(id).settle ?? '' }, `${id}.settle`),
    decision: (id) => pick(texts.decisions, `decisions.${id}`),
    reason,
    reasonSaid: (id, decide) => pick(reason(id).say, `${id}.${decide}`),
    measure: (id) => pick(texts.measures, `measures.${id}`),
    beside: (id) => pick(texts.besides, `besides.${id}`),
    fault: (id) => pick(texts.faults, `faults.${id}`).name,
    caution: (id) => pick(texts.cautions, `cautions.${id}`),
    stop: (id) => pick(texts.stops, `stops.${id}`),
    interrupt: (id) => pick(texts.interrupts, `interrupts.${id}`),
    root: (id) => pick(texts.roots, `roots.${id}`),
    remedy: (id) => pick(texts.remedies, `remedies.${id}`),
    send: (id) => pick(texts.send, `send.${id}`),
    kit: (id) => pick(texts.kit, `kit.${id}`),
    probe: (id) => pick(texts.probes, `probes.${id}`),
  };
}
