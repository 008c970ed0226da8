import { describe, expect, test } from 'vitest';
import { terminalDesignation } from './terminal-designation.ts';
import { generatorTerminals, terminalDesignations } from '../tables/terminal-designation.ts';

describe('terminals (DIN 72552, reported)', () => {
  test.each([
    ['15', 'switched positive'],
    ['15a', 'ballast resistor'],
    ['17', 'glow-start switch, start'],
    ['19', 'glow-start switch, preheat'],
    ['30', 'straight from the battery'],
    ['30', 'common contact'],
    ['30a', 'second battery'],
    ['31', 'ground'],
    ['31b', 'ground through a switch'],
    ['45', 'separate starter relay'],
    ['48', 'start repeating relay'],
    ['50', 'starter control'],
    ['50a', 'changeover relay'],
    ['61', 'charge warning lamp'],
    ['85', 'ground end'],
    ['86', 'supply end'],
    ['87', 'closes when'],
    ['87a', 'opens when'],
  ])('%s: %s', (mark, part) => {
    const found = terminalDesignation(mark)!;
    expect(found.terminal).toBe(mark);
    expect(found.meaning).toContain(part);
    expect(found.source.provenance).toBe('reported');
    expect(found.source.text).toContain('DIN 72552');
  });

  test.each([
    ['B+', 'generator output'],
    ['D+', 'exciter'],
  ])('%s: %s (from memory)', (mark, part) => {
    const found = terminalDesignation(mark)!;
    expect(found.meaning).toContain(part);
    expect(found.source.provenance).toBe('from memory');
  });

  test('no other terminal is in the tables', () => {
    expect(Object.keys(terminalDesignations.rows)).toHaveLength(17);
    expect(Object.keys(generatorTerminals.rows)).toEqual(['B+', 'D+']);
  });
});

describe('a mark as people write it', () => {
  test.each([
    [' 15 A ', '15a'],
    ['87A', '87a'],
    ['b+', 'B+'],
    ['D +', 'D+'],
    ['\t50\n', '50'],
  ])('%j is %s', (mark, terminal) => {
    expect(terminalDesignation(mark)?.terminal).toBe(terminal);
  });

  test.each(['', '99', '15b', 'constructor'])('%j is none', (mark) => {
    expect(terminalDesignation(mark)).toBeUndefined();
  });
});
