/** Which flow something was found with: likelihoods of another flow or version count other things. */
export interface FlowKey {
  /** The flow. */
  readonly id: string;
  /** Its version. */
  readonly version: string;
}

/**
 * A case whose cause someone confirmed. It holds ids only: no time, no place, no free text, nothing
 * of a person or a vehicle.
 */
export interface Outcome {
  /** Opaque: tells this outcome from others, so that it is counted once and can be taken back. */
  readonly id: string;
  /** The flow whose checks were done. */
  readonly flow: FlowKey;
  /** Who did the checks, such as `driver`; `unknown` where nobody said. */
  readonly role: string;
  /** By which way the case was held. */
  readonly channel: string;
  /** The fault that was confirmed by the repair or by inspection, never a verdict of ours. */
  readonly cause: string;
  /**
   * For each question that was answered the answers that held: one, or those of a check of which
   * several may hold. A question is a check; where the likelihoods of a check depend on the
   * circumstances it is the check and the position of their table, such as `battery-rest/2`.
   */
  readonly answers: Readonly<Record<string, readonly string[]>>;
}

/** Lower-case words and figures joined by hyphens, with a position behind them where there is one. */
const idForm = /^[a-z0-9]+(?:-[a-z0-9]+)*(?:\/\d+)?$/;

/** True for a text of at most 80 characters that can only be an id, so that nothing else is kept. */
export function isId(text: unknown): boolean {
  return typeof text === 'string' && text.length <= 80 && idForm.test(text);
}

/** The first part of an outcome that is no id, in the order of its fields. */
export function notAnId({ id, flow, role, channel, cause, answers }: Outcome): string | undefined {
  const names = [id, flow.id, role, channel, cause];
  const found = Object.entries(answers).flatMap(([question, given]) => [question, ...given]);
  return [...names, ...found].find((name) => !isId(name));
}

/**
 * A mark of what an outcome says, eight hexadecimal digits, so that another outcome is not taken
 * back under its id. It guards against mistakes, not against intent.
 *
 * Source: FNV-1a of Fowler, Noll and Vo, 32 bits (from memory).
 */
export function markOf({ role, channel, cause, answers }: Outcome): string {
  const found = Object.keys(answers)
    .sort()
    .map((question) => [question, [...new Set(answers[question])].sort()]);
  let hash = 0x811c9dc5;
  for (const character of JSON.stringify([role, channel, cause, found])) {
    hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
  }
  return (hash >>> 0).toString(16).padStart(8, '0');
}
