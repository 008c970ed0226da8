/**
 * What a table of decisions comes to: the decision, what it rests on, what would have changed it,
 * and what is paid back.
 */
import { certain, checksOf, type Condition, type Finding } from '../flow/condition.ts';
import { fieldsFilled } from '../flow/fields-filled.ts';
import type { Check, DecisionLine, Flow } from '../flow/flow.ts';
import { optionsOf } from '../flow/options-of.ts';
import type { SoldPart } from '../policy/policy.ts';
import { lackingFor, refundOf, type Lacking, type Refund, type Sale } from '../policy/refund.ts';
import { shopDay } from '../policy/term.ts';
import { assess } from './assessment.ts';
import { findingsWith, likeliest } from './findings.ts';
import { judge, lineOf } from './judge.ts';
import type { DecisionMessage, OtherDecision } from './message.ts';
import { saleDay } from './sale-day.ts';
import { Settling } from './settled.ts';
import { knownOf } from './test-figures.ts';
import type { CaseState } from './state.ts';

/** The decision on a case as it stands. No side effects. */
export function decisionOf(flow: Flow, state: CaseState): DecisionMessage {
  const line = lineOf(flow, state);
  const refund = refundBy(flow, state, line);
  const lacking = refund === undefined ? lackingOf(flow, state, line) : [];
  const voids = line.voids.filter((check) => state.answers[check] !== undefined);
  return {
    kind: 'decision',
    called: flow.endsIn,
    line: flow.decisions.indexOf(line) + 1,
    decide: line.decide,
    reason: line.reason,
    ...(line.says === undefined ? {} : { says: line.says }),
    rests: restsOf(flow, state, line),
    changes: changesOf(flow, state, line),
    measure: line.measure,
    ...besidesOf(flow, state, line),
    stops: stopsOn(flow, state),
    again: line.again,
    ...(voids.length === 0 ? {} : { voids }),
    ...(refund === undefined ? {} : { refund }),
    ...(lacking.length === 0 ? {} : { lacking }),
    ...(isDepositOpen(flow, state, line) ? { isDepositOpen: true as const } : {}),
    ...knownOf(flow, state.context),
  };
}

/**
 * The stops to be told with a decision. One by the terms of a sale alone forbids nothing that nobody
 * has looked at: nothing more is done with the part.
 */
function stopsOn(flow: Flow, state: CaseState): readonly string[] {
  return assess(flow, state)
    .stops.filter(({ when }) => {
      const checks = checksOf(when);
      const isAsked = checks.length === 0 || checks.some((check) => state.answers[check]);
      return flow.endsIn === 'outcome' || isAsked;
    })
    .map(({ id }) => id);
}

function besidesOf(
  flow: Flow,
  state: CaseState,
  line: DecisionLine,
): Pick<DecisionMessage, 'besides'> {
  const settling = new Settling(flow, state, assess(flow, state).findings);
  const besides = line.besides.filter(({ when }) => settling.truth(when) === true);
  return besides.length === 0 ? {} : { besides: besides.map(({ id }) => id) };
}

/** The line that a table would come to at once with another answer; undefined where it goes on. */
export function whatIf(
  flow: Flow,
  state: CaseState,
  { check, answer }: { readonly check: string; readonly answer: string },
): DecisionLine | undefined {
  if (isFact(flow.checks[check])) return undefined;
  const { findings } = assess(flow, state);
  const judgement = judge(flow, state, findingsWith(findings, state, { check, answer }));
  return judgement.type === 'line' ? judgement.line : undefined;
}

/** What the line hangs on, as it was found; the last line hangs on all that was asked. */
function restsOf(flow: Flow, state: CaseState, { when }: DecisionLine): DecisionMessage['rests'] {
  const { findings } = assess(flow, state);
  const { known } = findings;
  const settling = new Settling(flow, state, findings);
  const named = when === undefined ? state.order : bearing(when, settling);
  return [...new Set(named)].flatMap((check) => {
    if (state.answers[check] === undefined) return [];
    return [[check, foundOf(known.finding(check))] as const];
  });
}

/** The checks by which a condition holds: of several of which one is enough, those that do. */
function bearing(condition: Condition, settling: Settling, isWanted = true): readonly string[] {
  switch (condition.kind) {
    case 'not':
      return bearing(condition.of, settling, !isWanted);
    case 'all':
    case 'any': {
      // Denied, all of several is any of their opposites.
      const isOneEnough = (condition.kind === 'any') === isWanted;
      return condition.of
        .filter((part) => !isOneEnough || settling.truth(part, isWanted) === true)
        .flatMap((part) => bearing(part, settling, isWanted));
    }
    default:
      return checksOf(condition);
  }
}

function foundOf(finding: Finding | undefined): string {
  const best = likeliest(finding?.weights ?? {});
  if (best === undefined) return 'unanswered';
  return best[1] < certain ? 'borderline' : best[0];
}

/** Single answers that would at once have led to another decision than this one. */
function changesOf(flow: Flow, state: CaseState, line: DecisionLine): readonly OtherDecision[] {
  const { known } = assess(flow, state).findings;
  const changes: OtherDecision[] = [];
  for (const id of state.order) {
    const check = flow.checks[id];
    if (check === undefined) continue;
    for (const answer of otherAnswers(check, foundOf(known.finding(id)))) {
      const other = whatIf(flow, state, { check: id, answer });
      if (other === undefined || other.decide === line.decide) continue;
      // What only leads to the same question changes nothing.
      if (other.again.includes(id)) continue;
      const at = changes.findIndex(
        ({ check: of, decide, reason }) =>
          of === id && decide === other.decide && reason === other.reason,
      );
      const before = changes[at];
      if (before === undefined) {
        changes.push({ check: id, answers: [answer], decide: other.decide, reason: other.reason });
      } else changes[at] = { ...before, answers: [...before.answers, answer] };
    }
  }
  return changes;
}

function otherAnswers(check: Check, found: string): readonly string[] {
  return isFact(check) ? [] : optionsOf(check).filter((answer) => answer !== found);
}

/** A choice that says something of the part or the kit, and nothing by itself. */
function isFact(check: Check | undefined): boolean {
  return check?.form.kind === 'choice' && fieldsFilled(check).length > 0;
}

/** What an amount lacks on a line that pays one and takes the part back. */
function lackingOf(flow: Flow, state: CaseState, line: DecisionLine): readonly Lacking[] {
  if (line.pays === undefined || line.decide !== 'accept' || flow.part === undefined) return [];
  return lackingFor(line.pays, { policy: state.policy, ...soldOf(flow, state, flow.part) });
}

function soldOf(
  flow: Flow,
  state: CaseState,
  part: SoldPart,
): Pick<Sale, 'part' | 'price' | 'sold'> {
  return {
    part,
    price: state.context['sale.price'] as number | undefined,
    sold: saleDay(flow, state),
  };
}

/** What the shop's terms pay back on a line; undefined where they, or the sale, do not say. */
function refundBy(flow: Flow, state: CaseState, { pays }: DecisionLine): Refund | undefined {
  const { policy, context } = state;
  if (pays === undefined || policy === null || flow.part === undefined) return undefined;
  return refundOf(pays, {
    policy,
    ...soldOf(flow, state, flow.part),
    day: shopDay(policy, state.opened),
    isDepositHeld: context['sale.oldUnit'] === 'owed',
  });
}

/** Whether a line that pays may pay a deposit as well, of which nobody has told whether it is held. */
function isDepositOpen(
  { part }: Flow,
  { policy, context }: CaseState,
  { pays }: DecisionLine,
): boolean {
  const deposit = part === undefined ? undefined : policy?.['exchange-deposit']?.[part];
  return pays !== undefined && deposit !== undefined && context['sale.oldUnit'] === undefined;
}
