import type { Terms } from '../typed/terms.ts';

/** How much a term tells answers apart, 0 to 1: 1 where only one answer has it. */
export type Weights = ReadonlyMap<string, number>;

/**
 * The weights of the terms of some answers, each given by all its phrases: the inverse document
 * frequency, scaled to 1 for a term of one answer alone. `topic` are terms of the question itself.
 */
export function weightsOf(
  answers: readonly (readonly Terms[])[],
  topic: ReadonlySet<string> = new Set(),
): Weights {
  const counts = new Map<string, number>();
  for (const phrases of answers) {
    for (const term of new Set(phrases.flat())) counts.set(term, (counts.get(term) ?? 0) + 1);
  }
  const whole = Math.log(answers.length + 1);
  return new Map(
    [...counts].map(([term, count]) => {
      const weight = Math.log((answers.length + 1) / count) / whole;
      return [term, topic.has(term.replace('!', '')) ? weight * topicShare : weight];
    }),
  );
}

/** What the question names itself tells little of its answers. */
const topicShare = 0.4;
