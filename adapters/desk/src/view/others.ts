/**
 * The other open cases: a plain list in words, whoever is in danger first, then whoever has waited
 * longest.
 */
import { positionOf } from '@keyturn/core';
import { html, nothing, type TemplateResult } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import type { Caller, DeskCase } from '../case/desk-case.ts';
import { helpWords } from '../case/help.ts';
import { minutesSince } from '../case/urgency.ts';
import type { Other, Shown } from './shown.ts';
import { duration, fill, timeOfDay } from '../wording.ts';

/** Lists the others. */
export function others(shown: Shown): TemplateResult | typeof nothing {
  const { words, act } = shown;
  if (shown.others.length === 0) return nothing;
  return html`<nav class="others-list" aria-label=${words.others}>
    <h2>${words.others}</h2>
    <ol>
      ${repeat(
        shown.others,
        ({ kase }) => kase.id,
        (other) =>
          html`<li class=${other.urgency}>
            <button
              type="button"
              @click=${() => {
                act.choose(other.kase.id);
              }}
            >
              <b dir="auto">${nameOf(shown, other)}</b>
              <span class="state">${stateOf(shown, other)}</span>
              <span class="more" dir="auto">${lastOf(shown, other)}</span>
            </button>
          </li>`,
      )}
    </ol>
  </nav>`;
}

/** What a caller is called: by name and place, or by when they called, told from any other. */
export function nameOf(shown: Calling, other: Pick<Other, 'kase' | 'caller'>): string {
  const { name, where } = other.caller;
  return [name, where].filter(Boolean).join(' · ') || timeName(shown, other.kase);
}

/** The same in a sentence: by name, else by place. */
export function shortNameOf(shown: Calling, other: Pick<Other, 'kase' | 'caller'>): string {
  const { name, where } = other.caller;
  return name || where || timeName(shown, other.kase);
}

type Calling = Pick<Shown, 'words' | 'locale' | 'others' | 'inHand'>;

function timeName({ words, locale, others: all, inHand }: Calling, kase: DeskCase): string {
  const minute = minuteOf(kase);
  const isAlike = [...all, ...(inHand === undefined ? [] : [inHand])].some(
    (one) => one.kase.id !== kase.id && !isNamed(one.caller) && minuteOf(one.kase) === minute,
  );
  return fill(words.noName, { time: timeOfDay(kase.openedAt, locale, isAlike) });
}

function isNamed({ name = '', where = '' }: Caller): boolean {
  return name !== '' || where !== '';
}

function minuteOf({ openedAt }: DeskCase): number {
  return Math.floor(Date.parse(openedAt) / 60_000);
}

/** Whoever was spoken to less than this ago does not wait yet. */
const freshMinutes = 0.5;

/** How long a caller has been without a word. */
export function waitOf(
  { words, locale, clock }: Pick<Shown, 'words' | 'locale' | 'clock'>,
  at: string,
): string {
  const minutes = minutesSince(at, clock);
  return minutes < freshMinutes ? words.justNow : duration(minutes, locale);
}

function stateOf(shown: Shown, { kase, urgency }: Other): string {
  const { words } = shown;
  const goes = progressOf(shown, kase);
  switch (urgency) {
    case 'danger':
      return `${words.danger} · ${goes}`;
    case 'traffic':
      return `${words.traffic} · ${goes}`;
    case 'call-back':
    case 'waits':
    case 'under-way':
      return goes;
  }
}

/** How long a caller waits; once help is under way, when they are called back. */
function progressOf(shown: Shown, { sent, touchedAt }: DeskCase): string {
  const { words, clock, locale } = shown;
  if (sent !== null) {
    return Date.parse(sent.callBackAt) <= clock
      ? words.callBack
      : fill(words.underWay, { time: timeOfDay(sent.callBackAt, locale) });
  }
  const time = waitOf(shown, touchedAt);
  return minutesSince(touchedAt, clock) < freshMinutes ? time : fill(words.waits, { time });
}

/** What was done last: what was sent or is to be sent, or asked. */
function lastOf({ words, texts, speaker, clock }: Shown, { kase }: Other): string {
  const position = positionOf(kase.sitting.case);
  const { verdict, due } = kase.sitting.case.state;
  const isOver =
    position.awaiting === 'wait' && Date.parse(due[position.check] ?? '') <= clock ? words.due : '';
  const help = kase.sent?.help ?? verdict?.send;
  const last =
    help !== undefined
      ? (helpWords(texts, help).name ?? words.nobody)
      : 'check' in position
        ? fill(words.asked, { what: speaker.checkName(position.check) })
        : '';
  return [kase.practice === null ? '' : words.practice, isOver, last].filter(Boolean).join(' · ');
}
