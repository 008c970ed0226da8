/**
 * What lies beside the step: the slip, the part, the vehicle, what was found.
 */
import { finding } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { fill } from '../../wording.ts';
import { grounds, type CounterReturn, type Diagnosis } from '../return/counter-return.ts';
import { saysWords } from '../vehicle/case-words.ts';
import { priceField } from './price-field.ts';
import { isPriceInCard } from './step-card.ts';
import type { InHand, PartField, Shown } from './shown.ts';
import { slip } from './slip.ts';

/** Draws it. */
export function ledger(shown: Shown, inHand: InHand): TemplateResult {
  return html`<section class="ledger" aria-label=${shown.words[inHand.back.part]}>
    ${slip(shown, inHand)} ${partForm(shown, inHand)} ${found(shown, inHand)}
    ${vehicle(shown, inHand)}
  </section>`;
}

/** What is known of the part. Another return has fields of its own, so that nothing typed stays. */
function partForm(shown: Shown, inHand: InHand): unknown {
  const { words, act } = shown;
  const { back } = inHand;
  const { context } = back.sitting.case.state;
  const oldUnit = context['sale.oldUnit'];
  const field = (name: PartField): TemplateResult =>
    html`<label class="field ${name}">
      <span>${words[name]}</span>
      <input
        name=${name}
        dir="auto"
        maxlength="80"
        autocomplete="off"
        .value=${back[name]}
        @input=${(event: Event) => {
          act.tell(name, (event.currentTarget as HTMLInputElement).value);
        }}
        @change=${(event: Event) => {
          if (name !== 'name') act.fetchPart((event.currentTarget as HTMLInputElement).value);
        }}
      />
    </label>`;
  return keyed(
    back.id,
    html`<form
      class="facts"
      aria-label=${words[back.part]}
      @submit=${(event: Event) => {
        event.preventDefault();
        act.command('leave');
      }}
    >
      <h3>${words[back.part]}</h3>
      <div class="fields">
        ${field('name')} ${field('number')} ${field('receipt')} ${unlisted(shown)}
        ${price(shown, inHand)}
        ${picker({
          label: words.oldUnit,
          options: [
            ...(oldUnit === undefined ? [['', words.oldUnknown] as const] : []),
            ['returned', words.oldReturned],
            ['owed', words.oldOwed],
          ],
          value: typeof oldUnit === 'string' ? oldUnit : '',
          pick: (told) => {
            if (told !== '') act.oldUnit(told as 'returned' | 'owed');
          },
        })}
        ${boughtOn(shown, back.diagnosis)}
      </div>
      ${context['part.limits'] === undefined ? nothing : html`<p class="hint">${words.makerFigures}</p>`}
      <button type="submit" hidden></button>
    </form>`,
  );
}

/** That the shop does not know the receipt, beside its field. */
function unlisted({ receiptUnlisted }: Shown): TemplateResult | typeof nothing {
  return receiptUnlisted === undefined
    ? nothing
    : html`<p class="hint unlisted">${receiptUnlisted}</p>`;
}

/** The price, unless it is asked for in the card; without terms nothing is reckoned by it. */
function price(shown: Shown, inHand: InHand): TemplateResult | typeof nothing {
  const { words, shop, act } = shown;
  if (shop === null) return html`<p class="hint price">${words.priceNoTerms}</p>`;
  return isPriceInCard(shown, inHand) ? nothing : priceField(shown, inHand, act.price);
}

/** What it was bought on: what a measured case said stands, the rest is picked. */
function boughtOn(shown: Shown, diagnosis: Diagnosis): TemplateResult {
  const { words, act } = shown;
  if (diagnosis.by === 'case') {
    return html`<p class="field bought">
      <span>${words.boughtOn}</span> ${diagnosisWords(shown, diagnosis)}
    </p>`;
  }
  return picker({
    label: words.boughtOn,
    options: grounds.map((by) => [by, diagnosisWords(shown, { by })] as const),
    value: diagnosis.by,
    pick: (by) => {
      act.boughtOn(by as (typeof grounds)[number]);
    },
  });
}

function picker(given: {
  readonly label: string;
  readonly options: readonly (readonly [value: string, label: string])[];
  readonly value: string;
  readonly pick: (value: string) => void;
}): TemplateResult {
  return html`<label class="field picked">
    <span>${given.label}</span>
    <select
      @change=${(event: Event) => {
        given.pick((event.currentTarget as HTMLSelectElement).value);
      }}
    >
      ${given.options.map(
        ([value, label]) =>
          html`<option value=${value} ?selected=${value === given.value}>${label}</option>`,
      )}
    </select>
  </label>`;
}

/** A diagnosis in words. */
export function diagnosisWords(
  { words, vehicleNames }: Pick<Shown, 'words' | 'vehicleNames'>,
  diagnosis: Diagnosis,
): string {
  switch (diagnosis.by) {
    case 'not-told':
      return words.notTold;
    case 'workshop':
      return words.workshop;
    case 'own-guess':
      return words.ownGuess;
    case 'our-advice':
      return words.ourAdvice;
    case 'case': {
      const { fault, strength } = diagnosis;
      if (fault === null || strength === null) return words.byCaseOpen;
      return fill(words.byCase, {
        fault: vehicleNames.faults[fault] ?? fault,
        strength: words[strength],
      });
    }
  }
}

function vehicle(shown: Shown, { back, speaker }: InHand): TemplateResult {
  const { words, act } = shown;
  return html`<section class="vehicle">
    <h3>${words.vehicle}</h3>
    ${
      back.vehicle === null
        ? html`<p class="hint">${words.vehicleHint}</p>`
        : html`<p>${caseLines(shown, back.vehicle, back.part).join(' ')}</p>
            <p>${saysWords(words, speaker, back.vehicle.proof[back.part])}</p>`
    }
    <label class="file key small">
      <span class="label">${words.vehicleFile}</span>
      <input
        type="file"
        @change=${(event: Event) => {
          const input = event.currentTarget as HTMLInputElement;
          const [file] = input.files ?? [];
          if (file !== undefined) act.caseFile(file);
          input.value = '';
        }}
      />
    </label>
  </section>`;
}

/**
 * What a case of a vehicle tells in short, a sentence a line. That it names no fault is left out where
 * it speaks of the part all the same.
 */
export function caseLines(
  { words, vehicleNames, locale }: Shown,
  kase: NonNullable<CounterReturn['vehicle']>,
  part: CounterReturn['part'],
): readonly string[] {
  const { fault, strength, complaint, fuel, at, proof, isByHand = false } = kase;
  const without = proof[part] === 'incomplete' && !isByHand ? [words.caseNoVerdict] : [];
  const day = new Intl.DateTimeFormat(locale, { dateStyle: 'long' }).format(new Date(at));
  return [
    `${fill(isByHand ? words.byHandOf : words.caseOf, { day })}.`,
    ...(fuel === null ? [] : [`${vehicleNames.fuels[fuel] ?? fuel}.`]),
    ...(complaint === null
      ? []
      : [
          `${fill(words.caseComplaint, { what: vehicleNames.complaints[complaint] ?? complaint })}.`,
        ]),
    ...(fault === null || strength === null
      ? without
      : [
          `${fill(words.caseVerdict, { fault: vehicleNames.faults[fault] ?? fault, strength: words[strength] })}.`,
        ]),
  ];
}

function found({ words, act, hand }: Shown, { laid, speaker }: InHand): TemplateResult {
  const { findings } = laid.strip;
  return html`<section class="found">
    <h3>${words.found}</h3>
    ${findings.length === 0 ? html`<p class="hint">${words.foundNone}</p>` : nothing}
    <ol class="lines">
      ${findings.map(
        (line, index) =>
          html`<li class=${hand.asking === line.check ? 'line correcting' : 'line'}>
            <span class="number" aria-hidden="true">${String(index + 1).padStart(2, '0')}</span>
            <div class="finding">${finding(line, speaker)}</div>
            <button
              type="button"
              class="fix"
              aria-label=${`${words.correct}: ${speaker.checkName(line.check)}`}
              title=${words.correct}
              @click=${() => {
                act.hand({ asking: line.check, picked: [], open: null });
              }}
            >
              <span aria-hidden="true">✎</span>
            </button>
          </li>`,
      )}
    </ol>
  </section>`;
}
