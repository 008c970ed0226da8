/**
 * Figures of the tests of a battery that follow from what is known of it, so that nobody has to
 * reckon them beside a load tester.
 */
import { loadTestCurrent, type Quantity, type RatingStandard } from '@keyturn/electrics';
import type { Flow } from '../flow/flow.ts';
import type { Context } from './context.ts';

/** What a test goes by; each is missing where it does not follow from what is known. */
export interface TestFigures {
  /** What the load tester is set to. */
  readonly load?: Quantity;
  /** The cold cranking current on the label, and its standard. */
  readonly rating?: Quantity;
  readonly standard?: RatingStandard;
  /** How long the battery rests after a charge before it is read. */
  readonly rest?: Quantity;
}

/** Common practice, no source: acid evens out more slowly in a glass mat. */
const [restHours, restHoursOfMat] = [2, 8];

/** The figures that the tests of a part go by, as far as the context tells them. */
export function testFigures(context: Context): TestFigures {
  const rating = context['part.battery.rating'] as number | undefined;
  const standard = context['part.battery.standard'] as RatingStandard | undefined;
  const technology = context['part.battery.technology'];
  return {
    ...(rating === undefined ? {} : { rating: { value: rating, unit: 'A' } }),
    ...(standard === undefined ? {} : { standard }),
    ...(rating === undefined || standard === undefined ? {} : loadOf(rating, standard)),
    ...(technology === undefined
      ? {}
      : { rest: { value: technology === 'agm' ? restHoursOfMat : restHours, unit: 'h' } }),
  };
}

/** Half of the label by SAE or EN; none where no factor leads from its standard to one of them. */
function loadOf(crankingA: number, standard: RatingStandard): Pick<TestFigures, 'load'> {
  const load = loadTestCurrent({ crankingA, standard });
  if (load.type === 'refused') return {};
  return { load: { value: load.current.best, unit: load.current.unit } };
}

/** The figures as a message carries them; nothing where there are none. */
export function knownOf(
  { part }: Pick<Flow, 'part'>,
  context: Context,
): { readonly known?: TestFigures } {
  const known = part === 'battery' ? testFigures(context) : {};
  return Object.keys(known).length === 0 ? {} : { known };
}
