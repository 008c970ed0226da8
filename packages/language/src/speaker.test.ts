import { describe, expect, test } from 'vitest';
import type { FlowTexts } from './flow-texts.ts';
import { LanguageError } from './language-error.ts';
import small from './small-flow.test.json' with { type: 'json' };
import { createSpeaker } from './create-speaker.ts';

const flowTexts: FlowTexts = small.texts;
const speaker = createSpeaker({ locale: 'en-GB', flowTexts, checks: { after: { like: 'crank' } } });

describe('what a picture is made of', () => {
  test('is said in the language of the speaker, which it knows', () => {
    expect(speaker.locale).toBe('en-GB');
    expect(speaker.drawing('groundCable')).toBe('ground cable');
    expect(speaker.drawing('was', { share: speaker.formatPercent(0.31) })).toBe('before: 31%');
    // @ts-expect-error: the share is missing
    expect(() => speaker.drawing('was')).toThrow(LanguageError);
  });

  test('has the names of the flow, also of a check that shares the words of another', () => {
    expect(speaker.checkName('after')).toBe(flowTexts.checks['crank']?.name);
    const [place = '', words] = Object.entries(flowTexts.probes)[0] ?? [];
    expect(speaker.probePlace(place)).toBe(words);
    expect(() => speaker.probePlace('aerial')).toThrow(
      new LanguageError('text-missing', 'probes.aerial'),
    );
  });
});
