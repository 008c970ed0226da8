import { batteryVoltage } from './battery-model.ts';
import type { CrankingCircuit } from './cranking-circuit.ts';
import { solveCircuit } from './solve-circuit.ts';
import { soundRestVoltage } from './sound-rest-voltage.ts';
import { spreadOver } from './spread.ts';
import { labelRating, type Span } from './vehicle-circuit.ts';
import { ElectricsError } from '../electrics-error.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import { batteriesInSeries, type LimitContext } from '../limits/limit-context.ts';
import { regulatedVoltageWindow } from '../charging/regulated-voltage.ts';
import { commonPractice, computed, type Source } from '../source.ts';
import { loadTestLoads } from '../tables/load-test-procedure.ts';
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

/** None of these readings can be below 0, however far the spread of a weak battery reaches. */
function sourced({ low, best, high }: Span, unit: UnitCode, source: Source): SourcedInterval {
  return { low: Math.max(0, low), best, high, unit, source };
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

/** The battery's voltage at a current that is known; none is left where it cannot give so much. */
function batteryAt(context: LimitContext, currentA: number): SourcedInterval {
  const read = ({ battery }: CrankingCircuit): number =>
    Math.max(0, batteryVoltage(battery, currentA));
  return sourced(spreadOver(context, read), 'V', byModel);
}

/** The battery's voltage at a load of which only the ends are known. */
function batteryBetween(context: LimitContext, least: number, greatest: number): SourcedInterval {
  const light = batteryAt(context, least);
  const heavy = batteryAt(context, greatest);
  return { ...light, low: heavy.low, best: (light.best + heavy.best) / 2 };
}

/** Volts of both batteries of a 24 V vehicle, from those of one. */
function ofBatteries(context: LimitContext, one: Span): Span {
  const series = batteriesInSeries(context);
  return { low: one.low * series, best: one.best * series, high: one.high * series };
}

/** A sound battery at rest, whatever was measured. */
function rested(when: 'rested' | 'recharged', source: Source): Rule {
  return (context) =>
    sourced(ofBatteries(context, soundRestVoltage(context.technology, when)), 'V', source);
}

/** The rested battery, as measured or sound, less what is lost on the way from it for each 12 V. */
function belowRest(loss: Span): Rule {
  return (context) => {
    const { restVoltage: known, technology } = context;
    const lost = ofBatteries(context, loss);
    const rest =
      known === undefined
        ? ofBatteries(context, soundRestVoltage(technology))
        : { low: known, best: known, high: known };
    const span = {
      low: Math.max(0, rest.low - lost.high),
      best: Math.max(0, rest.best - lost.best),
      high: Math.max(0, rest.high - lost.low),
    };
    return sourced(span, 'V', belowRestSource);
  };
}

const belowRestSource = commonPractice('the rested battery less what its wires and switches take');

const {
  crankingCurrent: { factor: loadPart },
} = loadTestLoads;

const rules: Readonly<Record<ExpectedReading, Rule>> = {
  'battery.rest': rested(
    'rested',
    commonPractice('a battery charged to three quarters or more and rested'),
  ),
  // All lamps and the windows, some 250 to 600 W at 12 V.
  'battery.lamps': (context) => batteryBetween(context, 20, 50),
  'battery.load-test': (context) => {
    const rating = labelRating(context);
    return rating === undefined ? undefined : batteryAt(context, loadPart * rating.best);
  },
  'battery.tester': (context) =>
    context.rating === undefined
      ? undefined
      : sourced(
          { low: 0.75 * context.rating, best: 0.9 * context.rating, high: 1.1 * context.rating },
          'A',
          commonPractice('a sound battery gives most of its label'),
        ),
  'battery.recharged': rested(
    'recharged',
    commonPractice('a battery that took a full charge, two hours after it'),
  ),
  'battery.halves': () =>
    sourced({ low: 0, best: 0.05, high: 0.2 }, 'V', commonPractice('two batteries of one age')),
  'battery.crank': (context) =>
    context.crankCurrent !== undefined && context.crankCurrent > 0
      ? batteryAt(context, context.crankCurrent)
      : cranking('V', (circuit) => solveCircuit(circuit).postV)(context),
  'battery.resistance': (context) =>
    sourced(
      spreadOver(context, (circuit) => {
        const { battery } = circuit;
        const { postV, currentA } = solveCircuit(circuit);
        return 1000 * (currentA > 0 ? (battery.emfV - postV) / currentA : battery.resistanceOhm);
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
  'relay.feed': belowRest({ low: 0, best: 0.1, high: 0.3 }),
  'relay.command': belowRest({ low: 0.1, best: 0.3, high: 0.8 }),
  'control.signal': cranking('V', (circuit) => solveCircuit(circuit).controlV),
  'crank-current': cranking('A', (circuit) => solveCircuit(circuit).currentA),
  charging: ({ temperature, nominal }) => regulatedVoltageWindow(temperature, nominal),
};

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
    throw new ElectricsError('reading-unknown', { reading: name });
  }
  return rules[name](context);
}
