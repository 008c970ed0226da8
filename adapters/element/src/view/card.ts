/**
 * The card below the strip: the step in hand, its cautions first, and its answer keys.
 */
import { offerInput } from '@keyturn/conversation';
import type { CautionMessage } from '@keyturn/core';
import type { Rendered } from '@keyturn/language';
import { html, nothing, type TemplateResult } from 'lit-html';
import { askAgain } from '../case/ask-again.ts';
import { isActed } from '../case/verdict-said.ts';
import { answerKeys } from './answer-keys.ts';
import { noteKey } from './drawers.ts';
import { holdKey } from './hold.ts';
import { finding, sections } from './strip-view.ts';
import { sign } from './sign.ts';
import type { Shown } from './shown.ts';
import { emergencyKey } from './emergency-key.ts';
import { waitClock } from './wait.ts';
import { picture } from './pictures.ts';
import { ranking } from './ranking.ts';

type Caution = Extract<Rendered, { kind: 'caution' }>;

/** Draws the card. */
export function card(shown: Shown): TemplateResult {
  const { hand } = shown;
  return html`<section class="card" aria-labelledby="asked">
    ${hand.correcting === null ? inHand(shown) : correction(shown, hand.correcting)}
  </section>`;
}

function inHand(shown: Shown): TemplateResult {
  const told = cautions(shown);
  return html`${notes(shown)} ${signs(told, shown)} ${step(shown, told)}`;
}

/** What was said last, and notices of the page. */
function notes(shown: Shown): TemplateResult {
  const { said, notices, speaker, sitting, act } = shown;
  const isEmpty = said.length + notices.length + sitting.offers.length === 0;
  return html`<div class=${isEmpty ? 'notes empty' : 'notes'} role="status">
    ${notices.map((notice) => html`<p class="refused">${notice}</p>`)}
    ${said.map((one) => note(one, shown))}
    ${sitting.offers.map((offer) =>
      offerKey(offer.label, () => {
        act.take(offerInput(sitting.case, offer));
      }),
    )}
    ${
      shown.mayBe24
        ? offerKey(speaker.formatQuantity({ value: 24, unit: 'V' }), () => {
            act.take({ type: 'context', set: { 'vehicle.nominal': 24 } });
          })
        : nothing
    }
  </div>`;
}

function offerKey(label: string, take: () => void): TemplateResult {
  return html`<button type="button" class="key" @click=${take}>
    <span class="label">${label}</span>
  </button>`;
}

function note(one: Rendered, { speaker, chart }: Shown): TemplateResult | typeof nothing {
  switch (one.kind) {
    case 'caution':
      return sign(chart.flow.interrupts[one.caution]?.word ?? 'danger', one.word, one.text);
    case 'text':
    case 'scale':
      return html`<p>${one.text}</p>`;
    case 'refused':
      return html`<p class="refused">${one.text}</p>`;
    case 'numbers':
      return html`<div class="numbers">${sections(one.sections)}</div>`;
    case 'ranking':
      return ranking(one.faults, speaker);
    default:
      return nothing;
  }
}

/**
 * The cautions of the step in hand. Nothing is confirmed unseen: a case that comes from elsewhere
 * has them said again.
 */
function cautions(shown: Shown): readonly Caution[] {
  const { sitting, speaker, chart, now, position } = shown;
  const said = speaker.render(sitting.cautions.filter((one) => !isInVerdict(one, shown)));
  const known = new Set(sitting.cautions.map(({ caution }) => caution));
  const lacking = now.filter(
    (one) =>
      position.awaiting === 'confirm' &&
      one.kind === 'caution' &&
      !known.has(one.caution) &&
      (known.size === 0 || chart.flow.cautions[one.caution]?.confirm === true),
  );
  return [...lacking, ...said].flatMap((one) => (one.kind === 'caution' ? [one] : []));
}

/** Signs, closer where there are several, so that the question below them is not pushed out of sight. */
function signs(cautions: readonly Caution[], { chart }: Shown): TemplateResult | typeof nothing {
  if (cautions.length === 0) return nothing;
  return html`<div class=${cautions.length > 1 ? 'signs small' : 'signs'}>
    ${cautions.map((one) =>
      sign(chart.flow.cautions[one.caution]?.word ?? 'danger', one.word, one.text),
    )}
  </div>`;
}

/** True for a caution of the verdict just above, which says it before what to do, and of no step. */
function isInVerdict({ caution }: CautionMessage, { strip, sitting, chart, now }: Shown): boolean {
  const isOfStep = now.some((one) => one.kind === 'caution' && one.caution === caution);
  const isOfVerdict = strip.cautions.some((one) => one.caution === caution);
  return isOfVerdict && (!isOfStep || isActed(chart, sitting.case));
}

/** The step in hand, by what the case waits for. */
function step(shown: Shown, told: readonly Caution[]): TemplateResult {
  const { position, now, texts, act, hand, speaker } = shown;
  switch (position.awaiting) {
    case 'confirm': {
      // Asked for are all that stand above, whether they have to be confirmed or are only told.
      const asked = { check: position.check, cautions: told.map(({ caution }) => caution) };
      const [confirm] = speaker.render([{ kind: 'confirm', ...asked }]);
      return html`${heading(confirm?.kind === 'confirm' ? confirm.text : '')}
        <div class="keys">
          ${holdKey({
            label: texts.hold,
            again: texts.holdAgain,
            lift: texts.holdLift,
            hint: texts.holdHint,
            armed: hand.armed === 'confirm',
            arm: () => {
              act.hand({ armed: 'confirm' });
            },
            done: () => {
              act.take({ type: 'confirm' });
            },
          })}
          <button
            type="button"
            class="key"
            @click=${() => {
              act.take({ type: 'talk', talk: 'cannot' });
            }}
          >
            <span class="label">${speaker.key('cannot')}</span>
          </button>
        </div>`;
    }
    case 'answer': {
      const question = now.find((one) => one.kind === 'question');
      if (question === undefined) return heading('');
      const meter = picture(shown.pictures.meter);
      return html`${heading(question.text)} ${howTo(question.how, texts.howTo)} ${meter}
      ${answerKeys(shown, question, (value) => {
        act.take({ type: 'answers', answers: [{ check: question.check, value }] });
      })}
      ${others(shown)}`;
    }
    case 'wait':
      return waiting(shown, position.check);
    case 'resume':
      return html`${interrupted(shown)}
        <div class="keys">
          <button
            type="button"
            class="key"
            @click=${() => {
              act.take({ type: 'resume' });
            }}
          >
            <span class="label">
              ${
                shown.chart.flow.interrupts[position.interrupt]?.word === 'notice'
                  ? texts.goOn
                  : speaker.key('over')
              }
            </span>
          </button>
        </div>`;
    case 'nothing':
      return html`${heading(now.find((one) => one.kind === 'done')?.text ?? '')}
        <div class="keys">
          ${noteKey(shown)}
          <button
            type="button"
            class="key"
            @click=${() => {
              act.clear();
            }}
          >
            <span class="label">${texts.begin}</span>
          </button>
        </div>`;
  }
}

function heading(text: string): TemplateResult {
  return html`<h2 id="asked" tabindex="-1">${text}</h2>`;
}

/** One step is said as it is; several can be folded away by whoever knows them. */
function howTo(steps: readonly string[], label: string): TemplateResult | typeof nothing {
  if (steps.length === 0) return nothing;
  if (steps.length === 1) return html`<p class="how">${steps[0]}</p>`;
  return html`<details class="how" open>
    <summary>${label}</summary>
    <ol>
      ${steps.map((step) => html`<li>${step}</li>`)}
    </ol>
  </details>`;
}

/** What can always be said to a question. */
function others({ speaker, act }: Shown): TemplateResult {
  const talk = (word: 'dont-know' | 'cannot' | 'why', label: string) =>
    html`<button
      type="button"
      class="key small"
      @click=${() => {
        act.take({ type: 'talk', talk: word });
      }}
    >
      <span class="label">${label}</span>
    </button>`;
  return html`<div class="others">
    ${talk('dont-know', speaker.key('dontKnow'))} ${talk('cannot', speaker.key('cannot'))}
    ${talk('why', speaker.key('why'))}
  </div>`;
}

function waiting(shown: Shown, check: string): TemplateResult {
  const { sitting, now, texts, locale, clock, speaker, act, chart } = shown;
  const due = Date.parse(sitting.case.state.due[check] ?? sitting.case.state.at);
  const text = now.find((one) => one.kind === 'text')?.text ?? '';
  const minutes = chart.flow.checks[check]?.waitMinutes ?? 0;
  return html`${heading(text)} ${waitClock({ due, clock, minutes, label: texts.timeLeft, locale })}
    <div class="keys">
      <button
        type="button"
        class="key"
        @click=${() => {
          act.take({ type: 'waited' });
        }}
      >
        <span class="label">${speaker.key('done')}</span>
      </button>
    </div>`;
}

/** What to do at once where something is wrong. */
function interrupted(shown: Shown): TemplateResult {
  const { now, position, chart } = shown;
  const caution = now.find((one) => one.kind === 'caution');
  const after = now.find((one) => one.kind === 'text')?.text ?? '';
  const interrupt =
    position.awaiting === 'resume' ? chart.flow.interrupts[position.interrupt] : undefined;
  const word = interrupt?.word ?? 'danger';
  return html`${caution === undefined ? nothing : sign(word, caution.word, caution.text)}
  ${word === 'danger' ? emergencyKey(shown) : nothing} ${heading(after)}`;
}

/** The reading that is put right, as it is printed; a choice shows its own among the answers. */
function readBefore({ strip, speaker }: Shown, check: string): TemplateResult | typeof nothing {
  const line = [...strip.findings, ...strip.proving].find((one) => one.check === check);
  return line?.message.kind === 'reading'
    ? html`<div class="read-before">${finding(line, speaker)}</div>`
    : nothing;
}

function correction(shown: Shown, check: string): TemplateResult {
  const { chart, texts, speaker, act } = shown;
  const message = askAgain(chart, check);
  const [question] = message === undefined ? [] : speaker.render([message]);
  const leave = html`<button
    type="button"
    class="key small"
    @click=${() => {
      act.hand({ correcting: null, figure: '', picked: null });
    }}
  >
    <span class="label">${texts.leave}</span>
  </button>`;
  if (question?.kind !== 'question') return html`${heading(speaker.checkName(check))}${leave}`;
  return html`<p class="tag">${texts.correcting}</p>
    ${heading(question.text)} ${readBefore(shown, check)}
    ${answerKeys(shown, question, (value) => {
      act.take({ type: 'correction', answers: [{ check, value }] });
    })}
    <div class="others">
      <button
        type="button"
        class="key small"
        @click=${() => {
          act.take({ type: 'unanswered', check, talk: 'dont-know' });
        }}
      >
        <span class="label">${speaker.key('dontKnow')}</span>
      </button>
      ${leave}
    </div>`;
}
