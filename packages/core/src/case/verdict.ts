/**
 * Which part is at fault, how surely, and what is to be done.
 */
import { checksOf, holds, type Condition } from '../flow/condition.ts';
import type { Fault, Flow } from '../flow/flow.ts';
import { actionOf, actionsFor, expectedCost } from './action.ts';
import { assess, type Assessment } from './assessment.ts';
import { leadingPair } from './belief.ts';
import { likeliest } from './findings.ts';
import type { Strength, VerdictMessage } from './message.ts';
import { bearsOn, lackingKit, mayWork } from './possible.ts';
import { likelyFrom, nobody, remedyFor, sendFor, type Judged } from './remedy.ts';
import type { CaseState } from './state.ts';

/** How many faults of the ranking a verdict carries. */
const rankedFaults = 8;

/** The verdict on a case as it stands. No side effects. */
export function verdictOf(flow: Flow, state: CaseState): VerdictMessage {
  const assessment = assess(flow, state);
  const { ranking, findings, proved } = assessment;
  const fault = proved[0] ?? leadingFault(flow, ranking);
  const probability = ranking.find(([id]) => id === fault.id)?.[1] ?? 0;
  const strength = strengthOf(fault, probability, proved.length > 0);
  return {
    kind: 'verdict',
    fault: fault.id,
    strength,
    probability,
    ranking: ranking.slice(0, rankedFaults),
    ...helpFor({ flow, fault, strength }, assessment),
    ...alsoAtFault({ flow, fault, strength }, assessment),
    licensed: fault.licensed,
    roots: flow.roots
      .filter(
        ({ faults, when }) => faults.includes(fault.id) && holds(when, findings.known) === true,
      )
      .map(({ id }) => id),
    proof: proved.length > 0 ? proofOf(fault, assessment) : [],
    settle: proved.length > 0 ? [] : settling(flow, fault, { state, assessment }),
    stops: toldStops(flow, assessment),
  };
}

/**
 * The likeliest fault. That it is none of those listed is only said when that is likelier than all
 * of them together: until then it points nobody anywhere.
 */
export function leadingFault(flow: Flow, ranking: Assessment['ranking']): Fault {
  const [first, second] = ranking.map(([id, share]) => ({ fault: flow.faults[id], share }));
  const leader = first?.fault?.best === 'open' && first.share <= likelyFrom ? second : first;
  if (leader?.fault === undefined) throw new Error(`the flow ${flow.id} has no faults`);
  return leader.fault;
}

function strengthOf(fault: Fault, probability: number, isProved: boolean): Strength {
  if (isProved) return 'proved';
  return fault.best !== 'open' && probability >= likelyFrom ? 'likely' : 'open';
}

/** A verdict that stands, with what is to be done now that other stops are in force. */
export function withPresentRemedy(
  flow: Flow,
  state: CaseState,
  verdict: VerdictMessage,
): VerdictMessage {
  const fault = flow.faults[verdict.fault];
  const assessment = assess(flow, state);
  if (fault === undefined) return verdict;
  const stops = toldStops(flow, assessment);
  if (stops.join() === verdict.stops.join()) return verdict;
  return { ...verdict, ...helpFor({ flow, fault, strength: verdict.strength }, assessment), stops };
}

function helpFor(
  judged: Judged,
  assessment: Assessment,
): Pick<VerdictMessage, 'remedy' | 'send' | 'waits'> {
  const { stops } = assessment;
  const instead = stops.find((stop) => stop.instead !== undefined)?.instead;
  // What is done instead is meant for whoever is there.
  if (instead !== undefined) return { ...instead, waits: false };
  const done = isHandedOn(judged, assessment) ? handingOn(judged) : judged;
  const send = sendFor(done, assessment);
  return {
    remedy: remedyFor(done, assessment),
    send,
    waits: send !== nobody && !mayWork(judged.flow, stops),
  };
}

/** Whoever comes where the fault is none of those listed looks for himself, whatever it is. */
function handingOn({ flow, fault, strength }: Judged): Judged {
  const unlisted = Object.values(flow.faults).find(({ best }) => best === 'open');
  return { flow, fault: unlisted ?? fault, strength };
}

/**
 * True where an open case is too unsure for what its leading fault asks for: with the mistake that it
 * may be, that would be dearer than to have somebody come who looks for himself.
 */
function isHandedOn(judged: Judged, assessment: Assessment): boolean {
  const { flow, strength } = judged;
  const { costs } = flow;
  if (costs === undefined || strength !== 'open') return false;
  const actions = actionsFor({ flow, costs }, assessment, Object.keys(flow.faults));
  const [own, other] = [judged, handingOn(judged)].map((one) => {
    const wanted = actionOf(one, assessment);
    return actions.find(({ id }) => id === wanted);
  });
  if (own === undefined || other === undefined) return false;
  return expectedCost(other, assessment) < expectedCost(own, assessment);
}

/** A fault less likely than this is no reason to speak of a check that was left out. */
const worthMention = 0.1;

/** The stops that bind whatever is done now, and those that leave out what a likely fault hangs on. */
function toldStops(flow: Flow, { stops, ranking }: Assessment): readonly string[] {
  const hanging = ranking
    .filter(([, share]) => share >= worthMention)
    .flatMap(([id]) => flow.faults[id]?.proofs ?? [])
    .flatMap(checksOf);
  return stops
    .filter(({ forbids }) =>
      forbids.some(
        ({ checks }) => checks === undefined || checks.some((check) => hanging.includes(check)),
      ),
    )
    .map(({ id }) => id);
}

/** The other fault of the pair that leads, and what it asks for. */
function alsoAtFault(judged: Judged, assessment: Assessment): Pick<VerdictMessage, 'also'> {
  const { flow, fault } = judged;
  const pair = leadingPair(flow, assessment.findings);
  if (pair === undefined || ![pair.first, pair.second].includes(fault.id)) return {};
  const other = flow.faults[pair.first === fault.id ? pair.second : pair.first];
  if (other === undefined) return {};
  const remedy = remedyFor({ flow, fault: other, strength: judged.strength }, assessment);
  return { also: { fault: other.id, remedy, probability: pair.probability } };
}

/** The findings that a proof rests on, as check and answer. */
function proofOf(fault: Fault, assessment: Assessment): VerdictMessage['proof'] {
  const { known } = assessment.findings;
  const proof = fault.proofs.find((condition) => holds(condition, known) === true);
  return proof === undefined ? [] : answersIn(proof, assessment);
}

function answersIn(proof: Condition, assessment: Assessment): VerdictMessage['proof'] {
  return [...new Set(checksOf(proof))].flatMap((check) => {
    const best = likeliest(assessment.findings.known.finding(check)?.weights ?? {});
    return best === undefined ? [] : [[check, best[0]] as const];
  });
}

/** Of the proofs still open, the one that lacks the fewest checks, and what they need. */
function settling(
  flow: Flow,
  fault: Fault,
  scope: { readonly state: CaseState; readonly assessment: Assessment },
): VerdictMessage['settle'] {
  const { known } = scope.assessment.findings;
  const missing = fault.proofs
    .filter((proof) => holds(proof, known) !== false)
    .map((proof) => [...new Set(checksOf(proof))].filter((check) => !known.finding(check)))
    .filter((checks) =>
      checks.every((id) => {
        const check = flow.checks[id];
        return check !== undefined && bearsOn(check, known);
      }),
    )
    .filter((checks) => checks.length > 0)
    .sort((a, b) => a.length - b.length);
  return (missing[0] ?? []).flatMap((id) => {
    const check = flow.checks[id];
    return check === undefined ? [] : [{ check: id, lacks: lackingKit(flow, check, scope.state) }];
  });
}
