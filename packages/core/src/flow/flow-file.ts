/**
 * The flow language: the one schema of a flow file. A flow may be split over several files; each
 * holds some of these sections, and together they make the flow. The JSON Schema that editors and
 * the loader use is generated from here.
 */
import { expectedReadings, limitNames, readingKinds, unitCodes } from '@keyturn/electrics';
import { z } from 'zod';
import { circuitFigures } from '../circuit/figures.ts';
import { circuitChoiceNames } from '../circuit/predict-choice.ts';
import { circuitReadings } from '../circuit/predict-reading.ts';
import { soldParts } from '../policy/policy.ts';
import { payments } from '../policy/refund.ts';
import { saleTerms } from '../policy/sale-terms.ts';

const id = z
  .string()
  .regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/u)
  .meta({ description: 'lower-case words joined by hyphens' });

const oneOrMore = <Item extends z.ZodType>(item: Item): z.ZodUnion<[Item, z.ZodArray<Item>]> =>
  z.union([item, z.array(item).min(1)]);

const rangeEnd = z
  .union([z.number(), z.enum(limitNames)])
  .meta({ description: 'a number, or a named limit' });

const range = z
  .strictObject({
    below: rangeEnd.optional(),
    above: rangeEnd.optional(),
    'at-least': rangeEnd.optional(),
    'at-most': rangeEnd.optional(),
  })
  .meta({ description: 'limits of a figure: below, above, at-least, at-most' });

/** A condition as written: every entry must hold; `any`, `not`, `was` and `raised` are words. */
export type ConditionSource = { readonly [key: string]: unknown };

const condition: z.ZodType<ConditionSource> = z
  .lazy(() =>
    z
      .object({
        all: z.array(condition).optional(),
        any: z.array(condition).optional(),
        not: condition.optional(),
        was: condition.optional(),
        raised: oneOrMore(id).optional(),
      })
      .catchall(
        z.union([
          z.string(),
          z.number(),
          z.boolean(),
          z.array(z.union([z.string(), z.number()])).min(1),
          range,
        ]),
      ),
  )
  .meta({
    id: 'condition',
    description:
      'a check or a field of the context, with the answer (or answers) it must have; all entries must hold',
  });

const position = z.enum(['memory', 'seat', 'bonnet', 'below', 'bench']);
const activity = z.enum([
  'held-start',
  'ignition-on',
  'boost',
  'charge',
  'load',
  'starter',
  'spark',
  'run',
]);

const cover = z.strictObject({
  does: oneOrMore(activity).optional(),
  checks: oneOrMore(id).optional(),
  at: oneOrMore(position).optional(),
});

const covers = z.union([z.literal('everything'), cover, z.array(cover).min(1)]);

const unit = z.enum(unitCodes);

const bandEnd = z
  .union([z.number(), z.enum([...limitNames, 'above'])])
  .meta({ description: "a number in the check's unit, a named limit, or above" });

const termEnd = z
  .enum([...saleTerms, 'above'])
  .meta({ description: 'a term of the shop, or above: policy.return-window, policy.warranty' });

const bands = z.record(id, bandEnd).meta({
  description:
    'named intervals in ascending order; each has only its upper bound, the last is above',
});

const expected = z
  .enum(expectedReadings)
  .meta({ description: 'the reading of electrics that tells what a sound vehicle shows' });

const check = z
  .strictObject({
    choice: z.array(id).min(2).optional().meta({ description: 'the answers, of which one holds' }),
    choices: z
      .array(id)
      .min(2)
      .optional()
      .meta({ description: 'the answers, of which several may hold' }),
    reading: unit.optional().meta({ description: 'the unit of the figure that is read' }),
    work: z.literal('done').optional().meta({ description: 'work that is done and confirmed' }),
    date: z.record(id, termEnd).optional().meta({
      description: 'a day that has passed, in bands by how long ago; each has only its upper bound',
    }),
    bands: bands.optional(),
    good: id.optional().meta({ description: "the band that a maker's figures enclose" }),
    usual: id.optional().meta({
      description: 'the choice that is found where nothing is out of the ordinary',
    }),
    'upper-spread': z
      .number()
      .positive()
      .optional()
      .meta({ description: "how far round a maker's upper figure a reading is borderline" }),
    lamp: z
      .strictObject({ dark: id, dim: id, bright: id })
      .optional()
      .meta({ description: 'the band that each answer of a test lamp stands for' }),
    range: z.enum(readingKinds).optional().meta({ description: 'what a meter can show there' }),
    expect: expected.optional(),
    'settled-by': z
      .array(id)
      .min(1)
      .optional()
      .meta({ description: 'checks that tell the side of a reading too close to a bound' }),
    'settled-in-time': z
      .array(id)
      .min(1)
      .optional()
      .meta({ description: 'bands that a later reading tells from their neighbours' }),
    at: position,
    needs: z
      .array(z.string().regex(/^[a-z-]+( or [a-z-]+)*$/u))
      .optional()
      .meta({ description: 'kit: every entry is needed, "voltmeter or test-lamp" means either' }),
    minutes: z.number().min(0),
    probes: z.strictObject({ red: id, black: id }).optional(),
    does: z.array(activity).optional(),
    when: condition.optional(),
    requires: condition.optional(),
    again: z.array(id).optional(),
    after: z
      .array(id)
      .min(1)
      .optional()
      .meta({ description: 'checks that are asked before it, of a part whose limits go by them' }),
    wait: z.strictObject({ minutes: z.number().positive() }).optional(),
    sets: z
      .record(id, z.record(z.string(), z.union([z.string(), z.number(), z.boolean()])))
      .optional(),
    writes: z.string().optional(),
    lapses: z
      .boolean()
      .optional()
      .meta({ description: 'an answer lets every confirmed caution lapse' }),
  })
  .partial({ at: true, minutes: true })
  .extend({ like: id.optional() })
  .meta({ id: 'check' });

const caution = z.strictObject({
  word: z.enum(['danger', 'warning', 'caution', 'notice']),
  confirm: z.boolean().default(false),
  before: covers.optional().meta({
    description:
      'everything, or what is covered by does, checks or at; left out where it is said only with a remedy',
  }),
  when: condition.optional(),
});

const stop = z.strictObject({
  when: condition,
  forbids: covers,
  except: z.array(id).optional(),
  remembered: z.array(id).optional(),
  instead: z
    .strictObject({ remedy: id, send: id })
    .optional()
    .meta({ description: 'what is to be done whatever the fault is' }),
});

const proof = z
  .record(id, oneOrMore(id))
  .meta({ description: 'checks that prove the repair, with the answers that count as good' });

const fault = z.strictObject({
  best: z.enum(['proved', 'likely', 'open']),
  proof: oneOrMore(condition).optional().meta({ description: 'any one of these proves it' }),
  remedy: z.union([
    id,
    z
      .array(
        z.strictObject({
          do: id,
          does: z.array(activity).optional(),
          from: z
            .enum(['proved', 'likely'])
            .optional()
            .meta({ description: 'how strong the verdict must be at the least' }),
          when: condition.optional(),
          send: id.optional(),
          prove: proof.optional(),
        }),
      )
      .min(1),
  ]),
  send: id,
  cautions: z.array(id).optional(),
  prove: proof.optional(),
  licensed: z.boolean().optional(),
});

const prior = z.strictObject({
  weight: z.number().positive(),
  source: z.string().min(3),
  times: z.array(z.strictObject({ by: z.number().positive(), when: condition })).optional(),
});

const mistakenTimes = z
  .partialRecord(
    z.enum(['driver', 'mechanic', 'technician', 'clerk', 'dispatcher']),
    z.number().min(1).max(3),
  )
  .meta({ description: 'how many times as often as the tables have it a role is mistaken' });

const likelihoods = z
  .array(
    z.strictObject({
      given: condition.optional(),
      mistaken: z
        .number()
        .min(0)
        .max(50)
        .optional()
        .meta({ description: 'of 100 answers, how many are mistaken' }),
      'mistaken-for': z
        .record(id, oneOrMore(id))
        .optional()
        .meta({ description: 'what each answer is mistaken for; left out, any other' }),
      'of-100': z.record(z.string(), z.record(id, z.number().min(0).max(100))).meta({
        description:
          'fault, group or otherwise; of 100 such vehicles, how many give each answer; by-circuit are those that answer as their circuit does',
      }),
    }),
  )
  .min(1);

const figureValue = z
  .union([z.number(), z.literal('open')])
  .meta({ description: 'a number, or open for a resistance without end' });

const figureRanges = z.partialRecord(z.enum(circuitFigures), oneOrMore(figureValue)).meta({
  description:
    'figure to its value, or to the values that the least, equal steps of vehicles, and the most have',
});

const circuitMode = z.strictObject({
  'of-100': z.number().positive().optional(),
  when: condition.optional(),
  figures: figureRanges,
});

const circuit = z.strictObject({
  states: z.int().min(8).max(512).meta({ description: 'hidden states drawn for each set' }),
  usual: z
    .array(
      z.strictObject({
        source: z.string().min(3),
        when: condition.optional(),
        figures: figureRanges,
      }),
    )
    .min(1)
    .meta({ description: 'what figures any vehicle has' }),
  readings: z.record(
    id,
    z.strictObject({
      reads: z.enum(circuitReadings),
      spread: z.number().positive().meta({ description: 'of the model, in the unit of the check' }),
      part: z.number().min(0).max(1).optional().meta({ description: 'of the drop or current' }),
      rough: z
        .number()
        .min(0)
        .max(50)
        .optional()
        .meta({ description: 'of 100 vehicles, of how many the model is only roughly right' }),
      odd: z.number().min(0.1).max(20).meta({ description: 'of 100 readings, how many are odd' }),
      source: z.string().min(3),
    }),
  ),
  choices: z.record(id, z.enum(circuitChoiceNames)),
  pairs: z
    .array(
      z.strictObject({
        faults: z
          .tuple([id, id])
          .meta({ description: 'two faults, the one to put right first first' }),
        times: z.number().positive().meta({ description: 'how many times as often as by chance' }),
        source: z.string().min(3),
      }),
    )
    .max(15)
    .optional(),
  faults: z
    .record(
      z.string(),
      z.strictObject({
        source: z.string().min(3),
        fails: z
          .boolean()
          .optional()
          .meta({ description: 'true where the circuit itself is why the engine does not start' }),
        states: z.int().min(8).max(512).optional().meta({
          description: 'hidden states drawn for this set, where it needs fewer or more',
        }),
        modes: z.array(circuitMode).min(1),
      }),
    )
    .meta({ description: 'fault, group or otherwise; the ways in which it shapes the circuit' }),
});

/** No cost of a case comes near it: it would be a slip of the pen. */
const mostMinutes = 100_000;
const minutesOfCost = z.number().min(0).max(mostMinutes);

const acting = z.strictObject({
  cost: minutesOfCost.meta({ description: 'minutes, money included, of acting on it' }),
  wrong: minutesOfCost.meta({ description: 'minutes more where it was the wrong thing' }),
  always: z.boolean().optional().meta({ description: 'true where it helps whatever the fault is' }),
});

const costs = z.strictObject({
  source: z.string().min(3),
  setups: z
    .record(id, minutesOfCost)
    .meta({ description: 'minutes to fetch an item of kit, or to get to a place, once in a case' }),
  remedies: z.record(id, acting),
  sends: z.record(id, acting),
  'wrong-times': z
    .partialRecord(
      z.enum(['driver', 'mechanic', 'technician', 'clerk', 'dispatcher']),
      z.number().positive().max(100),
    )
    .optional()
    .meta({ description: 'how many times dearer a mistake is for a role' }),
});

const decision = z.strictObject({
  when: condition
    .optional()
    .meta({ description: 'when the line holds; left out in the last line alone' }),
  decide: id.meta({ description: 'what is decided' }),
  reason: id.meta({ description: 'why, by the id of its words' }),
  says: id.optional().meta({
    description: 'the words by which this line tells its reason, where they are not its own',
  }),
  again: z.array(id).min(1).optional().meta({
    description: 'checks to be answered once more, after which the table is gone through anew',
  }),
  voids: z.array(id).min(1).optional().meta({
    description:
      'checks whose answers so far do not count: they go once one of the checks in again is answered',
  }),
  pays: z
    .enum(payments)
    .optional()
    .meta({ description: 'by what of the terms of the shop it is paid back' }),
  measure: z
    .array(id)
    .min(1)
    .optional()
    .meta({ description: 'what to measure on the vehicle before another part is fitted' }),
  besides: z
    .record(id, condition)
    .optional()
    .meta({ description: 'what is said besides the reason, by the id of its words, and when' }),
});

/** The schema of one flow file. */
export const flowFile = z
  .strictObject({
    flow: id.optional(),
    version: z.string().optional(),
    stages: z.record(id, z.array(id)).optional(),
    'verdict-after': id.optional(),
    'by-worth': z
      .array(id)
      .optional()
      .meta({ description: 'stages whose checks are asked by their worth, not as written' }),
    checks: z.record(id, check).optional(),
    computed: z
      .record(
        id,
        z.strictObject({
          formula: z.enum(['internal-resistance']),
          unit,
          bands,
          expect: expected.optional(),
        }),
      )
      .optional(),
    measured: z
      .partialRecord(
        z.enum([
          'restVoltage',
          'crankVoltage',
          'crankCurrent',
          'positiveDrop',
          'groundDrop',
          'contactsDrop',
        ]),
        id,
      )
      .optional()
      .meta({
        description:
          'the check that supplies each quantity which limits, and the tally of losses, go by',
      }),
    turning: condition.optional().meta({ description: 'when the engine is known to turn' }),
    parts: z
      .partialRecord(
        z.enum(soldParts),
        z.strictObject({
          faults: z.array(id).min(1).meta({ description: 'the faults that are of this part' }),
          against: condition.optional(),
          elsewhere: condition.optional(),
          'by-hand': z
            .strictObject({
              readings: z.array(id).min(1).meta({ description: 'in the order of their fields' }),
              complaint: z
                .record(id, id)
                .optional()
                .meta({ description: 'what the vehicle does where this is said of the part' }),
            })
            .optional()
            .meta({ description: 'what is asked for where nobody has a case of the vehicle' }),
        }),
      )
      .optional()
      .meta({ description: 'when the findings speak against a part, and when for something else' }),
    cautions: z.record(id, caution).optional(),
    stops: z.record(id, stop).optional(),
    interrupts: z
      .record(
        id,
        z.strictObject({
          word: z.enum(['danger', 'warning', 'caution', 'notice']),
          then: z.enum(['return', 'prove']),
          reopens: z
            .array(id)
            .optional()
            .meta({ description: 'checks asked again once it is over' }),
          prove: proof.optional(),
        }),
      )
      .optional(),
    decisions: z
      .array(decision)
      .min(1)
      .optional()
      .meta({ description: 'a table in place of faults; the first line that holds decides' }),
    part: z.enum(soldParts).optional().meta({ description: 'the part whose terms of sale count' }),
    'ends-in': z
      .enum(['decision', 'outcome'])
      .optional()
      .meta({ description: 'what the end of the case is called; a decision unless said' }),
    faults: z.record(id, fault).optional(),
    roots: z.record(id, z.strictObject({ faults: z.array(id).min(1), when: condition })).optional(),
    groups: z.record(id, z.array(id).min(1)).optional(),
    priors: z.record(id, prior).optional(),
    likelihoods: z.record(id, likelihoods).optional(),
    'mistaken-times': mistakenTimes.optional(),
    costs: costs.optional(),
    circuit: circuit.optional(),
    'common-causes': z
      .array(
        z.strictObject({
          checks: z.array(id).min(2),
          correlation: z.number().min(0).max(1),
        }),
      )
      .optional(),
  })
  .meta({
    title: 'A file of a Keyturn flow',
    description: 'Some sections of a flow; the files of one folder together make the flow.',
  });

/** One flow file as it parses. */
export type FlowFile = z.infer<typeof flowFile>;
