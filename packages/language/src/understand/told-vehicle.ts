import type { Input } from '@keyturn/core';
import type { Token } from '../typed/token.ts';
import type { Lexicon } from './lexicon.ts';

/** What a text tells of the vehicle's system, and the tokens that tell the rest. */
export interface ToldVehicle {
  readonly told: Extract<Input, { type: 'context' }>;
  readonly nominal: 12 | 24;
  readonly rest: readonly Token[];
}

/** A statement of the vehicle's volts takes so many tokens at most, and so many stand before them. */
const mostTokens = 6;
const mostBefore = 4;

/**
 * A vehicle of 24 V, or of 12 V, told beside something else: "24 V lorry, just clicks". Its volts are
 * no reading.
 */
export function toldVehicle(tokens: readonly Token[], lexicon: Lexicon): ToldVehicle | undefined {
  for (const nominal of [24, 12] as const) {
    const at = tokens.findIndex((token) => token.kind === 'number' && token.value === nominal);
    const said = lexicon.statements.find(({ set }) => set['vehicle.nominal'] === nominal)?.said;
    if (at < 0 || said === undefined) continue;
    const ways = new Set(said.map((terms) => terms.join(' ')));
    for (let start = Math.max(at - mostBefore, 0); start <= at; start += 1) {
      const longest = Math.min(start + mostTokens, tokens.length);
      for (let end = longest; end > at; end -= 1) {
        const stretch = tokens.slice(start, end);
        if (!ways.has(lexicon.reader.fromTokens(stretch).join(' '))) continue;
        const rest = [...tokens.slice(0, start), comma, ...tokens.slice(end)];
        return { told: { type: 'context', set: { 'vehicle.nominal': nominal } }, nominal, rest };
      }
    }
  }
  return undefined;
}

const comma: Token = { kind: 'mark', text: ',' };
