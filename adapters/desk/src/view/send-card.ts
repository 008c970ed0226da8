/**
 * What to send: which help, how surely, what it brings, what is said to the caller and to the
 * technician, and when to call back.
 */
import { positionOf, type CautionMessage, type VerdictMessage } from '@keyturn/core';
import { sign } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import type { CallerField } from '../case/desk-case.ts';
import { helpShares, helpWords, isForFault } from '../case/help.ts';
import { asksCaller, technicianSlip } from '../case/slip.ts';
import { callerLines, isLeftToHelp } from '../case/told-caller.ts';
import { isByTraffic, isUnsafe } from '../case/urgency.ts';
import { furtherKeys, keyOf } from '../keys.ts';
import { keyView, leaveKey, numbered } from './key.ts';
import type { InHand, Shown } from './shown.ts';
import { sentence } from './step-card.ts';
import { duration, fill, timeOfDay } from '../wording.ts';

/** Minutes after which a caller may be called back; sooner where help goes for the sake of a danger. */
const [callBacks, urgentCallBacks] = [
  [15, 30, 60],
  [5, 15],
] as const;

/** What nobody can be sent without. */
const needed: readonly CallerField[] = ['where', 'callback'];

/** What a kind of help has to know besides. */
const neededBy: Readonly<Record<string, readonly CallerField[]>> = {
  flatbed: ['rolls', 'access', 'trailer', 'people'],
};

/** Draws what to send. */
export function sendCard(shown: Shown, inHand: InHand, help: string): TemplateResult {
  const { words, texts, act, locale, hand, flow } = shown;
  const { verdict } = inHand.kase.sitting.case.state;
  const { name } = helpWords(texts, help);
  return html`${sentence(words.toSend, name ?? words.nobody)}
    <p class="sure">${sureness(shown, inHand, help)}</p>
    ${help === 'nothing' ? nothing : lacking(shown, inHand, help)}
    ${numbered([
      ...(isForFault(flow, help) ? callBacks : urgentCallBacks).map((minutes) => ({
        label: fill(hand.sending === minutes ? words.sendAnyway : words.sendIn, {
          time: duration(minutes, locale),
        }),
        isMain: hand.sending === minutes,
        press: () => {
          const isKnown = help === 'nothing' || unknownOf(inHand, needed).length === 0;
          if (isKnown || hand.sending === minutes) act.send(help, minutes);
          else act.hand({ sending: minutes });
        },
      })),
      {
        label: words.otherHelp,
        press: () => {
          act.hand({ open: 'help' });
        },
      },
      ...(verdict === null && positionOf(inHand.kase.sitting.case).awaiting !== 'nothing'
        ? [
            {
              label: words.askOn,
              press: () => {
                act.hand({ goesOn: true });
              },
            },
          ]
        : []),
    ])}
    ${briefing(shown, inHand, help)}`;
}

/** What is passed on, and what the caller is told: that help comes, what can hurt, what to do till then. */
function briefing(shown: Shown, inHand: InHand, help: string): TemplateResult {
  const { words, texts, flow } = shown;
  const { verdict, context } = inHand.kase.sitting.case.state;
  const { kit } = context;
  const isVerdict = verdict?.send === help;
  const warned = isVerdict ? cautionsFor(shown, inHand, verdict) : [];
  const cautions = isVerdict ? warned : spotCautions(shown, inHand);
  const isSaid = !isVerdict || stopBehind(shown, inHand, help) === undefined;
  const lines = isVerdict ? callerLines(shown, verdict, { warned, kit }) : untilHelp(shown, inHand);
  const isSent = help !== 'nothing' && !(isVerdict && verdict.waits);
  const { tellStay } = words;
  // In danger, getting out of it comes first.
  const isCalm = isForFault(flow, help) && !isUnsafe(inHand.kase.sitting.case);
  return html`<div class="briefing">
    <div>
      ${noteView(shown, inHand, help)}
      ${
        asksCaller(help) || help === 'nothing'
          ? html`<section>
              <h3>${words.bring}</h3>
              <p>${helpWords(texts, help).rest}</p>
            </section>`
          : nothing
      }
    </div>
    <section class="told">
      <h3>${words.tellCaller}</h3>
      ${
        isSent && isCalm
          ? html`<ul>
              <li>${tellStay}</li>
            </ul>`
          : nothing
      }
      ${isSaid ? callerCautions(shown, cautions) : nothing}
      <ul>
        ${lines.map((line) => html`<li>${line}</li>`)}
        ${isSent && !isCalm ? html`<li>${tellStay}</li>` : nothing}
      </ul>
    </section>
  </div>`;
}

/** What is not written down yet of some fields. */
function unknownOf({ caller }: InHand, fields: readonly CallerField[]): readonly CallerField[] {
  return fields.filter((field) => !caller[field]?.trim());
}

/** What is to be known before help goes, where it is not written down yet. */
function lacking({ words }: Shown, inHand: InHand, help: string): TemplateResult | typeof nothing {
  const unknown = unknownOf(inHand, [...needed, ...(neededBy[help] ?? [])]);
  if (unknown.length === 0) return nothing;
  const named = unknown.map((field) => words[field]).join(' · ');
  return html`<p class="lacking">
    ${words.lacking} ${named}. <kbd class="at" aria-hidden="true">${keyOf.caller}</kbd>
  </p>`;
}

function sureness(shown: Shown, inHand: InHand, help: string): string {
  const { speaker, words, flow, texts } = shown;
  const { verdict, leaders } = inHand.kase.sitting.case.state;
  const stop = stopBehind(shown, inHand, help);
  if (stop !== undefined) return texts.stops[stop] ?? '';
  if (verdict?.send === help) {
    const [rendered] = speaker.render([verdict]);
    return rendered?.kind === 'verdict' ? `${rendered.title}. ${rendered.strength}` : '';
  }
  if (!isForFault(flow, help)) return words.sureOwn;
  const ranking = verdict?.ranking ?? leaders;
  if (ranking.length === 0) return words.sureGuessNone;
  const share = helpShares(flow, [help], ranking)[0]?.[1] ?? 0;
  return fill(words.sureGuess, { share: speaker.formatPercent(share) });
}

/** The hard stop for whose sake this help goes, whatever the fault is. */
function stopBehind({ flow }: Shown, { kase }: InHand, help: string): string | undefined {
  const inForce = kase.sitting.case.state.verdict?.stops ?? [];
  return flow.stops.find(({ id, instead }) => inForce.includes(id) && instead?.send === help)?.id;
}

/** Where all is left to help, only what holds wherever the caller waits. */
function cautionsFor(
  { flow }: Shown,
  { laid, kase }: InHand,
  verdict: VerdictMessage,
): readonly CautionMessage[] {
  const { cautions } = laid.strip;
  if (!isLeftToHelp(flow, verdict, kase.sitting.case.state.context['kit'])) return cautions;
  return cautions.filter(({ caution }) =>
    flow.cautions[caution]?.before.some((cover) => Object.keys(cover).length === 0),
  );
}

/** Before what the caller may do, what can hurt. */
function callerCautions({ flow, speaker }: Shown, said: readonly CautionMessage[]): TemplateResult {
  return html`<div class="signs small">
    ${speaker
      .render(said)
      .map((one) =>
        one.kind === 'caution'
          ? sign(flow.cautions[one.caution]?.word ?? 'danger', one.word, one.text)
          : nothing,
      )}
  </div>`;
}

/** What can hurt where nothing was found yet: traffic that passes close by. */
function spotCautions({ flow }: Shown, { kase }: InHand): readonly CautionMessage[] {
  const caution = flow.cautions['traffic'];
  if (caution === undefined || !isByTraffic(kase.sitting.case)) return [];
  const { id, word, confirm } = caution;
  return [{ kind: 'caution', caution: id, word, confirm }];
}

/** What a caller does until help is there who said that somebody is not safe. */
function untilHelp({ texts }: Shown, { kase }: InHand): readonly string[] {
  const steps = isUnsafe(kase.sitting.case) ? (texts.checks['scene']?.how ?? []) : [];
  return steps.map((step) => (typeof step === 'string' ? step : step.else));
}

/** The technician's note, to be copied and printed. */
function noteView(shown: Shown, inHand: InHand, help: string): TemplateResult {
  const { words, act, speaker, texts } = shown;
  const { kase, caller } = inHand;
  const lines = technicianSlip({
    case: kase.sitting.case,
    help,
    caller,
    speaker,
    texts,
    flow: shown.flow,
    words,
  });
  return html`<section class="note">
    <h3>${words.passOn}</h3>
    <div class="slip">
      <p class="slip-title">${helpWords(texts, help).name ?? words.nobody}</p>
      ${lines.map((line) => html`<p dir="auto">${line}</p>`)}
    </div>
    <div class="keys row">
      ${keyView({
        label: words.copy,
        at: furtherKeys[0],
        isNumber: true,
        isSmall: true,
        press: () => {
          act.copy([helpWords(texts, help).name ?? words.nobody, ...lines].join('\n'));
        },
      })}
      ${keyView({
        label: words.print,
        at: furtherKeys[1],
        isNumber: true,
        isSmall: true,
        press: () => {
          act.print();
        },
      })}
    </div>
  </section>`;
}

/** Every kind of help, the likeliest first; in danger, whoever makes the spot safe. */
export function helpCard(shown: Shown, inHand: InHand): TemplateResult {
  const { words, texts, flow, speaker, act } = shown;
  const { verdict, leaders } = inHand.kase.sitting.case.state;
  const shares = helpShares(flow, Object.keys(texts.send), verdict?.ranking ?? leaders);
  const ordered = isUnsafe(inHand.kase.sitting.case)
    ? shares.toSorted(([one], [other]) => Number(other === 'police') - Number(one === 'police'))
    : shares;
  return html`${sentence(words.toSend, words.whichHelp)}
  ${numbered(
    ordered.map(([help, share]) => ({
      label: helpWords(texts, help).name ?? words.nobody,
      more: share >= 0.005 ? [fill(words.helpRight, { share: speaker.formatPercent(share) })] : [],
      press: () => {
        act.hand({ open: null, help });
      },
    })),
  )}
  ${leaveKey(shown)}`;
}

/** Help is under way: when to call back, and what it was in the end. */
export function underWayCard(shown: Shown, inHand: InHand): TemplateResult {
  const { words, texts, act, locale, clock, hand } = shown;
  const { sent } = inHand.kase;
  const { verdict } = inHand.kase.sitting.case.state;
  if (sent === null) return html``;
  const left = (Date.parse(sent.callBackAt) - clock) / 60_000;
  const time = timeOfDay(sent.callBackAt, locale);
  return html`${sentence(
      left <= 0 ? words.callBack : words.onItsWay,
      fill(words.underWayTitle, {
        help: helpWords(texts, sent.help).name ?? words.nobody,
        time: timeOfDay(sent.at, locale),
      }),
    )}
    <p class="sure">
      ${
        left <= 0
          ? fill(words.callBackNow, { time })
          : fill(words.callBackIn, { time, left: duration(left, locale) })
      }
    </p>
    ${
      verdict === null || verdict.send === sent.help
        ? nothing
        : html`<p class="sure">
            <b>${words.toSend}: ${helpWords(texts, verdict.send).name ?? words.nobody}</b>
          </p>`
    }
    ${numbered([
      {
        label: fill(words.later, { time: duration(callBacks[0], locale) }),
        press: () => {
          act.later(callBacks[0]);
        },
      },
      {
        label: words.reallyKey,
        press: () => {
          act.hand({ open: 'cause', closing: false });
        },
      },
      {
        label: hand.closing ? words.closeSure : words.closeUnknown,
        press: () => {
          if (hand.closing) act.close(undefined);
          else act.hand({ closing: true });
        },
      },
      {
        label: words.otherHelp,
        press: () => {
          act.hand({ open: 'help' });
        },
      },
      ...(verdict === null && positionOf(inHand.kase.sitting.case).awaiting !== 'nothing'
        ? [
            {
              label: words.askOn,
              press: () => {
                act.hand({ goesOn: true });
              },
            },
          ]
        : []),
    ])}
    ${briefing(shown, inHand, sent.help)}`;
}

/** The faults that a cause is picked from by a number; the others stand in a list. */
const numberedCauses = 8;

/** Causes with those first whose name has most of what was typed; else as they were. */
function byName(
  all: readonly string[],
  name: (id: string) => string,
  sought: string,
): readonly string[] {
  const words = sought
    .toLocaleLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
  const fits = (id: string): number =>
    words.filter((word) => name(id).toLocaleLowerCase().includes(word)).length;
  return all.toSorted((one, other) => fits(other) - fits(one));
}

/** What it turned out to be. */
export function causeCard(shown: Shown, inHand: InHand): TemplateResult {
  const { words, speaker, act, flow, hand } = shown;
  const { verdict, leaders } = inHand.kase.sitting.case.state;
  const likely = (verdict?.ranking ?? leaders).map(([id]) => id);
  const name = speaker.faultName;
  const all = byName([...new Set([...likely, ...Object.keys(flow.faults)])], name, hand.sought);
  const counted = (event: Event): void => {
    event.preventDefault();
    const chosen = new FormData(event.currentTarget as HTMLFormElement).get('cause');
    if (typeof chosen === 'string' && chosen !== '') act.close(chosen);
  };
  return html`${sentence(words.reallyKey, words.reallyAsk)}
    <p class="hint">${words.reallyHint}</p>
    ${numbered(
      all.slice(0, numberedCauses).map((id) => ({
        label: name(id),
        press: () => {
          act.close(id);
        },
      })),
    )}
    <form class="field row" @submit=${counted}>
      <label
        ><span>${words.otherCause}</span>
        <select name="cause">
          <option value="">–</option>
          ${all.slice(numberedCauses).map((id) => html`<option value=${id}>${name(id)}</option>`)}
        </select></label
      >
      <button type="submit" class="key small">${words.count}</button>
    </form>
    ${leaveKey(shown)}`;
}
