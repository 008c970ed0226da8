import type { Input } from '@keyturn/core';
import type { Token } from '../typed/token.ts';
import { factRuns } from './fact-runs.ts';
import type { Lexicon } from './lexicon.ts';

/** What a text tells of the vehicle in figures that are no readings, and the tokens that tell the rest. */
interface ToldVehicle {
  /** V. */
  readonly nominal?: 12 | 24;
  readonly engine?: {
    readonly litres: number;
    /** What it burns, as an answer. */
    readonly fuel: { readonly check: string; readonly id: string };
  };
  readonly rest: readonly Token[];
}

/** The volts of the vehicle and the litres of its engine; undefined where neither is told. */
export function toldVehicle(tokens: readonly Token[], lexicon: Lexicon): ToldVehicle | undefined {
  const volts = toldVolts(tokens, lexicon);
  const size = toldSize(volts?.rest ?? tokens, lexicon);
  return size === undefined ? volts : { ...volts, ...size };
}

/**
 * What is kept of that beside what the rest was understood to say: the litres where the vehicle is
 * told to burn that fuel, which may have been put in as well.
 */
export function contextTold(
  { nominal, engine }: ToldVehicle,
  inputs: readonly Input[],
): readonly Input[] {
  const isBurnt = inputs.some(
    (one) =>
      one.type === 'answers' &&
      one.answers.some(
        ({ check, value }) =>
          check === engine?.fuel.check && !('value' in value) && value.includes(engine.fuel.id),
      ),
  );
  const set = {
    ...(nominal === undefined ? {} : { 'vehicle.nominal': nominal }),
    ...(isBurnt ? { 'vehicle.displacement': engine?.litres } : {}),
  };
  return Object.keys(set).length === 0 ? [] : [{ type: 'context', set }];
}

/** A statement of the vehicle's volts takes so many tokens at most, and so many stand before them. */
const mostTokens = 6;
const mostBefore = 4;

/**
 * A vehicle of 24 V, or of 12 V, told beside something else: "24 V lorry, just clicks". Its volts are
 * no reading.
 */
function toldVolts(tokens: readonly Token[], lexicon: Lexicon): ToldVehicle | undefined {
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
        return { nominal, rest };
      }
    }
  }
  return undefined;
}

const comma: Token = { kind: 'mark', text: ',' };

/** Litres that an engine has, told with one decimal. */
const [smallest, largest] = [0.6, 8.5];

/** The size of the engine, beside the fuel that it burns: "a 2.0 diesel", "petrol, 1.6". */
function toldSize(
  tokens: readonly Token[],
  lexicon: Lexicon,
): Pick<ToldVehicle, 'engine' | 'rest'> | undefined {
  const fuelOf = (token: Token | undefined): { check: string; id: string } | undefined => {
    const [run] = token?.kind === 'word' ? factRuns([token], lexicon) : [];
    const { check = '', value: [id = ''] = [] } = run?.facts[0] ?? {};
    const sets = lexicon.checks.get(check)?.check.sets[id] ?? {};
    return 'vehicle.fuel' in sets ? { check, id } : undefined;
  };
  for (const [at, token] of tokens.entries()) {
    if (token.kind !== 'number' || token.decimals !== 1) continue;
    const { value } = token;
    const unit = lexicon.readUnit(tokens, at + 1);
    const end = at + 1 + (unit?.length ?? 0);
    if (value < smallest || value > largest || (unit !== undefined && unit.code !== 'L')) continue;
    const fuel = fuelOf(tokens[at - 1]) ?? fuelOf(tokens[end]);
    if (fuel === undefined) continue;
    const rest = [...tokens.slice(0, at), ...tokens.slice(end)];
    return { engine: { litres: value, fuel }, rest };
  }
  return undefined;
}
