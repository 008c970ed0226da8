import { EvidenceError } from './evidence-error.ts';
import type { EvidenceModel } from './evidence-model.ts';
import { asPrepared } from './finding.ts';
import type { Finding } from './finding.ts';

/**
 * The error for findings that together forbid every hypothesis. It names the findings that do so
 * alone; failing those, all that forbid any: one of them was misread, or the model lacks a
 * hypothesis.
 */
export function impossibleFinding(
  model: EvidenceModel,
  findings: readonly Finding[],
): EvidenceError {
  const live = model.priors.flatMap((prior, index) => (prior > 0 ? [index] : []));
  const counted = findings.map((finding) => {
    const { id, logLikelihoods } = asPrepared(model, finding);
    const forbidden = live.filter((index) => logLikelihoods[index] === Number.NEGATIVE_INFINITY);
    return { id, forbidden: forbidden.length };
  });
  const alone = counted.filter(({ forbidden }) => forbidden === live.length);
  const blamed = alone.length > 0 ? alone : counted.filter(({ forbidden }) => forbidden > 0);
  const ids = blamed.map(({ id }) => id);
  return new EvidenceError(
    'impossible-finding',
    `no hypothesis allows what was found: ask again ${ids.join(', ')}, or add a hypothesis`,
    { findings: ids },
  );
}
