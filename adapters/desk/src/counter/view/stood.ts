/**
 * The temperature of a battery where nobody has a thermometer: all that a clerk can know is whether
 * it has stood indoors long enough, and that settles it.
 */
import type { TemplateResult } from 'lit-html';
import { numbered } from '../../view/key.ts';
import { dayAndTime, fill } from '../../wording.ts';
import { hereSince, readyAt } from '../return/ready.ts';
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

/**
 * What is said of it. Under the decision that has it wait it is not asked a second time, but told
 * since when it stands here and from when on that counts.
 */
export function stoodWords({ words, hand, locale }: Shown, inHand: InHand): string {
  if (!isWaitedFor(hand, inHand)) return words.stoodAsk;
  const { back } = inHand;
  const ready = readyAt(back);
  return ready === undefined
    ? words.stoodAfter
    : fill(words.stoodSince, {
        since: dayAndTime(hereSince(back), locale),
        ready: dayAndTime(ready, locale),
      });
}

/** Draws what can be said of it. What came in out of the frost is too cold by that alone. */
export function stood({ words, act, hand }: Shown, inHand: InHand, check: string): TemplateResult {
  const give = (band: string) => (): void => {
    act.answer(check, [band]);
  };
  if (isWaitedFor(hand, inHand)) return numbered([{ label: words.stoodNow, press: act.stood }]);
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

/** True once it was decided that the battery stands in the room first, unless that is put right. */
function isWaitedFor({ asking }: Shown['hand'], { back }: InHand): boolean {
  return asking === null && back.sitting.case.state.decision !== null;
}
