import { readdirSync, readFileSync } from 'node:fs';
import type { FlowTexts } from '@keyturn/language';
import { describe, expect, test } from 'vitest';
import { joinTexts, partTexts } from './parted-texts.ts';

const flows = new URL('../../../../flows/', import.meta.url);
const files = readdirSync(flows, { recursive: true, encoding: 'utf8' }).filter((file) =>
  /texts.(?:ar|de|en|es|fr|pl)\.json$/.test(file),
);
const read = (file: string): FlowTexts =>
  JSON.parse(readFileSync(new URL(file.replaceAll('\\', '/'), flows), 'utf8')) as FlowTexts;

/** Every list of ids on the way, in its order: phrases are looked at in the order of the answers. */
function order(tree: unknown): unknown {
  if (typeof tree !== 'object' || tree === null || Array.isArray(tree)) return tree;
  return Object.entries(tree)
    .filter(([key]) => key !== 'said' && key !== 'unless')
    .map(([key, value]) => [key, order(value)]);
}

describe('the texts of a flow', () => {
  test('are found', () => {
    expect(files.length).toBeGreaterThan(6);
  });

  test.each(files)('%s are after they were parted as they were', (file) => {
    const texts = read(file);
    const { told, said } = JSON.parse(JSON.stringify(partTexts(texts))) as ReturnType<
      typeof partTexts
    >;
    expect(joinTexts(told, said)).toEqual(texts);
    expect(order(joinTexts(told, said))).toEqual(order(texts));
  });

  test('are told without a word of what people say, and said without a word of what is told', () => {
    const { told, said } = partTexts(read('no-start/texts/en.json'));
    expect(JSON.stringify(told)).not.toMatch(/"(?:said|unless)":/);
    expect(JSON.stringify(said)).not.toMatch(/"(?:name|ask|label|do|means)":/);
  });
});
