import { EvidenceError } from './evidence-error.ts';
import type { EvidenceModel } from './evidence-model.ts';

/**
 * What is claimed: one hypothesis by its name, or all those a predicate accepts, such as every
 * step of charge of one fault, or every fault that one repair cures.
 */
export type Proposition = string | ((hypothesis: string) => boolean);

/**
 * For each hypothesis of the model, whether it is part of the proposition.
 *
 * @throws EvidenceError `unknown-hypothesis` for a name the model does not have
 */
export function membership(model: EvidenceModel, proposition: Proposition): readonly boolean[] {
  if (typeof proposition !== 'string') return model.hypotheses.map((name) => proposition(name));
  if (!model.hypotheses.includes(proposition)) {
    throw new EvidenceError(
      'unknown-hypothesis',
      `the model has no hypothesis "${proposition}": use one of its names`,
      { hypothesis: proposition },
    );
  }
  return model.hypotheses.map((name) => name === proposition);
}
