/**
 * The kinds of help that can be sent.
 */
import type { Flow, Weighted } from '@keyturn/core';
import type { FlowTexts } from '@keyturn/language';

/**
 * What a kind of help is called, and what it must bring. The flow's texts say both in one sentence:
 * a name, a colon, the rest. Nobody is sent where there is no colon.
 */
export function helpWords(
  texts: FlowTexts,
  help: string,
): { readonly name: string | undefined; readonly rest: string } {
  const text = texts.send[help] ?? help;
  const at = text.indexOf(':');
  return at < 0
    ? { name: undefined, rest: text }
    : { name: text.slice(0, at).trim(), rest: capital(text.slice(at + 1).trim()) };
}

function capital(text: string): string {
  const [first = ''] = text;
  return first.toLocaleUpperCase() + text.slice(first.length);
}

/** True for help that some fault asks for; no fault asks for the police. */
export function isForFault({ faults }: Flow, help: string): boolean {
  return Object.values(faults).some(({ send }) => send === help);
}

/**
 * How likely each kind of help is the right one, by what fits best so far: the shares of the faults
 * that it is for. The likeliest first, and every kind is there.
 */
export function helpShares(
  { faults }: Flow,
  kinds: readonly string[],
  ranking: readonly Weighted[],
): readonly Weighted[] {
  const share = (help: string): number =>
    ranking.reduce((sum, [id, one]) => (faults[id]?.send === help ? sum + one : sum), 0);
  return kinds
    .map((help): Weighted => [help, share(help)])
    .toSorted(([, one], [, other]) => other - one);
}
