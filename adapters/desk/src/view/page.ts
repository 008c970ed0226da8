/**
 * The whole desk.
 */
import { positionOf } from '@keyturn/core';
import { directionOf } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { besideFigure, furtherKeys, keyOf } from '../keys.ts';
import { calibration } from './calibration.ts';
import { keyView, numbered } from './key.ts';
import { nameOf, others, shortNameOf, waitOf } from './others.ts';
import { paper } from './paper.ts';
import { cardOf, helpOf } from './card.ts';
import { causeCard, helpCard, sendCard, underWayCard } from './send-card.ts';
import type { InHand, Shown } from './shown.ts';
import { practice } from './practice.ts';
import { askingCard, dangerCard, notes, pressingOf, sentence, stepCard } from './step-card.ts';
import { fill } from '../wording.ts';

/** Draws the desk. */
export function page(shown: Shown): TemplateResult {
  const { locale, screen } = shown;
  return html`<div class="page desk" lang=${locale} dir=${directionOf(locale)}>
    ${head(shown)}
    <main>
      ${
        screen === 'calibration'
          ? calibration(shown)
          : screen === 'keys'
            ? keysHelp(shown)
            : desk(shown)
      }
    </main>
  </div>`;
}

function desk(shown: Shown): TemplateResult {
  const { inHand } = shown;
  return html`<div class=${inHand === undefined ? 'sheet bare' : 'sheet'}>
    <section class="card" aria-labelledby="asked" aria-busy=${String(inHand?.isBusy === true)}>
      ${inHand === undefined ? nothing : whose(shown, inHand)}
      ${inHand === undefined ? nothing : practice(shown, inHand)} ${notes(shown, inHand)}
      ${inHand === undefined ? empty(shown) : card(shown, inHand)}
      ${
        inHand === undefined
          ? nothing
          : html`<div class="reach">${line(shown, inHand)} ${always(shown, inHand)}</div>`
      }
    </section>
    ${inHand === undefined ? nothing : paper(shown, inHand)} ${others(shown)}
  </div>`;
}

/** Whose case it is, and danger where the head has no room for it. */
function whose(shown: Shown, inHand: InHand): TemplateResult {
  const { words, act } = shown;
  const danger = keyView({
    label: words.dangerKey,
    at: keyOf.danger,
    isSmall: true,
    press: () => {
      act.command('danger');
    },
  });
  return html`<div class="whose">
    <p><bdi>${nameOf(shown, inHand)}</bdi></p>
    ${
      cardOf(shown.hand, inHand.kase) === 'danger'
        ? nothing
        : html`<span class="low-danger">${danger}</span>`
    }
  </div>`;
}

/** The card by where the case stands. */
function card(shown: Shown, inHand: InHand): TemplateResult {
  switch (cardOf(shown.hand, inHand.kase)) {
    case 'danger':
      return dangerCard(shown);
    case 'help':
      return helpCard(shown, inHand);
    case 'asking':
      return askingCard(shown, inHand, shown.hand.asking ?? '');
    case 'cause':
      return causeCard(shown, inHand);
    case 'under-way':
      return underWayCard(shown, inHand);
    case 'send':
      return sendCard(shown, inHand, helpOf(shown.hand, inHand.kase) ?? '');
    case 'step':
      return stepCard(shown, inHand);
  }
}

/** The line, for whole sentences. Another case has a line of its own, with what was typed for it. */
function line(shown: Shown, { kase, draft, isBusy }: InHand): unknown {
  const { words, act, hand } = shown;
  const kind = cardOf(hand, kase);
  const isSettled = kind === 'send' || kind === 'under-way';
  const label = kind === 'cause' ? words.lineCause : isSettled ? words.lineSettled : words.line;
  const send = (event: Event): void => {
    event.preventDefault();
    const input = (event.currentTarget as HTMLFormElement).elements.namedItem(
      'line',
    ) as HTMLInputElement;
    const text = input.value.replaceAll(/\s+/g, ' ').trim();
    if (text === '') return;
    input.value = '';
    act.draft('');
    if (kind === 'cause') act.hand({ sought: text });
    else act.say(text);
  };
  return keyed(
    kase.id,
    html`<form class="line-entry" @submit=${send}>
      <input
        name="line"
        dir="auto"
        maxlength="400"
        autocomplete="off"
        enterkeyhint="send"
        aria-label=${label}
        placeholder=${label}
        .value=${draft}
        @input=${(event: Event) => {
          act.draft((event.currentTarget as HTMLInputElement).value);
        }}
      />
      <button type="submit" class="key small" ?disabled=${isBusy}>${words.take}</button>
    </form>`,
  );
}

/** What can always be done with a case. */
function always(shown: Shown, inHand: InHand): TemplateResult {
  const { words, speaker, act, hasMoreWords } = shown;
  const isAnswered = inHand.kase.sitting.case.state.order.length > 0;
  const kind = cardOf(shown.hand, inHand.kase);
  const isAsked = kind === 'step' || kind === 'asking';
  // These begin a figure where one is to be typed.
  const { entry, isSigned } = pressingOf(shown);
  const isFigure = entry === 'figure';
  const small = (
    command: 'dont-know' | 'cannot' | 'correct' | 'words' | 'send-now',
    label: string,
    at: string = keyOf[command],
  ): TemplateResult =>
    keyView({
      label,
      at,
      isSmall: true,
      press: () => {
        act.command(command);
      },
    });
  const unanswered = (command: 'dont-know' | 'cannot', label: string): TemplateResult =>
    small(
      command,
      shown.hand.dropping === command ? fill(words.dropTicks, { label }) : label,
      isFigure ? besideFigure[command] : keyOf[command],
    );
  return html`<div class="keys row">
    ${
      kind === 'asking' ||
      (kind === 'step' && positionOf(inHand.kase.sitting.case).awaiting === 'answer')
        ? html`${unanswered('dont-know', speaker.key('dontKnow'))}
          ${unanswered('cannot', speaker.key('cannot'))}`
        : nothing
    }
    ${
      isAnswered
        ? small('correct', words.correct, isSigned === true ? besideFigure.correct : keyOf.correct)
        : small('correct', words.drop)
    }
    ${isAsked ? small('words', hasMoreWords ? words.fewerWords : words.moreWords) : nothing}
    ${kind === 'step' ? small('send-now', words.sendNow) : nothing}
  </div>`;
}

function empty(shown: Shown): TemplateResult {
  const { words, act } = shown;
  return html`${sentence(words.title, words.empty)}
    <p class="sure">${words.emptyHint}</p>
    <div class="keys">
      ${keyView({
        label: words.newCase,
        at: keyOf.new,
        isMain: true,
        press: () => {
          act.command('new');
        },
      })}
      ${
        shown.others.length === 0
          ? nothing
          : keyView({
              label: words.nextCase,
              at: keyOf.next,
              press: () => {
                act.command('next');
              },
            })
      }
    </div>
    ${numbered([
      ...(shown.canReopen ? [{ label: words.reopen, press: act.reopen }] : []),
      { label: words.practise, press: act.practise },
      ...(shown.others.some(({ kase }) => kase.practice !== null)
        ? []
        : [{ label: words.evening, press: act.fillEvening }]),
    ])}`;
}

function head(shown: Shown): TemplateResult {
  const { words, act, locale, locales, screen } = shown;
  const changed = (event: Event): void => {
    act.language((event.currentTarget as HTMLSelectElement).value);
  };
  const headKey = (command: 'new' | 'next' | 'danger', label: string): TemplateResult =>
    html`<button
      type="button"
      class="head-key ${command}"
      @click=${() => {
        act.command(command);
      }}
    >
      <kbd class="at" aria-hidden="true">${keyOf[command]}</kbd> ${label}
    </button>`;
  const toggle = (to: 'calibration' | 'keys', label: string): TemplateResult =>
    html`<button
      type="button"
      class="head-key"
      aria-pressed=${String(screen === to)}
      @click=${() => {
        act.go(screen === to ? 'desk' : to);
      }}
    >
      ${label}
    </button>`;
  return html`<header class="head">
    <h1>${words.title}</h1>
    <p class="summary">${summary(shown)}</p>
    <div class="head-keys">
      ${shown.inHand === undefined || screen !== 'desk' ? nothing : headKey('danger', words.dangerKey)}
      ${headKey('new', words.newCase)}
      ${shown.others.length === 0 ? nothing : headKey('next', words.nextCase)}
      ${toggle('calibration', words.howSure)} ${toggle('keys', words.keysHelp)}
      <label class="language">
        <span>${words.language}</span>
        <select @change=${changed}>
          ${Object.entries(locales).map(
            ([tag, name]) =>
              html`<option value=${tag} lang=${tag} ?selected=${tag === locale}>${name}</option>`,
          )}
        </select>
      </label>
    </div>
  </header>`;
}

/** The others in one or two sentences: how many, who is in danger, who was longest without a word. */
function summary(shown: Shown): string {
  const { words } = shown;
  const waiting = shown.others.filter(({ kase }) => kase.sent === null);
  const longest = waiting.toSorted(
    (one, other) => Date.parse(one.kase.touchedAt) - Date.parse(other.kase.touchedAt),
  )[0];
  const inDanger = shown.others.filter(({ urgency }) => urgency === 'danger');
  const danger =
    inDanger.length === 0
      ? []
      : [
          fill(words.inDanger, {
            who: inDanger
              .slice(0, 3)
              .map((other) => shortNameOf(shown, other))
              .join(' · '),
          }),
        ];
  if (longest === undefined) return danger[0] ?? words.othersNone;
  const values = {
    who: shortNameOf(shown, longest),
    time: waitOf(shown, longest.kase.touchedAt),
    count: shown.others.length,
  };
  const many = shown.others.length === 1 ? words.othersOne : words.othersMany;
  return [...danger, fill(many, values)].join(' ');
}

function keysHelp({ words, act, hasKeys }: Shown): TemplateResult {
  const rows: readonly (readonly [string, string])[] = [
    [`1 … 9 ${furtherKeys.join(' ')}`, words.keyNumber],
    ['↵', words.keyTake],
    [`${keyOf['dont-know']} ${besideFigure['dont-know']}`, words.keyDontKnow],
    [`${keyOf.cannot} , ${besideFigure.cannot}`, words.keyCannot],
    [`${keyOf.correct} ${besideFigure.correct}`, words.keyCorrect],
    [keyOf.words, words.moreWords],
    [keyOf['send-now'], words.sendNow],
    [keyOf.danger, words.dangerKey],
    [keyOf.new, words.newCase],
    [keyOf.next, words.nextCase],
    [keyOf.caller, words.keyCaller],
    [keyOf.leave, words.keyLeave],
  ];
  return html`<section class="report">
    <h2 id="asked" tabindex="-1">${words.keysHelp}</h2>
    <p>${words.keysIntro}</p>
    <table>
      ${rows.map(
        ([key, what]) =>
          html`<tr>
            <th scope="row"><kbd>${key}</kbd></th>
            <td>${what}</td>
          </tr>`,
      )}
    </table>
    <div class="keys row">
      ${keyView({
        label: words.backToDesk,
        at: 'Esc',
        isMain: true,
        press: () => {
          act.go('desk');
        },
      })}
      ${keyView({
        label: hasKeys ? words.keysOn : words.keysOff,
        isPicked: hasKeys,
        press: act.switchKeys,
      })}
    </div>
  </section>`;
}
