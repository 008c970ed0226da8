import type { Token } from '../typed/token.ts';
import { input, type Turn } from './turn.ts';
import type { Understood } from './understood.ts';

/**
 * A meter's accuracy as its manual states it: "my meter is ±(0.8 % + 3)", "clamp meter 2 % plus 5
 * digits, 4000 counts". Without a percentage beside the meter's name it is none.
 */
export function readMeter({ tokens, listener }: Turn): Understood | undefined {
  const { clamp, meter, percent, counts } = listener.lexicon.words.accuracy;
  const says = (words: readonly string[]): boolean =>
    tokens.some((token) => token.kind === 'word' && words.includes(token.text));
  const instrument = says(clamp) ? 'clamp' : says(meter) ? 'meter' : undefined;
  if (instrument === undefined) return undefined;
  const figures = tokens.flatMap((token, index) =>
    token.kind === 'number' ? [{ value: token.value, unit: wordAfter(tokens, index) }] : [],
  );
  const share = figures.find(({ unit }) => percent.includes(unit));
  if (share === undefined) return undefined;
  const size = figures.find(({ unit }) => counts.includes(unit));
  const steps = figures.find((figure) => figure !== share && figure !== size);
  return input([
    {
      type: 'context',
      set: {
        [`${instrument}.percent`]: share.value,
        [`${instrument}.digits`]: steps?.value ?? 0,
        ...(size === undefined ? {} : { [`${instrument}.counts`]: size.value }),
      },
    },
  ]);
}

function wordAfter(tokens: readonly Token[], index: number): string {
  const next = tokens[index + 1];
  return next?.kind === 'word' ? next.text : '';
}
