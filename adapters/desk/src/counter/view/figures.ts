/**
 * Figures of the bench, or of the vehicle by hand: a field for each, with the scale on which it is
 * marked while it is typed, or in a word what it is found to be.
 */
import type { ReadingMessage } from '@keyturn/core';
import { askAgain, offerInput } from '@keyturn/element/sittings';
import type { Speaker } from '@keyturn/language';
import { html, nothing, type TemplateResult } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { repeat } from 'lit-html/directives/repeat.js';
import { keyView } from '../../view/key.ts';
import { keyOf } from '../keys.ts';
import { benchRuler } from './bench-ruler.ts';
import type { InHand, Shown } from './shown.ts';
import { how } from './sentence.ts';

/** Figures as they are asked for: of the flow in whose words they stand. */
type Asked = Pick<InHand, 'back' | 'figures' | 'speaker'> & {
  readonly flow: Pick<InHand['flow'], 'checks'>;
};

/** Which figures are drawn, and how. */
interface Fields {
  readonly checks: readonly string[];
  /** In a word what each is found to be, in place of its scale. */
  readonly isBrief?: boolean;
}

/** Draws the figures that are asked for. */
export function figures(
  shown: Shown,
  inHand: Asked,
  { checks, isBrief = false }: Fields,
): TemplateResult {
  const { act, words } = shown;
  const { back } = inHand;
  return html`<form
    class="figures"
    @submit=${(event: Event) => {
      event.preventDefault();
      const root = (event.currentTarget as HTMLFormElement).getRootNode() as ShadowRoot;
      act.nextFigure((root.activeElement as HTMLInputElement | null)?.name ?? '');
    }}
  >
    ${repeat(
      checks,
      (check) => `${back.id} ${check}`,
      (check) => figure(shown, inHand, { check, isNamed: isBrief || checks.length > 1, isBrief }),
    )}
    <div class="keys row">
      ${keyView({
        label: words.take,
        at: keyOf.take,
        isMain: true,
        press: act.takeFigures,
      })}
      ${!isBrief && hasZone(inHand, checks) ? html`<p class="hint">${words.rulerKey}</p>` : nothing}
      <button type="submit" hidden></button>
    </div>
  </form>`;
}

function figure(
  shown: Shown,
  inHand: Asked,
  {
    check,
    isNamed,
    isBrief,
  }: { readonly check: string; readonly isNamed: boolean; readonly isBrief: boolean },
): TemplateResult {
  const { act } = shown;
  const { flow, speaker, back } = inHand;
  const asked = askAgain({ flow }, check);
  const [question] = asked === undefined ? [] : speaker.render([asked]);
  const unit = question?.kind === 'question' ? (question.unit ?? '') : '';
  const typed = back.typed[check] ?? '';
  const id = `figure-${check}`;
  return html`<div class="figure">
    ${isNamed ? html`<label for=${id}>${speaker.checkName(check)}</label>` : nothing}
    ${isNamed && shown.hasHow && question?.kind === 'question' ? how(question.how) : nothing}
    <span class="display">
      <input
        id=${id}
        name=${check}
        class=${typed.length > longFigure ? 'long' : ''}
        type="text"
        inputmode="decimal"
        autocomplete="off"
        maxlength="4000"
        aria-label=${isNamed ? nothing : speaker.checkName(check)}
        aria-describedby=${`${id}-means`}
        .value=${live(typed)}
        @input=${(event: Event) => {
          act.type(check, (event.currentTarget as HTMLInputElement).value);
        }}
      />
      <span class="unit">${unit}</span>
    </span>
    ${isBrief ? inAWord(inHand, check) : scale(inHand, check)} ${offered(shown, inHand, check)}
  </div>`;
}

/** A figure of more letters than this does not fit beside its scale. */
const longFigure = 9;

/** What the figure may have been meant as, to be taken at once. */
function offered(
  { act }: Shown,
  { figures: all, back }: Asked,
  check: string,
): TemplateResult | typeof nothing {
  const unclear = all[check]?.unclear;
  if (unclear?.type !== 'offers' || unclear.offers.length === 0) return nothing;
  return html`<div class="keys row">
    ${unclear.offers.map((offer) =>
      keyView({
        label: offer.label,
        isSmall: true,
        press: () => {
          act.take(offerInput(back.sitting.case, offer));
        },
      }),
    )}
  </div>`;
}

/** The scale, and in words what the figure means or why it is none. */
function scale({ figures: all, speaker, flow }: Asked, check: string): TemplateResult {
  const typed = all[check];
  const reading = typed?.scale ?? null;
  const isTyped = typed !== undefined && typed.answer !== null && typed.refused.length === 0;
  const good = goodOf(flow, check);
  return html`${
    reading === null || reading.bounds.length === 0
      ? nothing
      : benchRuler(reading, { speaker, isTyped, good })
  }
  ${means(
    { figures: all, speaker },
    check,
    reading === null || !isTyped ? '' : meaningOf(speaker, reading, good),
  )}`;
}

/** What a figure means; of a good one the word is enough. */
function meaningOf(speaker: Speaker, reading: ReadingMessage, good: string | undefined): string {
  if (reading.band === good && !reading.borderline) return speaker.readingFound(reading);
  const [rendered] = speaker.render([reading]);
  return rendered?.kind === 'scale' ? rendered.means : '';
}

/** What the figure is found to be, in a word, or why it is none. */
function inAWord({ figures: all, speaker }: Asked, check: string): TemplateResult {
  const reading = all[check]?.scale ?? null;
  return means(
    { figures: all, speaker },
    check,
    reading === null ? '' : speaker.readingFound(reading),
  );
}

/** What a figure means, or why it is none. */
function means(
  { figures: all, speaker }: Pick<Asked, 'figures' | 'speaker'>,
  check: string,
  meaning: string,
): TemplateResult {
  const typed = all[check];
  const wrong = [
    ...(typed?.unclear ? speaker.askBack(typed.unclear) : []),
    ...speaker.render(typed?.refused ?? []),
  ].flatMap((one) => ('text' in one ? [one.text] : []));
  return html`<p class=${wrong.length > 0 ? 'means wrong' : 'means'} id=${`figure-${check}-means`}>
    ${wrong.length > 0 ? wrong.join(' ') : meaning}
  </p>`;
}

/** The band in which a part is good; undefined where none is. */
function goodOf({ checks }: Asked['flow'], check: string): string | undefined {
  const form = checks[check]?.form;
  return form?.kind === 'reading' ? form.good : undefined;
}

/** Whether a bound is a zone on any of the scales. */
function hasZone({ figures: all }: Asked, checks: readonly string[]): boolean {
  return checks.some((check) => all[check]?.scale?.bounds.some(({ low, high }) => low < high));
}
