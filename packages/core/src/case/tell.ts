/**
 * What a turn has to say, from the case before it, its events and the case after it.
 */
import type { Chart } from '../chart/compile.ts';
import type { Caution, Check, Fault, Flow, Stop } from '../flow/flow.ts';
import { optionsOf } from '../flow/options-of.ts';
import { askedBeside } from './asked-beside.ts';
import { assess } from './assessment.ts';
import { rankingsWith } from './belief.ts';
import type { Case } from './case.ts';
import type { ContextValue } from './context.ts';
import type { LaterEvent } from './event.ts';
import { whatIf } from './decision.ts';
import { boundsOfCheck, likeliest } from './findings.ts';
import { holds } from '../flow/condition.ts';
import type {
  AskMessage,
  CautionMessage,
  Message,
  NotedMessage,
  RankingMessage,
  WhyMessage,
} from './message.ts';
import { knownOf } from './test-figures.ts';
import { isRemembered, pendingCautions } from './cautions.ts';
import { isDoubted } from './doubt.ts';
import { weightsMessage } from './explain.ts';
import { mentionedOf } from './in-passing.ts';
import { makerLimit } from './part-limits.ts';
import { positionOf } from './position.ts';
import { coversAll, forbiddenActivities, mayWork } from './possible.ts';
import { doneMessage } from './repair-proof.ts';
import { reckonWorth } from './reckon.ts';
import { isReading, isSaid, type CaseState } from './state.ts';
import { expectedOf, readingMessage, scaleBound } from './tell-reading.ts';

/** How many faults a ranking shows. */
const shownFaults = 5;

/** What was taken of the events: readings on their scale, answers, and what was set aside. */
export function tellEvents(
  chart: Chart,
  cases: { readonly before: Case; readonly after: Case },
  events: readonly LaterEvent[],
): readonly Message[] {
  const { before, after } = cases;
  const { flow } = chart;
  const taken = events.flatMap((event): readonly Message[] => {
    switch (event.type) {
      case 'answered':
      case 'corrected':
        return tellAnswer(flow, after.state, event);
      case 'interrupted':
        return tellInterrupt(flow, event.interrupt);
      case 'context-changed':
        return tellContext(flow, after.state, Object.keys(event.context));
      case 'resumed':
        return [{ kind: 'tell', tell: 'resumed' }];
      case 'withdrawn':
        return tellWithdrawn(flow, after);
      case 'went-back':
        return tellBack(before, after);
      default:
        return [];
    }
  });
  const corrected = events.flatMap((event) => (event.type === 'corrected' ? [event.check] : []));
  const gone = before.state.order.filter(
    (check) => after.state.answers[check] === undefined && !corrected.includes(check),
  );
  if (corrected.length > 0 && gone.length > 0) taken.push({ kind: 'set-aside', checks: gone });
  return [...taken, ...tellRanking(before.state, after.state)];
}

function tellInterrupt(flow: Flow, id: string): readonly Message[] {
  const interrupt = flow.interrupts[id];
  if (interrupt === undefined) return [];
  const { word, then } = interrupt;
  return [{ kind: 'interrupt', interrupt: id, word, then }];
}

/** What was told of never was: the case goes on, or comes back to a danger that was told of before. */
function tellWithdrawn(flow: Flow, after: Case): readonly Message[] {
  const position = positionOf(after);
  return [
    { kind: 'tell', tell: 'withdrawn' },
    ...('interrupt' in position ? tellInterrupt(flow, position.interrupt) : []),
  ];
}

/** What going back led to: an interrupt or a correction undone, or the question before. */
function tellBack(before: Case, after: Case): readonly Message[] {
  if (positionOf(before).awaiting === 'resume') {
    return positionOf(after).awaiting === 'resume' ? [] : [{ kind: 'tell', tell: 'resumed' }];
  }
  return before.state.corrected
    ? [{ kind: 'tell', tell: 'restored' }]
    : [{ kind: 'tell', tell: 'returned', about: before.state.order.at(-1) ?? '' }];
}

/** Where the case stands now: the verdict when it has just been given, and what it waits for. */
export function tellPosition(chart: Chart, kase: Case, before?: Case): readonly Message[] {
  const { flow } = chart;
  const { state } = kase;
  const messages: Message[] = [];
  if (state.verdict !== null && state.verdict !== before?.state.verdict) {
    // What can hurt comes before what to do.
    messages.push(...cautionsOfVerdict(flow, state), state.verdict);
  }
  if (state.decision !== null && state.decision !== before?.state.decision) {
    messages.push(state.decision);
  }
  const position = positionOf(kase);
  switch (position.awaiting) {
    case 'answer':
      // What must be confirmed has been by now; the other cautions are said with the question.
      messages.push(
        ...pendingCautions(flow, state, position.check).flatMap(({ id }) =>
          cautionMessage(flow, id),
        ),
        ...readAgain(flow, state, position.check),
        ...askMessage(flow, state, position.check),
      );
      break;
    case 'confirm': {
      const cautions = pendingCautions(flow, state, position.check);
      messages.push(...cautions.flatMap(({ id }) => cautionMessage(flow, id)));
      messages.push({
        kind: 'confirm',
        check: position.check,
        cautions: cautions.filter(({ confirm }) => confirm).map(({ id }) => id),
      });
      break;
    }
    case 'wait':
      messages.push({
        kind: 'wait',
        check: position.check,
        minutes: flow.checks[position.check]?.waitMinutes ?? 0,
        due: state.due[position.check] ?? state.at,
      });
      break;
    case 'resume':
      break;
    case 'nothing':
      messages.push(doneMessage(flow, state));
  }
  return messages;
}

/**
 * The cautions of a verdict: those that hold whatever is done next, and, where whoever is there may
 * do the work, those of the fault, but for what the stops in force forbid anyhow.
 */
export function cautionsOfVerdict(flow: Flow, state: CaseState): readonly CautionMessage[] {
  const fault = flow.faults[state.verdict?.fault ?? ''];
  if (fault === undefined) return [];
  const { findings, stops } = assess(flow, state);
  const general = Object.values(flow.cautions)
    .filter(({ before }) => before.some(coversAll))
    .filter(
      ({ id, when }) =>
        !state.cautioned.includes(id) && when && holds(when, findings.known) === true,
    )
    .map(({ id }) => id);
  const ofWork = mayWork(flow, stops)
    ? fault.cautions.filter((id) => !isBeforePassedOver(flow.cautions[id], fault, stops))
    : [];
  return [...new Set([...general, ...ofWork])].flatMap((id) => cautionMessage(flow, id));
}

/** True for a caution said only before what the stops forbid, such as a remedy that was passed over. */
function isBeforePassedOver(
  caution: Caution | undefined,
  { remedies }: Fault,
  stops: readonly Stop[],
): boolean {
  const before = caution?.before ?? [];
  if (before.some(({ does, at, checks }) => !does || at || checks)) return false;
  const activities = before.flatMap(({ does }) => does ?? []);
  const forbidden = forbiddenActivities(stops);
  return (
    activities.every((activity) => forbidden.includes(activity)) &&
    remedies.some(({ does }) => does.some((activity) => activities.includes(activity)))
  );
}

/** What each outcome of the check in hand would mean. */
export function tellWhy(chart: Chart, kase: Case): readonly Message[] {
  const position = positionOf(kase);
  if (!('check' in position)) return [];
  const { flow } = chart;
  const check = flow.checks[position.check];
  if (check === undefined) return [];
  const { findings } = assess(flow, kase.state);
  const { form } = check;
  const bounds =
    form.kind === 'reading'
      ? boundsOfCheck(form, {
          limits: findings.limits,
          maker: makerLimit(kase.state.context, check.id),
        })
      : undefined;
  const expectedValue = expectedOf(flow, findings, check.id);
  const why: WhyMessage = {
    kind: 'why',
    check: check.id,
    outcomes: form.kind === 'work' ? [] : outcomesOf(flow, kase.state, check),
    bounds: (bounds ?? []).map(scaleBound),
    ...(expectedValue === undefined ? {} : { expected: expectedValue }),
    ...(form.kind === 'reading' ? { unit: form.unit } : {}),
    ...worthOf(flow, kase.state, check.id),
  };
  const { verdict } = kase.state;
  return verdict === null ? [why] : [why, weightsMessage(flow, kase.state, verdict.fault)];
}

/** What each answer would make likely, or where a table would go on from it. */
function outcomesOf(flow: Flow, state: CaseState, check: Check): WhyMessage['outcomes'] {
  const answers = optionsOf(check);
  if (flow.decisions.length > 0) {
    return answers.map((answer) => {
      const line = whatIf(flow, state, { check: check.id, answer });
      return line === undefined
        ? { answer, faults: [] }
        : { answer, faults: [], decision: { decide: line.decide, reason: line.reason } };
    });
  }
  const rankings = rankingsWith(flow, assess(flow, state).findings, { check: check.id, answers });
  return answers.map((answer, index) => ({ answer, faults: (rankings[index] ?? []).slice(0, 3) }));
}

/** What a check is worth, where it was chosen by that. */
function worthOf(flow: Flow, state: CaseState, check: string): Pick<WhyMessage, 'worth'> {
  if (state.verdict !== null || state.next?.to !== 'check') return {};
  if (!flow.byWorth.includes(state.next.stage)) return {};
  const worth = reckonWorth(flow, state, check);
  return worth === undefined ? {} : { worth };
}

function tellAnswer(
  flow: Flow,
  state: CaseState,
  event: Extract<LaterEvent, { type: 'answered' | 'corrected' }>,
): Message[] {
  const { check, answer } = event;
  // Nothing is known, and that is noted too.
  if (!isSaid(answer)) return [{ kind: 'noted', check, answer: [] }];
  return isReading(answer)
    ? [...readingMessage(flow, state, check)]
    : [notedMessage(flow, state, { check, answer })];
}

/** What was said of a check that is no reading; a day with the band in which it lies. */
export function notedMessage(
  flow: Flow,
  state: CaseState,
  { check, answer }: { readonly check: string; readonly answer: readonly string[] },
): NotedMessage {
  const isDate = flow.checks[check]?.form.kind === 'date';
  const band = isDate
    ? likeliest(assess(flow, state).findings.known.finding(check)?.weights ?? {})?.[0]
    : undefined;
  return { kind: 'noted', check, answer: [...new Set([...answer, ...(band ? [band] : [])])] };
}

/** New facts, by the choice that asks for each; one that no choice asks for is only said to be taken. */
function tellContext(flow: Flow, state: CaseState, fields: readonly string[]): Message[] {
  const noted = fields.flatMap((field): readonly NotedMessage[] => {
    const check = Object.values(flow.checks).find(({ writes }) => writes === field);
    const value = state.context[field];
    return check?.form.kind === 'choice' && isTexts(value)
      ? [{ kind: 'noted', check: check.id, answer: value.length === 0 ? ['none'] : value }]
      : [];
  });
  return noted.length === fields.length ? noted : [...noted, { kind: 'tell', tell: 'learned' }];
}

function isTexts(value: ContextValue | undefined): value is readonly string[] {
  return Array.isArray(value);
}

/** The leading faults, where one of them moved by half a percent or more since the last turn. */
function tellRanking(before: CaseState, after: CaseState): readonly RankingMessage[] {
  const faults = after.leaders.slice(0, shownFaults);
  const shares = new Map(before.leaders);
  const moved = faults.some(([fault, share]) => Math.abs(share - (shares.get(fault) ?? 0)) > 0.005);
  if (!moved || before.answers === after.answers) return [];
  return [
    { kind: 'ranking', faults, before: faults.map(([id]) => [id, shares.get(id) ?? 0] as const) },
  ];
}

function cautionMessage(flow: Flow, id: string): readonly CautionMessage[] {
  const caution = flow.cautions[id];
  return caution === undefined
    ? []
    : [{ kind: 'caution', caution: id, word: caution.word, confirm: caution.confirm }];
}

function askMessage(flow: Flow, state: CaseState, id: string): readonly AskMessage[] {
  const check = flow.checks[id];
  if (check === undefined) return [];
  const { form } = check;
  const mentioned = mentionedOf(state, id);
  return [
    {
      kind: 'ask',
      check: id,
      form: askedForm(check, state),
      options: optionsOf(check),
      lamp: form.kind === 'reading' && hasOnlyLamp(check, state) ? Object.keys(form.lamp) : [],
      ...(form.kind === 'reading' ? { unit: form.unit } : {}),
      minutes: check.minutes - (check.waitMinutes ?? 0),
      ...(check.probes ? { probes: check.probes } : {}),
      time:
        (form.kind === 'reading' && flow.decisions.length === 0) || isDoubted(flow, state, id)
          ? 1
          : timesAnswered(state, id) + 1,
      remembered: isRemembered(flow, state, id),
      ...(mentioned.length === 0 ? {} : { mentioned }),
      ...(flow.decisions.length === 0 ? {} : { beside: askedBeside(flow, state, check) }),
      ...knownOf(flow, state.context),
    },
  ];
}

/** How a check is asked: a day as one of its bands where no terms of a shop tell them. */
function askedForm({ form }: Check, state: CaseState): AskMessage['form'] {
  if (form.kind === 'choice') return form.several ? 'choices' : 'choice';
  return form.kind === 'date' && state.policy === null ? 'choice' : form.kind;
}

function timesAnswered(state: CaseState, check: string): number {
  return (state.answers[check] ?? []).filter(isSaid).length;
}

/** A coarse reading near a bound is asked once more, and said to be. */
function readAgain(flow: Flow, state: CaseState, check: string): readonly Message[] {
  if (isDoubted(flow, state, check)) return [{ kind: 'tell', tell: 'doubt', about: check }];
  return flow.checks[check]?.form.kind === 'reading' && timesAnswered(state, check) > 0
    ? [{ kind: 'tell', tell: 'check-again', about: check }]
    : [];
}

/** True where a test lamp is at hand and no voltmeter. */
export function hasOnlyLamp(check: Check, state: CaseState): boolean {
  const { kit } = state.context;
  return (
    check.form.kind === 'reading' &&
    Object.keys(check.form.lamp).length > 0 &&
    Array.isArray(kit) &&
    kit.includes('test-lamp') &&
    !kit.includes('voltmeter')
  );
}
