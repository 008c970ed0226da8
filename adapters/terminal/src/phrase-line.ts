import * as z from 'zod';

/** A typed text and the question just asked; null where nothing was. */
export interface PhraseLine {
  readonly check: string | null;
  readonly text: string;
}

const phraseLine: z.ZodType<PhraseLine> = z.object({
  check: z.string().nullable(),
  text: z.string(),
});

/** A line of input cannot be used; the message says which and why. */
export class PhraseLineError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'PhraseLineError';
  }
}

/**
 * Reads one line of JSON: `{ "check": ID or null, "text": STRING }`.
 *
 * @throws PhraseLineError naming the line, what was wrong and what was expected.
 */
export function readPhraseLine(
  line: string,
  at: number,
  checks: Readonly<Record<string, unknown>>,
): PhraseLine {
  const where = `line ${String(at)}`;
  let data: unknown;
  try {
    data = JSON.parse(line);
  } catch (cause) {
    throw new PhraseLineError(`${where}: not JSON: ${(cause as Error).message}`);
  }
  const result = phraseLine.safeParse(data);
  if (!result.success) {
    const [issue] = result.error.issues;
    const place = issue?.path.map(String).join('.') ?? '';
    throw new PhraseLineError(
      `${where}: ${place}: ${issue?.message ?? ''}; expected { "check": ID or null, "text": STRING }`,
    );
  }
  const { check } = result.data;
  if (check !== null && !Object.hasOwn(checks, check)) {
    throw new PhraseLineError(`${where}: there is no check called “${check}” in this flow`);
  }
  return result.data;
}
