import type { CounterWords } from '../words/counter-words.ts';
import type { CounterReturn } from './counter-return.ts';

/** What a return is called: the part by its name and receipt, or what kind of part it is. */
export function nameOf({ words }: { readonly words: CounterWords }, back: CounterReturn): string {
  const named = [back.name, back.receipt || back.number].filter((text) => text !== '');
  return named.length > 0 ? named.join(' · ') : `${words[back.part]} · ${words.noReceipt}`;
}
