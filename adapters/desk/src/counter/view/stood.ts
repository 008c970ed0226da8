/**
 * The temperature of a battery where nobody has a thermometer: all that a clerk can know is whether
 * it has stood indoors long enough, and that settles it.
 */
import type { TemplateResult } from 'lit-html';
import { numbered } from '../../view/key.ts';
import type { InHand, Shown } from './shown.ts';

/** True of a temperature. */
export function isWarmth({ flow }: InHand, check: string): boolean {
  const form = flow.checks[check]?.form;
  return form?.kind === 'reading' && form.unit === 'Cel';
}

/** True where a temperature is asked for and no thermometer is there to take it. */
export function isStoodAsked(inHand: InHand, check: string): boolean {
  const { kit } = inHand.back.sitting.case.state.context;
  return isWarmth(inHand, check) && Array.isArray(kit) && !kit.includes('thermometer');
}

/** Draws what can be said of it. What came in out of the frost is too cold by that alone. */
export function stood({ words, act }: Shown, check: string): TemplateResult {
  const give = (band: string) => (): void => {
    act.answer(check, [band]);
  };
  return numbered([
    { label: words.stoodYes, press: give('usable') },
    { label: words.stoodFrost, press: give('too-cold') },
    {
      label: words.stoodNo,
      press: () => {
        act.command('cannot');
      },
    },
  ]);
}
