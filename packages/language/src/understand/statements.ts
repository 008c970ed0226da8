import type { Input } from '@keyturn/core';
import { findPhrase, isPhrase, type Heard } from '../typed/heard.ts';
import type { Lexicon } from './lexicon.ts';
import { flip } from '../typed/terms.ts';

/**
 * What a text says about the vehicle or the kit: "24 V vehicle", "I have a voltmeter now". What is
 * got before the kit was asked for is told of the check that will; later kit is replaced as a whole,
 * with what is got added to it and what is not there taken from it.
 */
export function readStatement(
  heard: Heard,
  lexicon: Lexicon,
  { kit, toBeAsked }: { readonly kit: readonly string[]; readonly toBeAsked: string | undefined },
): Extract<Input, { type: 'context' | 'answers' }> | undefined {
  const stated = lexicon.statements.find(({ said }) =>
    said.some((phrase) => isPhrase(heard, phrase)),
  );
  if (stated !== undefined) return { type: 'context', set: stated.set };

  const isHaving = lexicon.having.some((phrase) => findPhrase(heard, phrase) >= 0);
  const got = lexicon.kit
    .filter(({ said }) => said.some((phrase) => findPhrase(heard, phrase) >= 0))
    .map(({ id }) => id);
  if (isHaving && got.length > 0) {
    return toBeAsked === undefined
      ? { type: 'context', set: { kit: [...new Set([...kit, ...got])] } }
      : { type: 'answers', answers: [{ check: toBeAsked, value: got }] };
  }

  const lacking = lexicon.kit
    .filter(({ said }) => said.some((phrase) => findPhrase(heard, phrase.map(flip)) >= 0))
    .map(({ id }) => id);
  const left = kit.filter((id) => !lacking.includes(id));
  return left.length < kit.length ? { type: 'context', set: { kit: left } } : undefined;
}
