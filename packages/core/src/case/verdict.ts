/**
 * Which part is at fault, how surely, and what is to be done.
 */
import { checksOf, holds, type Condition } from '../flow/condition.ts';
import type { Fault, Flow, Remedy } from '../flow/flow.ts';
import { assess, type Assessment } from './assessment.ts';
import { leadingPair } from './belief.ts';
import { likeliest } from './findings.ts';
import type { Strength, VerdictMessage } from './message.ts';
import { bearsOn, forbiddenActivities, lackingKit, mayWork } from './possible.ts';
import type { CaseState } from './state.ts';

/** An unproved fault is likely when it is likelier than all others together; else the case is open. */
const likelyFrom = 0.5;

/** What is sent where the caller needs no help. */
export const nobody = 'nothing';

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

/** What is known of a fault when its remedy is chosen. */
export interface Judged {
  readonly flow: Flow;
  readonly fault: Fault;
  readonly strength: Strength;
}

/**
 * True where the verdict is strong enough for a remedy. What faults have in common is as likely as
 * they are together: two bad cables, of which one is, ask for a cable.
 */
function isStrongEnough(
  { do: what, from }: { readonly do: string; readonly from: Remedy['from'] },
  { flow, strength }: Judged,
  { ranking }: Assessment,
): boolean {
  if (from === undefined || strength === 'proved') return true;
  if (from === 'proved') return false;
  const shared = ranking
    .filter(([id]) => flow.faults[id]?.remedies.some(({ remedy }) => remedy === what))
    .reduce((sum, [, share]) => sum + share, 0);
  return strength === 'likely' || shared >= likelyFrom;
}

/**
 * The first remedy that no stop forbids, that the verdict is strong enough for, and whose condition
 * is known to hold or that has none.
 */
function remedyOf(judged: Judged, assessment: Assessment): Remedy | undefined {
  const { known } = assessment.findings;
  const forbidden = forbiddenActivities(assessment.stops);
  const allowed = judged.fault.remedies.filter(
    ({ remedy, does, from }) =>
      !does.some((activity) => forbidden.includes(activity)) &&
      isStrongEnough({ do: remedy, from }, judged, assessment),
  );
  return (
    allowed.find(({ when }) => when === undefined || holds(when, known) === true) ?? allowed.at(-1)
  );
}

/** What a fault asks for as things stand, when it is judged so surely. */
export function remedyFor(judged: Judged, assessment: Assessment): string {
  return remedyOf(judged, assessment)?.remedy ?? '';
}

/** Whom a fault asks for as things stand, when it is judged so surely. */
export function sendFor(judged: Judged, assessment: Assessment): string {
  return remedyOf(judged, assessment)?.send ?? judged.fault.send;
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
  const send = sendFor(judged, assessment);
  return {
    remedy: remedyFor(judged, assessment),
    send,
    waits: send !== nobody && !mayWork(judged.flow, stops),
  };
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
