import type { Message } from '@keyturn/core';
import type { Taken } from './sitting.ts';

/** What is asked back where all answers stand on keys. */
const onKeys: readonly string[] = [
  'unknown-choice',
  'one-choice',
  'not-a-number',
  'not-understood',
];

/** A longer list of readings is not read through. */
const mostNames = 3;

/** What was not understood, without a list of what stands on the keys below. */
export function besideKeys(unclear: NonNullable<Taken['unclear']>): NonNullable<Taken['unclear']> {
  if (unclear.type !== 'unclear') return unclear;
  const { code, possible } = unclear;
  const isLong = code === 'which-check' && possible.length > mostNames;
  return onKeys.includes(code) || isLong ? { ...unclear, possible: [] } : unclear;
}

/** True where what was not taken would be right on a 24 V vehicle, so that one key says it is one. */
export function mayBe24(unclear: Taken['unclear'], said: readonly Message[]): boolean {
  return (
    (unclear?.type === 'offers' && unclear.doubt?.isRightAt24 === true) ||
    said.some((one) => one.kind === 'refused' && one.hint === 'nominal-24')
  );
}
