/**
 * The step in hand: its cautions first, the question, how it is found out, the answers.
 */
import { positionOf, type AnswerInput } from '@keyturn/core';
import { askAgain } from '@keyturn/element/sittings';
import { sign } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { answering } from '../../engine/engine.ts';
import { keyView, numbered } from '../../view/key.ts';
import { fill } from '../../wording.ts';
import { keyOf } from '../keys.ts';
import { figures } from './figures.ts';
import { how, sentence, type Question } from './sentence.ts';
import type { InHand, Shown } from './shown.ts';

/** The question that is to be answered now: that of the step, or one that is put right. */
export function questionOf({ hand }: Shown, { flow, speaker, laid }: InHand): Question | undefined {
  const message = hand.asking === null ? undefined : askAgain({ flow }, hand.asking);
  const said = speaker.render(message === undefined ? laid.inHand : [message]);
  return said.find((one) => one.kind === 'question');
}

/** The checks whose figures are asked for now. */
export function figuresInHand(hand: Shown['hand'], { flow, laid }: InHand): readonly string[] {
  const ask = laid.inHand.find((message) => message.kind === 'ask');
  const asked =
    hand.asking === null ? [ask?.check, ...(ask?.beside?.readings ?? [])] : [hand.asking];
  return asked.filter((check) => flow.checks[check ?? '']?.form.kind === 'reading') as string[];
}

/** True where the answer is typed into a field: while it has the focus, no key is a command. */
export function isTypedInto(shown: Shown, inHand: InHand): boolean {
  return (
    figuresInHand(shown.hand, inHand).length > 0 || questionOf(shown, inHand)?.entry === 'date'
  );
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
      return html`${cautions(inHand)}
      ${sentence(speaker.checkName(position.check), words.confirmAsk)}
      ${numbered([
        {
          label: speaker.key('confirm'),
          press: () => {
            act.take({ type: 'confirm' });
          },
        },
        {
          label: speaker.key('cannot'),
          press: () => {
            act.take({ type: 'talk', talk: 'cannot' });
          },
        },
      ])}`;
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
  const question = questionOf(shown, inHand);
  if (question === undefined) return html``;
  const together = figuresInHand(shown.hand, inHand);
  const text = together.length > 1 ? shown.words.figuresAsk : question.text;
  return html`${cautions(inHand)} ${sentence(stageOf(inHand, question.check), text)}
  ${toCompare(inHand, question.check)} ${together.length > 1 ? nothing : how(question)}
  ${answers(shown, inHand, question)}`;
}

/** What was sold, beside the question whether this is it. */
function toCompare({ back }: InHand, check: string): TemplateResult | typeof nothing {
  if (check !== 'part-number' || back.number === '') return nothing;
  const sold = [back.number, back.name].filter((text) => text !== '');
  return html`<p class="sure"><bdi>${sold.join(' · ')}</bdi></p>`;
}

/** A check asked out of its turn, to put its answer right. */
export function askingCard(shown: Shown, inHand: InHand): TemplateResult {
  const { words, act } = shown;
  const question = questionOf(shown, inHand);
  if (question === undefined) return html``;
  return html`${sentence(words.correcting, question.text)} ${how(question)}
    ${answers(shown, inHand, question)}
    <div class="keys row">
      ${keyView({
        label: words.leave,
        at: keyOf.leave,
        isSmall: true,
        press: () => {
          act.hand({ asking: null, picked: [] });
        },
      })}
    </div>`;
}

/** What the step belongs to: whose part it is, what it looks like. */
function stageOf({ flow, texts }: InHand, check: string): string {
  const stage = flow.stages.find(({ checks }) => checks.includes(check));
  return texts.stages[stage?.id ?? ''] ?? '';
}

/** The cautions of the step; what waits for its confirmation is said again after a reload. */
function cautions({ laid, speaker, flow }: InHand): TemplateResult | typeof nothing {
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
  return signs.length === 0 ? nothing : html`<div class="signs">${signs}</div>`;
}

function answers(shown: Shown, inHand: InHand, question: Question): TemplateResult {
  const { act, hand } = shown;
  const { check, entry, options } = question;
  const give = (value: AnswerInput['value']): void => {
    act.take(answering(inHand.back.sitting.case, check, value));
  };
  const asFigures = figuresInHand(shown.hand, inHand);
  if (asFigures.length > 0) return figures(shown, inHand, asFigures);
  if (entry === 'date') return dayField(shown, inHand, check);
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
    </div>
    ${hand.asking === null ? usualAtOnce(shown, inHand) : nothing}`;
}

/** All that is seen in one go, as it is where nothing is out of the ordinary. */
function usualAtOnce(
  { words, act }: Shown,
  { laid, speaker }: InHand,
): TemplateResult | typeof nothing {
  const ask = laid.inHand.find((message) => message.kind === 'ask');
  const usual = Object.entries(ask?.beside?.usual ?? {});
  if (usual.length < 2) return nothing;
  return html`<section class="usual" aria-label=${words.usualAsk}>
    <h3>${words.usualAsk}</h3>
    <dl>
      ${usual.map(
        ([check, answer]) =>
          html`<div>
            <dt>${speaker.checkName(check)}</dt>
            <dd>${speaker.answerLabel(check, answer)}</dd>
          </div>`,
      )}
    </dl>
    ${keyView({
      label: words.usualTake,
      at: keyOf.take,
      isMain: true,
      press: () => {
        const answers = usual.map(([check, answer]) => ({ check, value: [answer] }));
        act.take({ type: 'answers', answers });
      },
    })}
  </section>`;
}

function several(
  { hand, act, words }: Shown,
  { options }: Question,
  give: (value: readonly string[]) => void,
): TemplateResult {
  const { picked } = hand;
  return html`<div class="keys">
    ${options
      .filter(({ id }) => id !== 'none')
      .map(({ id, key, label }) =>
        keyView({
          label,
          at: key,
          isNumber: key.length === 1,
          isPicked: picked.includes(id),
          press: () => {
            act.hand({
              picked: picked.includes(id) ? picked.filter((one) => one !== id) : [...picked, id],
            });
          },
        }),
      )}
    ${keyView({
      label: picked.length === 0 ? words.takeNone : words.takePicked,
      at: keyOf.take,
      isMain: true,
      press: () => {
        give(picked.length === 0 ? ['none'] : picked);
      },
    })}
  </div>`;
}

/** A day: typed as ISO 8601 has it, or as the language writes it. */
function dayField(
  { words, act, today }: Shown,
  { back, speaker }: InHand,
  check: string,
): TemplateResult {
  return html`${keyed(
    back.id,
    html`<form
      class="day-entry"
      @submit=${(event: Event) => {
        event.preventDefault();
        const { value } = (event.currentTarget as HTMLFormElement).elements.namedItem(
          'day',
        ) as HTMLInputElement;
        if (value.trim() === '') act.notice(fill(words.dayNeeded, { day: today }));
        else act.day(check, value);
      }}
    >
      <input
        name="day"
        type="text"
        inputmode="numeric"
        autocomplete="off"
        maxlength="40"
        aria-label=${speaker.checkName(check)}
      />
      <button type="submit" class="key take">
        <kbd class="at" aria-hidden="true">${keyOf.take}</kbd>
        <span class="label">${words.takeDay}</span>
      </button>
    </form>`,
  )}`;
}

/** What has happened: every danger that the flow knows. */
export function dangerCard({ words, act }: Shown, { flow, texts }: InHand): TemplateResult {
  return html`${sentence(words.danger, words.dangerAsk)}
  ${numbered(
    Object.keys(flow.interrupts).map((interrupt) => ({
      label: texts.interrupts[interrupt]?.name ?? interrupt,
      press: () => {
        act.take({ type: 'interrupt', interrupt });
      },
    })),
  )}`;
}
