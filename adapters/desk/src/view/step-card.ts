/**
 * The step in hand: its cautions first, the sentence to say, the answers.
 */
import { positionOf, type AnswerInput } from '@keyturn/core';
import {
  askAgain,
  offerInput,
  offerLetter,
  pickedBefore,
  type Sitting,
} from '@keyturn/element/sittings';
import { finding, mayBeNegative, sections, sign, waitClock } from '@keyturn/element/pieces';
import type { Rendered } from '@keyturn/language';
import { html, nothing, type TemplateResult } from 'lit-html';
import { helpWords } from '../case/help.ts';
import { answering } from '../engine/engine.ts';
import { furtherKeys, keyOf, type Pressing } from '../keys.ts';
import { cardOf } from './card.ts';
import { keyView, leaveKey, numbered, type KeyLook } from './key.ts';
import type { InHand, Shown } from './shown.ts';
import { fill } from '../wording.ts';

type Question = Extract<Rendered, { kind: 'question' }>;

/** The question that is to be answered now: that of the step, or one asked out of its turn. */
export function questionOf({ hand, flow, speaker, inHand }: Shown): Question | undefined {
  if (inHand === undefined) return undefined;
  const message = hand.asking === null ? undefined : askAgain({ flow }, hand.asking);
  const said = speaker.render(message === undefined ? inHand.laid.inHand : [message]);
  return said.find((one) => one.kind === 'question');
}

/** What the card takes now. */
export function pressingOf(shown: Shown): Pressing {
  const { inHand, hand, screen, flow } = shown;
  if (inHand === undefined || screen !== 'desk') return { entry: 'nothing' };
  const isAsked = ['step', 'asking'].includes(cardOf(hand, inHand.kase));
  const question = isAsked ? questionOf(shown) : undefined;
  const isOffered = offersOf(shown).length === 1;
  if (question?.entry === 'reading' && question.options.length === 0) {
    const form = flow.checks[question.check]?.form;
    return {
      entry: 'figure',
      isOffered,
      isSigned: form?.kind === 'reading' && mayBeNegative(form),
    };
  }
  return { entry: question?.entry === 'choices' ? 'several' : 'one', isOffered };
}

/** Answers that the last line may have meant. What was said to one question is not said beside another. */
function offersOf({ hand, inHand }: Shown): Sitting['offers'] {
  const isCovered = hand.asking !== null || hand.open !== null;
  return isCovered || inHand === undefined ? [] : inHand.kase.sitting.offers;
}

/** The key by which an offer is taken: Enter where there is one alone, else its letter in the line. */
function keyOfOffer(shown: Shown, index: number): string {
  const isAlone = offersOf(shown).length === 1 && pressingOf(shown).entry !== 'several';
  return isAlone ? keyOf.take : `${offerLetter(index)} ${keyOf.take}`;
}

/** Draws the step. */
export function stepCard(shown: Shown, inHand: InHand): TemplateResult {
  const position = positionOf(inHand.kase.sitting.case);
  switch (position.awaiting) {
    case 'answer':
      return asked(shown, inHand);
    case 'confirm':
      return html`${cautions(shown, inHand)} ${sentence(shown.words.ask, shown.words.confirmAsk)}
      ${numbered([
        {
          label: shown.speaker.key('confirm'),
          press: () => {
            shown.act.take({ type: 'confirm' });
          },
        },
        {
          label: shown.speaker.key('cannot'),
          press: () => {
            shown.act.take({ type: 'talk', talk: 'cannot' });
          },
        },
      ])}`;
    case 'wait':
      return waiting(shown, inHand, position.check);
    case 'resume':
      return interrupted(shown, inHand, position.interrupt);
    case 'nothing': {
      const text = shown.speaker
        .render(inHand.laid.inHand)
        .find((one) => one.kind === 'done')?.text;
      return sentence(shown.words.toSend, text ?? '');
    }
  }
}

/** The large sentence under what is to be done with it. */
export function sentence(tag: string, text: string): TemplateResult {
  return html`<p class="tag">${tag}</p>
    <h2 id="asked" class="sentence" tabindex="-1">${text}</h2>`;
}

function asked(shown: Shown, inHand: InHand): TemplateResult {
  const question = questionOf(shown);
  if (question === undefined) return sentence(shown.words.say, '');
  const signs = cautions(shown, inHand);
  return html`${signs}
  ${sentence(signs === nothing ? shown.words.say : shown.words.ask, question.text)}
  ${otherWords(shown, question)} ${answers(shown, inHand, question)}`;
}

/** A check asked out of its turn, to put it right or to tell it early. */
export function askingCard(shown: Shown, inHand: InHand, check: string): TemplateResult {
  const { words } = shown;
  const question = questionOf(shown);
  const isAnswered = inHand.kase.sitting.case.state.answers[check] !== undefined;
  const { findings, proving } = inHand.laid.strip;
  const line = [...findings, ...proving].find((one) => one.check === check);
  return html`${sentence(isAnswered ? words.correcting : words.askedOut, question?.text ?? '')}
  ${
    line?.message.kind === 'reading'
      ? html`<div class="read-before">${finding(line, shown.speaker)}</div>`
      : nothing
  }
  ${question === undefined ? nothing : answers(shown, inHand, question)} ${leaveKey(shown)}`;
}

/**
 * The cautions of the step. Nothing is confirmed unsaid: where a case comes from elsewhere, what
 * waits for its confirmation is said again.
 */
function cautions(shown: Shown, { laid }: InHand): TemplateResult | typeof nothing {
  const { speaker, flow, words } = shown;
  const said = speaker.render(laid.sitting.cautions);
  const known = new Set(laid.sitting.cautions.map(({ caution }) => caution));
  const lacking = speaker
    .render(laid.inHand)
    .filter((one) => one.kind === 'caution' && !known.has(one.caution));
  const signs = [...lacking, ...said].flatMap((one) =>
    one.kind === 'caution'
      ? [sign(flow.cautions[one.caution]?.word ?? 'danger', one.word, one.text)]
      : [],
  );
  if (signs.length === 0) return nothing;
  return html`<p class="tag">${words.sayFirst}</p>
    <div class="signs">${signs}</div>`;
}

/** How it is done, for a caller who does not understand at once. */
function otherWords(
  { hasMoreWords, words }: Shown,
  { how }: Question,
): TemplateResult | typeof nothing {
  if (!hasMoreWords || how.length === 0) return nothing;
  return html`<div class="other-words">
    <h3>${words.more}</h3>
    ${how.map((line) => html`<p>${line}</p>`)}
  </div>`;
}

function answers(shown: Shown, inHand: InHand, question: Question): TemplateResult {
  const { act, hand, words } = shown;
  const { check, entry, options } = question;
  const give = (value: AnswerInput['value']): void => {
    act.take(answering(inHand.kase.sitting.case, check, value));
  };
  if (entry === 'reading' && options.length === 0) {
    const { unit } = question;
    return html`<p class="hint">
        ${unit === undefined ? words.figureHint : fill(words.figureHintIn, { unit })}
      </p>
      ${changesList(shown, inHand)}`;
  }
  if (entry === 'choices') {
    const { mentioned } = inHand.kase.sitting.case.state;
    // What was told of the list before it was asked is ticked already.
    const picked = hand.picked ?? mentioned?.[check] ?? [];
    const all = options.filter(({ id }) => id !== 'none');
    return html`<div class="keys">
      ${all.map(({ id, key, label }) =>
        keyView({
          label,
          ...byNumber(key),
          isPicked: picked.includes(id),
          more: moreOf(shown, inHand, { check, id }),
          press: () => {
            act.hand({
              picked: picked.includes(id) ? picked.filter((one) => one !== id) : [...picked, id],
            });
          },
        }),
      )}
      ${keyView({
        label: picked.length === 0 ? words.takeNone : words.takePicked,
        at: '↵',
        isMain: true,
        press: () => {
          give(picked.length === 0 ? ['none'] : picked);
        },
      })}
    </div>`;
  }
  const stands = hand.asking === null ? [] : pickedBefore(inHand.kase.sitting.case, check);
  return html`<div class="keys">
    ${options.map(({ id, key, label }) =>
      keyView({
        label,
        ...byNumber(key),
        ...(stands.includes(id) ? { isPicked: true } : {}),
        more: moreOf(shown, inHand, { check, id }),
        press: () => {
          give([id]);
        },
      }),
    )}
  </div>`;
}

/** The key by which an answer is picked: its number, and beyond nine one of the row above. */
function byNumber(number: string): Pick<KeyLook, 'at' | 'isNumber'> {
  const at = Number(number) > 9 ? furtherKeys[Number(number) - 10] : number;
  return at === undefined ? { at: '' } : { at, isNumber: true };
}

/** What the caller may say for an answer, and what it would change. */
function moreOf(
  shown: Shown,
  inHand: InHand,
  { check, id }: { readonly check: string; readonly id: string },
): readonly (string | TemplateResult)[] {
  const { hasMoreWords, texts, hand } = shown;
  const [said] = texts.checks[check]?.answers?.[id]?.said ?? [];
  const change = hand.asking === null ? changeOf(shown, inHand, id) : undefined;
  return [
    ...(hasMoreWords && said !== undefined ? [html`<q class="may-say">${said}</q>`] : []),
    ...(change === undefined ? [] : [change]),
  ];
}

/** The fault that an answer would bring to the front, and the help that would then be sent. */
function changeOf(
  { speaker, texts, words }: Shown,
  { why }: InHand,
  id: string,
): string | undefined {
  const leader = why?.outcomes.find(({ answer }) => answer === id)?.faults[0];
  if (why === undefined || leader === undefined || !tells(why)) return undefined;
  const [fault, share] = leader;
  return fill(words.then, {
    fault: speaker.formatShare(speaker.faultName(fault), share),
    help: helpWords(texts, why.sends[id] ?? '').name ?? words.nobody,
  });
}

/** False for a question whose answer moves no fault, as that whether everybody is safe. */
function tells(why: InHand['why']): boolean {
  const leaders = why?.outcomes.map(({ faults: [leader] }) => leader) ?? [];
  const [first] = leaders;
  return leaders.some(
    (leader) =>
      leader?.[0] !== first?.[0] || Math.abs((leader?.[1] ?? 0) - (first?.[1] ?? 0)) >= 0.005,
  );
}

/** What each band of a figure would change. */
function changesList(shown: Shown, inHand: InHand): TemplateResult | typeof nothing {
  const { why } = inHand;
  if (!tells(why) || why === undefined || shown.hand.asking !== null) return nothing;
  return html`<div class="changes">
    <h3>${shown.words.changes}</h3>
    <ul>
      ${why.outcomes.map(
        ({ answer }) =>
          html`<li>
            <b>${shown.speaker.answerLabel(why.check, answer)}</b>
            <span>${changeOf(shown, inHand, answer) ?? ''}</span>
          </li>`,
      )}
    </ul>
  </div>`;
}

function waiting(shown: Shown, inHand: InHand, check: string): TemplateResult {
  const { speaker, flow, clock, locale, act, words } = shown;
  const { state } = inHand.kase.sitting.case;
  const text = speaker.render(inHand.laid.inHand).find((one) => one.kind === 'text')?.text ?? '';
  return html`${sentence(words.say, text)}
  ${waitClock({
    due: Date.parse(state.due[check] ?? state.at),
    clock,
    minutes: flow.checks[check]?.waitMinutes ?? 0,
    label: text,
    locale,
  })}
  ${numbered([
    {
      label: speaker.key('done'),
      press: () => {
        act.take({ type: 'waited' });
      },
    },
  ])}`;
}

function interrupted(shown: Shown, inHand: InHand, id: string): TemplateResult {
  const { speaker, flow, act, words } = shown;
  const said = speaker.render(inHand.laid.inHand);
  const caution = said.find((one) => one.kind === 'caution');
  const after = said.find((one) => one.kind === 'text')?.text ?? '';
  return html`<p class="tag">${words.sayFirst}</p>
    ${
      caution === undefined
        ? nothing
        : sign(flow.interrupts[id]?.word ?? 'danger', caution.word, caution.text)
    }
    ${sentence(words.ask, after)}
    ${numbered([
      {
        label: flow.interrupts[id]?.word === 'notice' ? words.goOn : speaker.key('over'),
        press: () => {
          act.take({ type: 'resume' });
        },
      },
    ])}`;
}

/** What is happening there: every danger that the flow knows. */
export function dangerCard(shown: Shown): TemplateResult {
  const { flow, texts, words, act } = shown;
  return html`${sentence(words.say, words.dangerAsk)}
  ${numbered(
    Object.keys(flow.interrupts).map((interrupt) => ({
      label: texts.interrupts[interrupt]?.name ?? interrupt,
      press: () => {
        act.take({ type: 'interrupt', interrupt });
      },
    })),
  )}
  ${leaveKey(shown)}`;
}

/** What was said last, and answers that a line may have meant. */
export function notes(shown: Shown, inHand: InHand | undefined): TemplateResult {
  const { notices, act, hand } = shown;
  const isCovered = hand.asking !== null || hand.open !== null;
  const said = isCovered ? [] : (inHand?.said ?? []);
  const offers = offersOf(shown);
  const isEmpty = notices.length + said.length + offers.length === 0;
  return html`<div class=${isEmpty ? 'notes empty' : 'notes'} role="status">
    ${notices.map((notice) => html`<p class="refused">${notice}</p>`)}
    ${said.map((one) =>
      one.kind === 'numbers'
        ? html`<div class="numbers">${sections(one.sections)}</div>`
        : one.kind === 'caution'
          ? sign(shown.flow.interrupts[one.caution]?.word ?? 'danger', one.word, one.text)
          : 'text' in one
            ? html`<p class=${one.kind === 'refused' ? 'refused' : ''}>${one.text}</p>`
            : nothing,
    )}
    ${offers.map((offer, index) =>
      keyView({
        label: offer.label,
        at: keyOfOffer(shown, index),
        isMain: keyOfOffer(shown, index) === keyOf.take,
        isSmall: true,
        press: () => {
          if (inHand !== undefined) act.take(offerInput(inHand.kase.sitting.case, offer));
        },
      }),
    )}
  </div>`;
}
