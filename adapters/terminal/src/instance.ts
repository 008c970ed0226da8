/**
 * A sequential-diagnosis instance, format `seqdiag-1`: a small invented problem with which a way of
 * choosing checks is measured.
 */
import { defineProblem, EvidenceError, type DiagnosisProblem } from '@keyturn/evidence';
import { z } from 'zod';

const cost = z.number().nonnegative();
const id = z.string().min(1);

const instance = z.object({
  format: z.literal('seqdiag-1'),
  name: id,
  mode: z.enum(['terminal', 'continue']),
  faults: z.array(z.object({ id, prior: z.number().nonnegative() })).min(1),
  verdicts: z.array(z.object({ id, cost, wrong_penalty: cost, fixes: z.array(id) })).min(1),
  setups: z.record(id, cost).default({}),
  tests: z.array(
    z.object({
      id,
      cost,
      outcomes: z.array(id).min(1),
      p: z.record(id, z.array(z.number().min(0).max(1))),
      setup: id.optional(),
      requires: z.array(z.object({ test: id, outcomes: z.array(id) })).default([]),
    }),
  ),
});

/** An instance: its name, and the problem. */
export interface Instance {
  readonly name: string;
  readonly problem: DiagnosisProblem;
}

/** A file that holds no instance; the message says where and what was expected. */
export class InstanceError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'InstanceError';
  }
}

/**
 * Reads the instances of a file: one, or an array.
 *
 * @param path - names the file in messages
 * @throws InstanceError when the text is not JSON or an instance has not the form of one.
 */
export function readInstances(path: string, text: string): readonly Instance[] {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (cause) {
    throw new InstanceError(`${path}: not JSON: ${(cause as Error).message}`);
  }
  const isList = Array.isArray(data);
  const result = z
    .array(instance)
    .min(1)
    .safeParse(isList ? data : [data]);
  if (!result.success) {
    const issues = result.error.issues.map((issue) => {
      const place = isList ? issue.path : issue.path.slice(1);
      return `${path}: ${place.map(String).join('.') || 'the file'}: ${issue.message}`;
    });
    throw new InstanceError(issues.join('\n'));
  }
  return result.data.map((one) => ({ name: one.name, problem: problemOf(path, one) }));
}

function problemOf(path: string, one: z.infer<typeof instance>): DiagnosisProblem {
  const { mode, faults, verdicts, setups, tests, name } = one;
  const checks = tests.map((test, index) => {
    const stray = Object.keys(test.p).find((fault) => !faults.some((known) => known.id === fault));
    if (stray !== undefined) {
      throw new InstanceError(
        `${path}: tests.${index}.p.${stray}: expected only faults of ${name}, which has no "${stray}"`,
      );
    }
    return {
      id: test.id,
      cost: test.cost,
      outcomes: test.outcomes,
      likelihoods: faults.map((fault) => {
        const row = test.p[fault.id];
        if (row?.length === test.outcomes.length) return row;
        throw new InstanceError(
          `${path}: tests.${index}.p.${fault.id}: expected ${test.outcomes.length} probabilities, one for each outcome of ${test.id}`,
        );
      }),
      setups: test.setup === undefined ? [] : [test.setup],
      requires: test.requires.map((required) => ({
        check: required.test,
        outcomes: required.outcomes,
      })),
    };
  });
  try {
    return defineProblem({
      mode,
      faults,
      verdicts: verdicts.map(({ wrong_penalty: wrongPenalty, ...rest }) => ({
        ...rest,
        wrongPenalty,
      })),
      setups: Object.entries(setups).map(([setup, price]) => ({ id: setup, cost: price })),
      checks,
    });
  } catch (error) {
    if (!(error instanceof EvidenceError)) throw error;
    throw new InstanceError(`${path}: ${name}: ${error.message}`);
  }
}
