/**
 * The form of a sheet in JSON, for programs that read one. Published in the package as
 * `schema/sheet.schema.json` (JSON Schema, draft 2020-12), generated from this.
 */
import { unitCodes } from '@keyturn/electrics';
import { z } from 'zod';
import { sheetFormat, type Sheet } from './sheet.ts';

const share = z.number().min(0).max(1);
const instant = z.iso.datetime({ offset: true });

const picture = z.strictObject({
  svg: z.string().describe('SVG 1.1 text'),
  description: z.string(),
});

const fact = z.strictObject({ id: z.string(), label: z.string(), text: z.string() });

const quantity = z.strictObject({
  value: z.number(),
  unit: z.enum(unitCodes).describe('UCUM code'),
  resolution: z.exactOptional(z.number().positive()),
  meter: z.exactOptional(
    z.strictObject({
      percent: z.number(),
      digits: z.number(),
      counts: z.exactOptional(z.number()),
    }),
  ),
});

const reading = z.strictObject({
  quantity,
  uncertainty: z.number().min(0).describe('standard uncertainty, in the unit of the quantity'),
  unit: z.enum(unitCodes).describe('unit of the bounds, UCUM code'),
  bands: z.array(z.strictObject({ id: z.string(), label: z.string(), share })),
  bounds: z.array(z.strictObject({ low: z.number(), high: z.number(), source: z.string() })),
  band: z.string(),
  borderline: z.boolean(),
  ruler: z.exactOptional(picture),
});

const finding = z.strictObject({
  number: z.int().positive(),
  check: z.string(),
  name: z.string(),
  said: z.string(),
  means: z.string(),
  notes: z.array(z.string()),
  cited: z.array(z.string()),
  answers: z.array(z.string()),
  reading: z.exactOptional(reading),
});

const minor = z.int().describe('minor units of the currency');

const refund = z.strictObject({
  currency: z.string().describe('ISO 4217'),
  lines: z.array(
    z.discriminatedUnion('line', [
      z.strictObject({ line: z.literal('price'), amount: minor }),
      z.strictObject({
        line: z.literal('restocking'),
        amount: minor,
        percent: z.exactOptional(z.number()),
      }),
      z.strictObject({
        line: z.literal('used'),
        amount: minor,
        months: z.int(),
        percent: z.exactOptional(z.number()),
        left: z.exactOptional(z.int()),
        of: z.exactOptional(z.int()),
      }),
      z.strictObject({ line: z.literal('deposit'), amount: minor }),
    ]),
  ),
  total: minor,
});

const named = { id: z.string(), heading: z.string() };

const block = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('facts'), ...named, facts: z.array(fact) }),
  z.strictObject({ kind: z.literal('lines'), ...named, lines: z.array(z.string()) }),
  z.strictObject({
    kind: z.literal('rows'),
    ...named,
    rows: z.array(
      z.strictObject({ id: z.string(), label: z.string(), lines: z.array(z.string()) }),
    ),
  }),
  z.strictObject({ kind: z.literal('strip'), ...named, findings: z.array(finding) }),
  z.strictObject({
    kind: z.literal('ranking'),
    ...named,
    faults: z.array(z.strictObject({ id: z.string(), said: z.string(), share })),
    picture,
  }),
  z.strictObject({
    kind: z.literal('cautions'),
    ...named,
    cautions: z.array(
      z.strictObject({
        id: z.string(),
        word: z.enum(['danger', 'warning', 'caution', 'notice']),
        said: z.string(),
        text: z.string(),
      }),
    ),
  }),
  z.strictObject({ kind: z.literal('picture'), ...named, picture }),
  z.strictObject({
    kind: z.literal('fields'),
    ...named,
    fields: z.array(z.strictObject({ id: z.string(), label: z.string() })),
  }),
]);

/** Checks a sheet that was read from JSON. */
export const sheetShape: z.ZodType<Sheet> = z.strictObject({
  format: z.literal(sheetFormat),
  kind: z.enum(['case', 'technician', 'return', 'fitting']),
  locale: z.string().describe('BCP 47'),
  direction: z.enum(['ltr', 'rtl']),
  title: z.string(),
  subject: z.string(),
  case: z.strictObject({
    id: z.string(),
    flow: z.string(),
    version: z.string(),
    at: instant,
  }),
  made: instant,
  head: z.array(fact),
  decision: z
    .strictObject({ decide: z.string(), reason: z.string(), refund: z.exactOptional(refund) })
    .nullable(),
  verdict: z
    .strictObject({
      fault: z.string(),
      strength: z.enum(['proved', 'likely', 'open']),
      probability: share,
    })
    .nullable(),
  lead: z.strictObject({ title: z.string(), text: z.string() }),
  code: z.strictObject({ text: z.string(), caption: z.string(), picture }),
  blocks: z.array(block),
  foot: z.array(z.string()),
});

/** JSON Schema of a sheet. */
export const sheetSchema: Readonly<Record<string, unknown>> = z.toJSONSchema(sheetShape, {
  target: 'draft-2020-12',
});
