/**
 * The step in hand: its cautions first, the question, the answers, and what is asked next with it.
 */
import { positionOf, type AnswerInput } from '@keyturn/core';
import { readingRange } from '@keyturn/electrics';
import { askAgain } from '@keyturn/element/sittings';
import { finding, sign } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyView, leaveKey, numbered } from '../../view/key.ts';
import { fill } from '../../wording.ts';
import { keyOf } from '../keys.ts';
import { proofCheck } from '../vehicle/case-taken.ts';
import { readingsAsked } from './by-hand-card.ts';
import { coming } from './coming.ts';
import { dayField } from './day-field.ts';
import { figures } from './figures.ts';
import { isPriceAsked, isPriceLacking } from './price-field.ts';
import { isReceiptAsked, proofField } from './proof-field.ts';
import { how, howLines, sentence, type Question } from './sentence.ts';
import type { InHand, Shown } from './shown.ts';
import { cautionsOf, signs } from './signs.ts';
import { isStoodAsked, isWarmth, stood, stoodWords } from './stood.ts';
import { taken } from './taken.ts';
import { usualList, usualOf } from './usual-list.ts';

/** The question that is to be answered now: that of the step, or one that is put right. */
export function questionOf({ hand }: Shown, { flow, speaker, laid }: InHand): Question | undefined {
  const message = hand.asking === null ? undefined : askAgain({ flow }, hand.asking);
  const said = speaker.render(message === undefined ? laid.inHand : [message]);
  return said.find((one) => one.kind === 'question');
}

/** The checks whose figures are asked for now; a temperature last, since many a shop has none to give. */
export function figuresInHand(hand: Shown['hand'], inHand: InHand): readonly string[] {
  const { flow, laid } = inHand;
  if (hand.byHand) return hand.offered === null ? readingsAsked(inHand) : [];
  const ask = laid.inHand.find((message) => message.kind === 'ask');
  const asked =
    hand.asking === null ? [ask?.check, ...(ask?.beside?.readings ?? [])] : [hand.asking];
  return asked
    .filter((check) => check !== undefined)
    .filter((check) => flow.checks[check]?.form.kind === 'reading')
    .filter((check) => !isStoodAsked(inHand, check))
    .toSorted((one, other) => Number(isWarmth(inHand, one)) - Number(isWarmth(inHand, other)));
}

/** True where a figure may be below zero: it begins with a minus. */
export function mayBeBelowZero({ flow, vehicle }: InHand, check: string): boolean {
  const { form } = flow.checks[check] ?? vehicle.flow.checks[check] ?? {};
  return form?.kind === 'reading' && readingRange(form.range, 12).low < 0;
}

/** True where the answer is typed into a field: while it has the focus, no figure is a command. */
export function isTypedInto(shown: Shown, inHand: InHand): boolean {
  const question = questionOf(shown, inHand);
  return (
    isReceiptAsked(shown, inHand, question) ||
    figuresInHand(shown.hand, inHand).length > 0 ||
    isDay(inHand, question)
  );
}

/** True where a day is asked for; without terms it is asked in words. */
export function isDayAsked(shown: Shown, inHand: InHand): boolean {
  return isDay(inHand, questionOf(shown, inHand));
}

/** True where the price that was paid is asked for in the card: with the receipt, or for an amount. */
export function isPriceInCard(shown: Shown, inHand: InHand): boolean {
  const { hand } = shown;
  const isCovered = [hand.open, hand.told, hand.offered].some((one) => one !== null);
  if (isCovered || !isPriceAsked(shown, inHand)) return false;
  if (isReceiptAsked(shown, inHand, questionOf(shown, inHand))) return true;
  const { awaiting } = positionOf(inHand.back.sitting.case);
  return hand.asking === null && awaiting === 'nothing' && isPriceLacking(shown, inHand);
}

function isDay({ flow, back }: InHand, question: Question | undefined): boolean {
  if (question === undefined || back.sitting.case.state.policy === null) return false;
  return flow.checks[question.check]?.form.kind === 'date';
}

/** What can be told of how it is done, where it is folded away. */
export function foldedHow(shown: Shown, inHand: InHand): boolean {
  if (shown.hasHow) return false;
  if (shown.hand.byHand) return shown.hand.offered === null;
  const usual = usualOf(shown, inHand).map(([check]) => check);
  const checks = [...usual, ...figuresInHand(shown.hand, inHand)];
  const asked = checks.length > 0 ? checks : [questionOf(shown, inHand)?.check ?? ''];
  return asked.some((check) => howLines(inHand, check).length > 0 && !isAlwaysTold(inHand, check));
}

/** What can hurt is never done without being told how; a caution that stands above it is enough. */
function isAlwaysTold(inHand: InHand, check: string): boolean {
  const does = inHand.flow.checks[check]?.does ?? [];
  return does.length > 0 && cautionsOf(inHand).length === 0;
}

/** Draws the step. */
export function stepCard(shown: Shown, inHand: InHand): TemplateResult {
  const { words, act } = shown;
  const { speaker, laid, back, flow } = inHand;
  const position = positionOf(back.sitting.case);
  switch (position.awaiting) {
    case 'answer':
      return asked(shown, inHand);
    case 'confirm':
      return html`${taken(shown, inHand)} ${signs(inHand)} ${sentence('', words.confirmAsk)}
      ${numbered([
        {
          label: words.yes,
          press: () => {
            act.take({ type: 'confirm' });
          },
        },
      ])}
      ${coming(shown, inHand)}`;
    case 'wait': {
      const text = speaker.render(laid.inHand).find((one) => one.kind === 'text')?.text ?? '';
      return html`${sentence(speaker.checkName(position.check), text)}
      ${numbered([
        {
          label: speaker.key('done'),
          press: () => {
            act.take({ type: 'waited' });
          },
        },
      ])}`;
    }
    case 'resume': {
      const said = speaker.render(laid.inHand);
      const caution = said.find((one) => one.kind === 'caution');
      const word = flow.interrupts[position.interrupt]?.word ?? 'danger';
      const after = said.find((one) => one.kind === 'text')?.text ?? '';
      return html`${caution === undefined ? nothing : sign(word, caution.word, caution.text)}
      ${sentence(words.danger, after)}
      ${numbered([
        {
          label: speaker.key('over'),
          press: () => {
            act.take({ type: 'resume' });
          },
        },
      ])}`;
    }
    case 'nothing':
      return html``;
  }
}

function asked(shown: Shown, inHand: InHand): TemplateResult {
  const { words } = shown;
  const question = questionOf(shown, inHand);
  if (question === undefined) return html``;
  const usual = usualOf(shown, inHand);
  if (usual.length > 0) {
    return html`${taken(shown, inHand)} ${signs(inHand)} ${sentence('', words.usualAsk)}
    ${usualList(shown, inHand, usual)} ${coming(shown, inHand)}`;
  }
  const isTogether = figuresInHand(shown.hand, inHand).length > 1;
  return html`${taken(shown, inHand)} ${signs(inHand)}
  ${sentence('', isTogether ? words.figuresAsk : wording(shown, inHand, question))}
  ${toCompare(inHand, question.check)} ${label(shown, inHand, question.check)}
  ${isTogether ? nothing : howOf(shown, inHand, question)} ${answers(shown, inHand, question)}
  ${coming(shown, inHand)}`;
}

function wording(shown: Shown, inHand: InHand, { check, text }: Question): string {
  return isStoodAsked(inHand, check) ? stoodWords(shown, inHand) : text;
}

/** How it is found out, where it is unfolded or told in any case. */
function howOf(
  { hasHow }: Shown,
  inHand: InHand,
  question: Question,
): TemplateResult | typeof nothing {
  const isTold = hasHow || isAlwaysTold(inHand, question.check);
  return isTold ? how(question.how) : nothing;
}

/** What was sold, beside the question whether this is it. */
function toCompare({ back }: InHand, check: string): TemplateResult | typeof nothing {
  if (check !== 'part-number' || back.number === '') return nothing;
  const sold = [back.number, back.name].filter((text) => text !== '');
  return html`<p class="sure"><bdi>${sold.join(' · ')}</bdi></p>`;
}

/** What the label of a battery says where a tester is set by it, and the load that follows. */
function label(
  { words }: Shown,
  { back, flow, speaker }: InHand,
  check: string,
): TemplateResult | typeof nothing {
  const { context } = back.sitting.case.state;
  const [rating, standard] = [context['part.battery.rating'], context['part.battery.standard']];
  const needs = flow.checks[check]?.needs.flat() ?? [];
  const isLoaded = needs.includes('load-tester');
  const isSet = isLoaded || needs.includes('electronic-tester');
  const only = isLoaded ? html`<p class="hint">${words.loadOtherwise}</p>` : nothing;
  if (!isSet || typeof rating !== 'number' || typeof standard !== 'string') return only;
  const amperes = (value: number): string => speaker.formatQuantity({ value, unit: 'A' });
  const named = `${amperes(rating)} ${speaker.answerLabel('label-standard', standard)}`;
  const isHalved = isLoaded && halved.includes(standard);
  return html`<p class="sure">
      ${fill(words.labelSays, { label: named })}
      ${isHalved ? fill(words.labelHalf, { half: amperes(rating / 2) }) : nothing}
    </p>
    ${only}`;
}

/** The standards of whose amperes half is the load of a load test. */
const halved = ['sae', 'en'];

/** A check asked out of its turn: one line of a list, or to put its answer right. */
export function askingCard(shown: Shown, inHand: InHand): TemplateResult {
  const { words } = shown;
  const { laid, speaker, back } = inHand;
  const question = questionOf(shown, inHand);
  if (question === undefined) return html``;
  const { check } = question;
  const isAnswered = back.sitting.case.state.answers[check] !== undefined;
  const until = laid.strip.findings.find((line) => line.check === check);
  return html`${signs(inHand)}
  ${sentence(isAnswered ? words.correcting : '', wording(shown, inHand, question))}
  ${until === undefined ? nothing : html`<div class="until">${words.untilNow} ${finding(until, speaker)}</div>`}
  ${howOf(shown, inHand, question)} ${answers(shown, inHand, question)} ${leaveKey(shown)}`;
}

function answers(shown: Shown, inHand: InHand, question: Question): TemplateResult {
  const { act, hand } = shown;
  const { check, entry, options } = question;
  const give = (value: AnswerInput['value']): void => {
    act.answer(check, value);
  };
  const asFigures = figuresInHand(hand, inHand);
  if (asFigures.length > 0) return figures(shown, inHand, { checks: asFigures });
  if (isStoodAsked(inHand, check)) return stood(shown, inHand, check);
  if (isDay(inHand, question)) return dayField(shown, inHand, check);
  if (isReceiptAsked(shown, inHand, question)) return proofField(shown, inHand, question);
  const { form } = inHand.flow.checks[check] ?? {};
  if (form?.kind === 'date') {
    return numbered(
      form.bands.map(({ id }) => ({
        label: inHand.speaker.answerLabel(check, id),
        press: () => {
          give([id]);
        },
      })),
    );
  }
  if (entry === 'choices') return several(shown, question, give);
  return html`<div class="keys">
    ${options.map(({ id, key, label }) =>
      keyView({
        label,
        at: key,
        isNumber: key.length === 1,
        press: () => {
          give([id]);
        },
      }),
    )}
    ${check === proofCheck ? byHandKey(shown, inHand, options.length + 1) : nothing}
  </div>`;
}

/** Who measured on the vehicle and has no case of it types the readings. */
function byHandKey(
  { words, act }: Shown,
  inHand: InHand,
  number: number,
): TemplateResult | typeof nothing {
  if (readingsAsked(inHand).length === 0) return nothing;
  return keyView({
    label: words.byHand,
    at: String(number),
    isNumber: true,
    press: () => {
      act.hand({ byHand: true });
    },
  });
}

function several(
  { hand, act, words }: Shown,
  { options }: Question,
  give: (value: readonly string[]) => void,
): TemplateResult {
  const { picked } = hand;
  return html`<div class="keys">
      ${options.map(({ id, key, label }) =>
        keyView({
          label,
          at: key,
          isNumber: key.length === 1,
          isPicked: picked.includes(id),
          press: () => {
            act.hand({ picked: pickedWith(picked, id) });
          },
        }),
      )}
    </div>
    <div class="keys row">
      ${keyView({
        label: words.takePicked,
        at: keyOf.take,
        isMain: true,
        press: () => {
          if (picked.length === 0) act.notice(words.pickNeeded);
          else give(picked);
        },
      })}
    </div>`;
}

/** Nothing goes with “none of these”. */
function pickedWith(picked: readonly string[], id: string): readonly string[] {
  if (picked.includes(id)) return picked.filter((one) => one !== id);
  return id === 'none' ? [id] : [...picked.filter((one) => one !== 'none'), id];
}

/** What has happened: every danger that the flow knows. */
export function dangerCard(shown: Shown, { flow, texts }: InHand): TemplateResult {
  const { words, act } = shown;
  return html`${sentence(words.danger, words.dangerAsk)}
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
