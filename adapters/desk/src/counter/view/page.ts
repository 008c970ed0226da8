/**
 * The whole counter.
 */
import { positionOf } from '@keyturn/core';
import { directionOf } from '@keyturn/element/pieces';
import { offerInput } from '@keyturn/element/sittings';
import { html, nothing, type TemplateResult } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { keyView, numbered } from '../../view/key.ts';
import { dayAndTime, fill, timeOfDay } from '../../wording.ts';
import { isCommandInField, keyOf, unknownInField, type CounterCommand } from '../keys.ts';
import type { CounterReturn } from '../return/counter-return.ts';
import { nameOf } from '../return/part-name.ts';
import { readyAt } from '../return/ready.ts';
import { byHandCard, byHandOffered } from './by-hand-card.ts';
import { cameGood } from './came-good.ts';
import { caseCard } from './case-card.ts';
import { dayList } from './day-list.ts';
import { decidedCard, goodwillCard, standing } from './decided-card.ts';
import { guide } from './guide.ts';
import { keysHelp } from './keys-help.ts';
import { hydrometer, isHydrometerAsked } from './hydrometer.ts';
import { ledger } from './ledger.ts';
import { shopTerms } from './shop-terms.ts';
import type { InHand, Shown } from './shown.ts';
import { toldCard } from './told-card.ts';
import { sentence } from './sentence.ts';
import { lastingSigns } from './signs.ts';
import { usualOf } from './usual-list.ts';
import {
  askingCard,
  dangerCard,
  figuresInHand,
  foldedHow,
  isDayAsked,
  isTypedInto,
  mayBeBelowZero,
  stepCard,
} from './step-card.ts';

/** Draws the counter. */
export function page(shown: Shown): TemplateResult {
  const { locale } = shown;
  return html`<div class="page counter" lang=${locale} dir=${directionOf(locale)}>
    ${head(shown)}
    <main>${screen(shown)}</main>
  </div>`;
}

function screen(shown: Shown): TemplateResult {
  switch (shown.screen) {
    case 'day':
      return dayList(shown);
    case 'came-good':
      return cameGood(shown);
    case 'shop':
      return shopTerms(shown);
    case 'keys':
      return keysHelp(shown);
    case 'counter':
      return counter(shown);
  }
}

function counter(shown: Shown): TemplateResult {
  const { inHand, hand, words } = shown;
  return html`<div class=${inHand === undefined ? 'bench bare' : 'bench'}>
    <section class="card" aria-labelledby="asked">
      ${scanLine(shown)} ${hand.open === 'camera' ? camera(shown) : nothing} ${before(shown)}
      ${guide(shown)} ${notes(shown)}
      ${inHand === undefined ? empty(shown) : html`${lastingSigns(inHand)} ${card(shown, inHand)}`}
      ${inHand === undefined ? nothing : always(shown, inHand)}
      ${inHand?.isBusy === true ? html`<p class="busy" role="status">${words.working}</p>` : nothing}
    </section>
    ${inHand === undefined ? nothing : ledger(shown, inHand)} ${waiting(shown)}
  </div>`;
}

/** The card by what the hand has begun and where the return stands. */
function card(shown: Shown, inHand: InHand): TemplateResult {
  const { hand } = shown;
  if (hand.told !== null) return toldCard(shown, inHand, hand.told);
  if (hand.offered !== null) {
    const { offered } = hand;
    const draw = offered.isByHand === true ? byHandOffered : caseCard;
    return draw(shown, inHand, offered);
  }
  if (hand.byHand) return byHandCard(shown, inHand);
  if (hand.open === 'danger') return dangerCard(shown, inHand);
  if (hand.open === 'goodwill') return goodwillCard(shown);
  if (hand.asking !== null) return askingCard(shown, inHand);
  if (inHand.back.goodwill !== null) return decidedCard(shown, inHand);
  if (isHydrometerAsked(shown, inHand)) return hydrometer(shown, inHand);
  return positionOf(inHand.back.sitting.case).awaiting === 'nothing'
    ? decidedCard(shown, inHand)
    : html`${standing(shown, inHand)} ${stepCard(shown, inHand)}`;
}

/** The line: what was scanned or typed of a code, or found in the clerk's own words. */
function scanLine(shown: Shown): TemplateResult {
  const { words, act, inHand, hasCamera } = shown;
  const said = inHand === undefined ? words.scanLabel : words.scanOrSay;
  return html`<form
    class="line-entry"
    @submit=${(event: Event) => {
      event.preventDefault();
      const input = (event.currentTarget as HTMLFormElement).elements.namedItem(
        'line',
      ) as HTMLInputElement;
      const text = input.value.trim();
      if (text === '') return;
      input.value = '';
      act.enter(text);
    }}
  >
    <label>
      <span><kbd class="at" aria-hidden="true">${keyOf.scan}</kbd> ${said}</span>
      <input
        name="line"
        dir="auto"
        maxlength="4000"
        autocomplete="off"
        spellcheck="false"
        enterkeyhint="send"
      />
    </label>
    <button type="submit" class="key small" ?disabled=${inHand?.isBusy === true}>
      ${words.take}
    </button>
    ${
      hasCamera
        ? keyView({
            label: words.camera,
            isSmall: true,
            press: () => {
              act.hand({ open: 'camera' });
            },
          })
        : nothing
    }
  </form>`;
}

function camera({ words, act }: Shown): TemplateResult {
  return html`<div class="camera">
    <p>${words.cameraHint}</p>
    <video muted playsinline aria-label=${words.cameraHint}></video>
    <div class="keys row">
      ${keyView({
        label: words.cameraOff,
        at: keyOf.leave,
        isSmall: true,
        press: () => {
          act.hand({ open: null });
        },
      })}
    </div>
  </div>`;
}

/** The key to change what there is to test with, where that was not asked in this return. */
function testKit({ words, act, hand }: Shown, inHand: InHand): TemplateResult | typeof nothing {
  const { flow, back } = inHand;
  const { state } = back.sitting.case;
  const position = positionOf(back.sitting.case);
  const check = Object.values(flow.checks).find(({ writes }) => writes === 'kit');
  const { kit } = state.context;
  if (check?.form.kind !== 'choice' || !Array.isArray(kit) || !('check' in position)) {
    return nothing;
  }
  const isHere = flow.stages.some(
    ({ checks }) => checks.includes(check.id) && checks.includes(position.check),
  );
  if (!isHere || hand.asking !== null) return nothing;
  const picked = check.form.choices.filter((id) => kit.includes(id));
  return keyView({
    label: words.testKit,
    at: keyOf.kit,
    isSmall: true,
    name: 'kit',
    press: () => {
      act.hand({ asking: check.id, picked });
    },
  });
}

/** What was said last, and answers that a line may have meant: between the line and the question. */
function notes(shown: Shown): TemplateResult {
  const { notices, act, inHand } = shown;
  // Whether a hydrometer is at hand comes before any second look.
  const said = inHand === undefined || isHydrometerAsked(shown, inHand) ? [] : inHand.said;
  // Of a day they stand under its field.
  const isDay = inHand !== undefined && isDayAsked(shown, inHand);
  const offers = isDay ? [] : (inHand?.offers ?? []);
  const isEmpty = notices.length + said.length + offers.length === 0;
  return html`<div class=${isEmpty ? 'notes empty' : 'notes'} role="status">
    ${notices.map((notice) => html`<p class="notice">${notice}</p>`)}
    ${said.map((one) =>
      'text' in one
        ? html`<p class=${one.kind === 'refused' ? 'refused' : ''}>${one.text}</p>`
        : nothing,
    )}
    ${offers.map((offer) =>
      keyView({
        label: offer.label,
        isSmall: true,
        press: () => {
          if (inHand !== undefined) act.take(offerInput(inHand.back.sitting.case, offer));
        },
      }),
    )}
  </div>`;
}

/** What else came back on the receipt in hand, as long as it lies there. */
function before({ receiptElsewhere }: Shown): TemplateResult | typeof nothing {
  return receiptElsewhere.length === 0
    ? nothing
    : html`<div class="not-told before" role="status">
        ${receiptElsewhere.map((one) => html`<p>${one}</p>`)}
      </div>`;
}

function empty(shown: Shown): TemplateResult {
  const { words, act, shop } = shown;
  return html`${sentence('', words.whatIsIt)}
  ${numbered([
    {
      label: words.starter,
      press: () => {
        act.begin('starter');
      },
    },
    {
      label: words.battery,
      press: () => {
        act.begin('battery');
      },
    },
    ...(shop === null ? [{ label: words.practise, press: act.practise }] : []),
    ...(shop?.isInvented === true ? [{ label: words.leaveInvented, press: act.forgetShop }] : []),
  ])}
  ${shop === null ? html`<p class="hint">${words.noTerms}</p>` : nothing}`;
}

/** What can always be done with a return. */
function always(shown: Shown, inHand: InHand): TemplateResult {
  const { words, act, hand } = shown;
  const { back, speaker } = inHand;
  const { awaiting } = positionOf(back.sitting.case);
  const isStill =
    hand.open === null && hand.told === null && hand.offered === null && back.goodwill === null;
  const isAsked = isStill && hand.asking === null && awaiting === 'answer';
  const isCaution = isStill && hand.asking === null && awaiting === 'confirm';
  const isList = usualOf(shown, inHand).length > 0;
  const isHere = isStill && (isAsked || hand.asking !== null) && !isHydrometerAsked(shown, inHand);
  const isTyping = isTypedInto(shown, inHand);
  const typed: Partial<typeof keyOf> = { 'dont-know': unknownInField };
  const hasMinus = figuresInHand(hand, inHand).some((check) => mayBeBelowZero(inHand, check));
  const keyNow = (command: CounterCommand): string | undefined => {
    const isKey = isCommandInField(keyOf[command]) || (command === 'correct' && !hasMinus);
    return isTyping && !isKey ? typed[command] : keyOf[command];
  };
  const small = (command: CounterCommand, label: string): TemplateResult => {
    const at = keyNow(command);
    return keyView({
      label,
      ...(at === undefined ? {} : { at }),
      isSmall: true,
      press: () => {
        act.command(command);
      },
    });
  };
  return html`<div class="keys row">
    ${isCaution ? small('cannot', speaker.key('cannot')) : nothing}
    ${
      isHere && !isList
        ? html`${small('dont-know', speaker.key('dontKnow'))}
          ${small('cannot', speaker.key('cannot'))}`
        : nothing
    }
    ${isHere && (shown.hasHow || foldedHow(shown, inHand)) ? small('how', shown.hasHow ? words.howLess : words.how) : nothing}
    ${back.sitting.case.state.order.length > 0 ? small('correct', words.correct) : nothing}
    ${hand.open === 'danger' ? nothing : small('danger', words.danger)} ${testKit(shown, inHand)}
    ${small('new', words.newReturn)} ${isAsked ? small('aside', words.putAside) : nothing}
    ${keyView({ label: hand.removing ? words.removeSure : words.remove, isSmall: true, press: act.remove })}
  </div>`;
}

/** The other parts on the counter, in turn after the one in hand. */
function waiting(shown: Shown): TemplateResult | typeof nothing {
  const { words, act } = shown;
  if (shown.waiting.length === 0) return nothing;
  return html`<nav class="others-list" aria-label=${words.waiting}>
    <h2>${words.waiting}</h2>
    <ol>
      ${repeat(
        shown.waiting,
        ({ id }) => id,
        (back, index) => {
          const isNext = index === 0;
          return html`<li>
            <button
              type="button"
              @click=${() => {
                act.choose(back.id);
              }}
            >
              <b
                >${isNext ? html`<kbd class="at" aria-hidden="true">${keyOf.next}</kbd> ` : nothing}<bdi
                  >${nameOf(shown, back)}</bdi
                ></b
              >
              <span>${stateOf(shown, back)}</span>
              <span class="more">${sinceWords(shown, back)}</span>
            </button>
          </li>`;
        },
      )}
    </ol>
  </nav>`;
}

/** Since when it lies here, and from when on it can be gone on with. */
function sinceWords({ words, locale }: Shown, back: CounterReturn): TemplateResult {
  const { aside, openedAt } = back;
  const since =
    aside === null
      ? fill(words.since, { time: timeOfDay(openedAt, locale) })
      : fill(words.asideSince, { time: dayAndTime(aside, locale) });
  const ready = readyAt(back);
  if (ready === undefined) return html`${since}`;
  return html`${since}<br />${fill(words.readyFrom, { time: dayAndTime(ready, locale) })}`;
}

function stateOf(shown: Shown, { part, sitting }: CounterReturn): string {
  const { words } = shown;
  const { decision } = sitting.case.state;
  const position = positionOf(sitting.case);
  if ('check' in position) {
    const what = shown.speakerFor(part).checkName(position.check);
    return fill(words.askedNext, { what });
  }
  return decision === null ? '' : (shown.textsFor(part).decisions?.[decision.decide]?.name ?? '');
}

function head(shown: Shown): TemplateResult {
  const { words, act, locale, locales, screen: now } = shown;
  const headKey = (label: string, to: Shown['screen']): TemplateResult =>
    html`<button
      type="button"
      class="head-key"
      aria-pressed=${String(now === to)}
      @click=${() => {
        act.go(now === to ? 'counter' : to);
      }}
    >
      ${label}
    </button>`;
  return html`<header class="head">
    <h1>${words.title}</h1>
    <p class="shop-name"><bdi>${shown.shop?.policy.shop ?? ''}</bdi></p>
    <div class="head-keys">
      <div class="head-list">
        ${headKey(words.dayList, 'day')} ${headKey(words.cameGood, 'came-good')}
        ${headKey(words.theShop, 'shop')} ${headKey(words.keysHelp, 'keys')}
      </div>
      <label class="language">
        <span>${words.language}</span>
        <select
          @change=${(event: Event) => {
            act.language((event.currentTarget as HTMLSelectElement).value);
          }}
        >
          ${Object.entries(locales).map(
            ([tag, name]) =>
              html`<option value=${tag} lang=${tag} ?selected=${tag === locale}>${name}</option>`,
          )}
        </select>
      </label>
    </div>
  </header>`;
}
