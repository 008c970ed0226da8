/**
 * The paper of the case in hand, as a recorder prints it: who calls, what was found, what fits best.
 */
import { isReading, isSaid, type StripLine } from '@keyturn/core';
import { finding, ranking } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { callerFields, type CallerField } from '../case/desk-case.ts';
import type { InHand, Shown } from './shown.ts';
import { listed } from '../wording.ts';

/** What is known of the spot and the vehicle, and can be told before it is asked. */
const spotChecks = [
  'place',
  'scene',
  'drive',
  'transmission',
  'ignition',
  'air-temperature',
  'kit',
] as const;

/** Prints the paper. */
export function paper(shown: Shown, inHand: InHand): TemplateResult {
  const { words } = shown;
  return html`<section class="paper" aria-label=${words.paper}>
    ${whoCalls(shown, inHand)} ${fits(shown, inHand)} ${found(shown, inHand)} ${spot(shown, inHand)}
    ${towing(shown, inHand)}
  </section>`;
}

/** What only a tow asks for lies at the end, so that what was found is seen beside who calls. */
const forTowing: readonly CallerField[] = ['people', 'rolls', 'access', 'trailer'];

/** The label on the roll: who calls. */
function whoCalls(shown: Shown, inHand: InHand): unknown {
  const { words } = shown;
  const fields = callerFields.filter((name) => !forTowing.includes(name));
  const heading = html`<h3>${words.who} <kbd class="at" aria-hidden="true">F2</kbd></h3>`;
  return callerForm(shown, inHand, { label: words.who, heading, fields, hint: words.whoHint });
}

/** What whoever tows has to know. */
function towing(shown: Shown, inHand: InHand): unknown {
  const { words } = shown;
  const heading = html`<h3>${words.towing}</h3>`;
  return callerForm(shown, inHand, { label: words.towing, heading, fields: forTowing });
}

/** Fields of the person. Another case has fields of its own, so that nothing typed stays. */
function callerForm(
  { words, act }: Shown,
  { caller, kase }: InHand,
  given: {
    readonly label: string;
    readonly heading: TemplateResult;
    readonly fields: readonly CallerField[];
    readonly hint?: string;
  },
): unknown {
  const field = (name: CallerField): TemplateResult =>
    html`<label class="field ${name}">
      <span>${words[name]}</span>
      <input
        name=${name}
        dir="auto"
        maxlength="200"
        autocomplete="off"
        .value=${caller[name] ?? ''}
        @input=${(event: Event) => {
          act.tell(name, (event.currentTarget as HTMLInputElement).value);
        }}
      />
    </label>`;
  return keyed(
    kase.id,
    html`<form
      class="caller"
      aria-label=${given.label}
      @submit=${(event: Event) => {
        event.preventDefault();
        act.command('leave');
      }}
    >
      ${given.heading}
      <div class="fields">${given.fields.map(field)}</div>
      ${given.hint === undefined ? nothing : html`<p class="hint">${given.hint}</p>`}
      <button type="submit" hidden></button>
    </form>`,
  );
}

/** The spot and the vehicle: what is known, and what can be told before it is asked. */
function spot(shown: Shown, { kase }: InHand): TemplateResult {
  const { words, speaker, act, flow } = shown;
  const { answers, context } = kase.sitting.case.state;
  const told = (check: string): string => {
    const answer = answers[check]?.at(-1);
    if (answer === undefined) return words.notAsked;
    if (answer === 'cannot') return words.keyCannot;
    if (!isSaid(answer)) return words.notKnown;
    if (isReading(answer)) return speaker.formatQuantity(answer);
    return listed(
      answer.map((one) => speaker.answerLabel(check, one)),
      shown.locale,
    );
  };
  const isThere = (check: string): boolean =>
    flow.checks[check] !== undefined &&
    (answers[check] !== undefined || context[check] === undefined);
  return html`<section class="spot" aria-label=${words.spot}>
    <h3>${words.spot}</h3>
    <ul>
      ${spotChecks.filter(isThere).map(
        (check) =>
          html`<li>
            <button
              type="button"
              class="fact"
              @click=${() => {
                act.ask(check);
              }}
            >
              <span class="what">${speaker.checkName(check)}</span>
              <span class=${answers[check] === undefined ? 'value none' : 'value'}
                >${told(check)}</span
              >
            </button>
          </li>`,
      )}
    </ul>
  </section>`;
}

function found(shown: Shown, { laid }: InHand): TemplateResult | typeof nothing {
  const { words } = shown;
  const lines = linesOf(laid.strip).filter(({ check }) => !isSpot(check));
  if (lines.length === 0) return nothing;
  return html`<section class="found" aria-label=${words.found}>
    <h3>${words.found}</h3>
    <ol class="lines">
      ${lines.map((line, index) => printed(shown, line, index + 1))}
    </ol>
  </section>`;
}

function isSpot(check: string): boolean {
  return (spotChecks as readonly string[]).includes(check);
}

/** Every line that can be put right, the latest last. */
function linesOf({ findings, proving }: InHand['laid']['strip']): readonly StripLine[] {
  return [...findings, ...proving];
}

function printed(
  { hand, words, speaker, act }: Shown,
  line: StripLine,
  number: number,
): TemplateResult {
  return html`<li class=${hand.asking === line.check ? 'line correcting' : 'line'}>
    <span class="number" aria-hidden="true">${String(number).padStart(2, '0')}</span>
    <div class="finding">${finding(line, speaker)}</div>
    <button
      type="button"
      class="fix"
      aria-label=${`${words.correct}: ${speaker.checkName(line.check)}`}
      title=${words.correct}
      @click=${() => {
        act.ask(line.check);
      }}
    >
      <span aria-hidden="true">✎</span>
    </button>
  </li>`;
}

/** The faults that fit best, as bars with where they stood before. */
function fits({ words, speaker }: Shown, { laid }: InHand): TemplateResult | typeof nothing {
  const { sitting } = laid;
  const [rendered] = sitting.ranking === null ? [] : speaker.render([sitting.ranking]);
  if (rendered?.kind !== 'ranking' || rendered.faults.length === 0) return nothing;
  return html`<section class="fits-best" aria-label=${words.fits}>
    <h3>${words.fits}</h3>
    ${ranking(rendered.faults, speaker)}
    <p class="hint">${words.barKey}</p>
  </section>`;
}
