import type { CounterWords } from '../words/counter-words.ts';
import type { CounterReturn } from './counter-return.ts';

/** What a return is called: the part by its name, or what kind of part it is, and its receipt. */
export function nameOf({ words }: { readonly words: CounterWords }, back: CounterReturn): string {
  const what = back.name || words[back.part];
  const code = back.receipt || back.number;
  if (code !== '') return `${what} · ${code}`;
  return back.name === '' ? `${what} · ${words.noReceipt}` : what;
}
