import { hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { likeliest } from './choices.ts';
import { factRuns, isOfVehicle } from './fact-runs.ts';
import type { CheckPhrases } from './lexicon.ts';
import { joinClauses } from './named-things.ts';
import { mixedOf } from './own-fuel.ts';
import type { SurelyBeside, Turn } from './turn.ts';

/** What is left without the fuel gives the same answer as surely as this. */
const surelyLeft = 0.8;

/**
 * The fuel that the vehicle runs on, in a clause that says nothing else, where the rest of the text
 * gives the same answer without it, whatever a fuel is said to mean there: "half a tank, it's a petrol".
 */
export function fuelBeside(
  clause: readonly Token[],
  inHand: CheckPhrases,
  { clauses, listener: { lexicon } }: Turn,
): SurelyBeside | undefined {
  const [run] = factRuns(clause, lexicon);
  const mixed = mixedOf(lexicon);
  if (run?.isClause !== true || run.facts.length === 0 || mixed === undefined) return undefined;
  const isFuel = run.facts.some(({ check, value: [id = ''] }) => {
    const set = lexicon.checks.get(check)?.check.sets[id] ?? {};
    return 'vehicle.fuel' in set;
  });
  // "Two pedals, petrol and brake" speaks of pedals.
  if (!isFuel || isOfVehicle(inHand)) return undefined;
  const rest = clauses
    .map((one) => one.filter((token) => !clause.includes(token)))
    .filter((one) => one.length > 0);
  const whole = likeliest(hearTokens(joinClauses(clauses), lexicon), inHand);
  const left = likeliest(hearTokens(joinClauses(rest), lexicon), inHand);
  if (left.share < surelyLeft || left.id !== whole.id) return undefined;
  // Of two fuels it is told elsewhere which is the vehicle's own.
  if (mixed.check === inHand && mixed.id === left.id) return undefined;
  return { told: run.facts, length: 1, asked: 0 };
}
