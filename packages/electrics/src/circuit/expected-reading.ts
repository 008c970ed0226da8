import { batteryVoltage } from './battery-model.ts';
import type { CrankingCircuit } from './cranking-circuit.ts';
import { solveCircuit } from './solve-circuit.ts';
import { spreadOver } from './spread.ts';
import type { Span } from './vehicle-circuit.ts';
import { ElectricsError } from '../electrics-error.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import { batteriesInSeries, type LimitContext } from '../limits/limit-context.ts';
import { regulatedVoltageWindow } from '../charging/regulated-voltage.ts';
import { commonPractice, computed, type Source } from '../source.ts';
import type { UnitCode } from '../quantity/unit.ts';

/** Every reading whose value on a sound vehicle can be told. */
export const expectedReadings = [
  'battery.rest',
  'battery.lamps',
  'battery.load-test',
  'battery.tester',
  'battery.recharged',
  'battery.halves',
  'battery.crank',
  'battery.resistance',
  'drop.clamp',
  'drop.positive',
  'drop.ground',
  'drop.contacts',
  'relay.feed',
  'relay.command',
  'control.signal',
  'crank-current',
  'charging',
] as const;

/** The name of a reading whose value on a sound vehicle can be told. */
export type ExpectedReading = (typeof expectedReadings)[number];

/** A rule for one reading: what it gives for a context, or nothing where something is missing. */
type Rule = (context: LimitContext) => SourcedInterval | undefined;

const byModel = computed(
  'cranking-circuit model of a sound vehicle: battery by its label, charge, age and temperature, usual cables, starter and engine',
);

const overMeasured = computed('usual resistance of the sound part times the measured current');

function sourced(span: Span, unit: UnitCode, source: Source): SourcedInterval {
  return { ...span, unit, source };
}

/** A figure of the circuit at its steady cranking speed. */
function cranking(unit: UnitCode, read: (circuit: CrankingCircuit) => number): Rule {
  return (context) => sourced(spreadOver(context, read), unit, byModel);
}

/** A drop: the part's usual resistance at the measured current, else at the one to expect. */
function drop(
  read: (solution: ReturnType<typeof solveCircuit>) => number,
  ohm: (circuit: CrankingCircuit) => number,
): Rule {
  return (context) => {
    const { crankCurrent } = context;
    return crankCurrent !== undefined && crankCurrent > 0
      ? sourced(
          spreadOver(context, (circuit) => ohm(circuit) * crankCurrent),
          'V',
          overMeasured,
        )
      : cranking('V', (circuit) => read(solveCircuit(circuit)))(context);
  };
}

/** The battery's voltage at a current that is known. */
function batteryAt(context: LimitContext, currentA: number): SourcedInterval {
  const read = ({ battery }: CrankingCircuit): number => batteryVoltage(battery, currentA);
  return sourced(spreadOver(context, read), 'V', byModel);
}

/** The battery's voltage at a load of which only the ends are known. */
function batteryBetween(context: LimitContext, least: number, greatest: number): SourcedInterval {
  const light = batteryAt(context, least);
  const heavy = batteryAt(context, greatest);
  return { ...light, low: heavy.low, best: (light.best + heavy.best) / 2 };
}

/** Volts of both batteries of a 24 V vehicle, from those of one. */
function volts(context: LimitContext, one: Span, source: Source): SourcedInterval {
  const series = batteriesInSeries(context);
  return {
    low: one.low * series,
    best: one.best * series,
    high: one.high * series,
    unit: 'V',
    source,
  };
}

function full({ technology }: LimitContext): Span {
  if (technology === 'agm' || technology === 'gel') return { low: 12.6, best: 12.8, high: 13 };
  return { low: 12.4, best: 12.6, high: technology === undefined ? 13 : 12.8 };
}

const restSource = commonPractice('a battery charged to three quarters or more and rested');

const rules: Readonly<Record<ExpectedReading, Rule>> = {
  'battery.rest': (context) => volts(context, full(context), restSource),
  // All lamps and the windows, some 250 to 600 W at 12 V.
  'battery.lamps': (context) => batteryBetween(context, 20, 50),
  'battery.load-test': (context) =>
    context.rating === undefined ? undefined : batteryAt(context, context.rating / 2),
  'battery.tester': (context) =>
    context.rating === undefined
      ? undefined
      : sourced(
          { low: 0.75 * context.rating, best: 0.9 * context.rating, high: 1.1 * context.rating },
          'A',
          commonPractice('a sound battery gives most of its label'),
        ),
  'battery.recharged': (context) => volts(context, full(context), restSource),
  'battery.halves': () =>
    sourced({ low: 0, best: 0.05, high: 0.2 }, 'V', commonPractice('two batteries of one age')),
  'battery.crank': (context) =>
    context.crankCurrent !== undefined && context.crankCurrent > 0
      ? batteryAt(context, context.crankCurrent)
      : cranking('V', (circuit) => solveCircuit(circuit).postV)(context),
  'battery.resistance': (context) =>
    sourced(
      spreadOver(context, (circuit) => {
        const { postV, currentA } = solveCircuit(circuit);
        return (1000 * (circuit.battery.emfV - postV)) / currentA;
      }),
      'mOhm',
      byModel,
    ),
  'drop.clamp': drop(
    ({ positiveClampV }) => positiveClampV,
    ({ positiveClampOhm }) => positiveClampOhm,
  ),
  'drop.positive': drop(
    ({ positiveV }) => positiveV,
    ({ positiveClampOhm, positiveCableOhm }) => positiveClampOhm + positiveCableOhm,
  ),
  'drop.ground': drop(
    ({ groundV }) => groundV,
    ({ negativeClampOhm, groundCableOhm }) => negativeClampOhm + groundCableOhm,
  ),
  'drop.contacts': drop(
    ({ contactsV }) => contactsV,
    ({ contactsOhm }) => contactsOhm,
  ),
  // Nothing heavy flows while the relay is out of its socket.
  'relay.feed': (context) => belowRest(context, { low: 0, best: 0.1, high: 0.3 }),
  'relay.command': (context) => belowRest(context, { low: 0.1, best: 0.3, high: 0.8 }),
  'control.signal': cranking('V', (circuit) => solveCircuit(circuit).controlV),
  'crank-current': cranking('A', (circuit) => solveCircuit(circuit).currentA),
  charging: ({ temperature, nominal }) => regulatedVoltageWindow(temperature, nominal),
};

function belowRest(context: LimitContext, loss: Span): SourcedInterval {
  const series = batteriesInSeries(context);
  const rest = context.restVoltage ?? full(context).best * series;
  return sourced(
    {
      low: rest - loss.high * series,
      best: rest - loss.best * series,
      high: rest - loss.low * series,
    },
    'V',
    commonPractice('the rested battery less what its wires and switches take'),
  );
}

/**
 * What a reading should show on this vehicle when nothing is wrong with it: its best figure, its
 * ends, and where they come from. The battery is taken at the charge that was measured; a drop, and
 * the battery's voltage while cranking, go by the measured current where there is one.
 *
 * Volts (24 V vehicles: of both batteries), amperes, or mOhm. Nothing where the context lacks what
 * the reading goes by: a load test without the battery's rating. Throws `reading-unknown`.
 */
export function expectedReading(
  name: ExpectedReading,
  context: LimitContext,
): SourcedInterval | undefined {
  if (!Object.hasOwn(rules, name)) {
    throw new ElectricsError('reading-unknown', { reading: String(name) });
  }
  return rules[name](context);
}
