import { readFileSync } from 'node:fs';
import { openCase, turn } from '@keyturn/core';
import { shippedFlow } from '@keyturn/flows';
import { createSpeaker } from '@keyturn/language';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { caseSheet } from './case/case-sheet.ts';
import { technicianNote } from './case/technician-note.ts';
import { sheetJson } from './print/sheet-json.ts';
import { sheetSchema, sheetShape } from './schema.ts';

const { chart, texts } = shippedFlow('no-start', 'en');
const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: chart.flow.checks });
const at = '2026-01-01T08:00:00.000Z';
const opened = openCase(chart, { id: 'k1', at, context: { place: 'home' } }).case;
const measured = turn(chart, opened, {
  at,
  input: {
    type: 'answers',
    answers: [
      { check: 'complaint', value: ['slow-crank'] },
      { check: 'battery-rest', value: { value: 12.6, unit: 'V', resolution: 0.1 } },
      { check: 'battery-tester', value: { value: 300, unit: 'A' } },
    ],
  },
}).case;

const sheets = [opened, measured].flatMap((kase) => {
  const options = { chart, case: kase, speaker, made: '2026-03-04T10:00:00+01:00' };
  return [caseSheet(options), technicianNote(options)];
});

describe('the schema of a sheet', () => {
  const ajv = new Ajv2020({ strict: true, validateFormats: false });
  const validate = ajv.compile(sheetSchema);

  test('is draft 2020-12, and is the one that is published', () => {
    expect(sheetSchema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    const file = new URL('../schema/sheet.schema.json', import.meta.url);
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(sheetSchema);
  });

  test.each(sheets)('takes a sheet as it is written, by another validator as well', (sheet) => {
    const data: unknown = JSON.parse(sheetJson(sheet));
    expect(sheetShape.parse(data)).toEqual(sheet);
    expect(validate(data), JSON.stringify(validate.errors)).toBe(true);
  });

  test.each([
    ['of a later form', { format: 2 }],
    ['of another kind', { kind: 'poster' }],
    ['with a field that it has not', { colour: 'red' }],
    ['without its dates', { made: 'yesterday' }],
    ['with a block of no kind', { blocks: [{ kind: 'chart', id: 'x', heading: '' }] }],
  ])('refuses a sheet %s', (_, wrong) => {
    const data = { ...sheets[0], ...wrong };
    expect(sheetShape.safeParse(data).success).toBe(false);
    if (!('made' in wrong)) expect(validate(data)).toBe(false);
  });
});
