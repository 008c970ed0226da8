/**
 * A decision: what is read to the customer, and what is done with it.
 */
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyView, leaveKey, numbered, type KeyLook } from '../../view/key.ts';
import { fill } from '../../wording.ts';
import { isPriceLacking } from './price-field.ts';
import { decisionOf, type Decided } from './slip.ts';
import type { InHand, Shown } from './shown.ts';
import { sentence } from './sentence.ts';
import { typedAnswer } from './typed-answer.ts';

/** The decision, where nothing more is asked. */
export function decidedCard(shown: Shown, inHand: InHand): TemplateResult {
  const decided = decisionOf(shown, inHand);
  if (decided === undefined) return html``;
  const { title, strength } = decided;
  return html`${sentence('', title)}
    <p class="sure">${strength}</p>
    ${elsewhere(inHand)} ${paid(shown, inHand, decided)} ${toDo(decided)}
    ${keysOrPrice(shown, inHand)}`;
}

/** What can be done now; where an amount lacks the price, that is asked for with it. */
function keysOrPrice(shown: Shown, inHand: InHand): TemplateResult {
  const { words, act, shop, priceWrong } = shown;
  const others = decidedKeys(shown, inHand);
  if (shop === null || !isPriceLacking(shown, inHand)) return numbered(others);
  return typedAnswer(shown, inHand, {
    field: {
      name: 'price',
      label: fill(words.priceIn, { currency: shop.policy.currency }),
      isLabelShown: true,
      inputmode: 'numeric',
      value: '',
      wrong: priceWrong,
    },
    take: words.take,
    others: others.map(({ label, press }) => ({ label, press })),
    isTakenLeft: true,
    typed: (text) => {
      if (text === '') act.notice(words.figureNeeded);
      else act.price(text);
    },
  });
}

/**
 * What is paid back in all, or what an amount lacks, and what may come on top; the arithmetic is on
 * the slip. Without terms nothing is reckoned, which is said beside the part.
 */
function paid(
  { shop }: Shown,
  { back }: InHand,
  { sections }: Decided,
): TemplateResult | typeof nothing {
  if (shop === null) return nothing;
  const section = sections.find(({ id }) => id === 'refund');
  if (section === undefined) return nothing;
  const { refund } = back.sitting.case.state.decision ?? {};
  const [inAll, ...more] = section.lines.slice(refund?.lines.length ?? 0).toReversed();
  return html`<p class="sure"><b>${section.heading}:</b> ${inAll}</p>
    ${more.map((line) => html`<p class="sure">${line}</p>`)}`;
}

/** What of the vehicle points elsewhere: not read out, but there to answer the customer by. */
function elsewhere({ back, sheet }: InHand): TemplateResult | typeof nothing {
  const block = sheet?.blocks.find(({ id }) => id === 'elsewhere');
  if (block?.kind !== 'lines' || back.goodwill !== null) return nothing;
  return html`<p class="hint">${block.lines.join(' ')}</p>`;
}

/** What must not be done with the part, and what is to be done now, where the decision says so. */
function toDo({ sections }: Decided): TemplateResult | typeof nothing {
  const said = sections.filter(({ id }) => id === 'stops' || id === 'do');
  const lines = said.flatMap((section) => section.lines);
  if (lines.length === 0) return nothing;
  return html`<ul class="to-do">
    ${lines.map((line) => html`<li>${line}</li>`)}
  </ul>`;
}

/** A decision that stands though more may still be asked, and what can be done with it now. */
export function standing(shown: Shown, inHand: InHand): TemplateResult | typeof nothing {
  const decided = decisionOf(shown, inHand);
  if (decided === undefined) return nothing;
  return html`<section class="standing" aria-label=${shown.words.decision}>
    <p class="slip-title">${decided.title}</p>
    <p>${decided.strength}</p>
    ${toDo(decided)}
    <div class="keys row">
      ${decidedKeys(shown, inHand).map((look) => keyView({ ...look, isMain: false, isSmall: true }))}
    </div>
  </section>`;
}

function decidedKeys(shown: Shown, { back }: InHand): readonly KeyLook[] {
  const { words, act } = shown;
  const { decision } = back.sitting.case.state;
  const goodwill: KeyLook = {
    label: words.goodwill,
    press: () => {
      act.hand({ open: 'goodwill' });
    },
  };
  const undo: KeyLook = {
    label: words.goodwillUndo,
    press: () => {
      act.goodwill(null);
    },
  };
  const isTakenAnyway = decision?.decide === 'accept';
  return [
    { label: words.printSlip, press: act.print },
    { label: words.intoList, isMain: true, press: act.intoList },
    ...(back.goodwill !== null ? [undo] : isTakenAnyway ? [] : [goodwill]),
    ...(decision?.isDepositOpen === true && back.goodwill === null ? oldUnitKeys(shown) : []),
  ];
}

/** Whether the old unit was brought, where a deposit hangs on it. */
function oldUnitKeys({ words, act }: Shown): readonly KeyLook[] {
  const told = [
    ['returned', words.oldReturned],
    ['owed', words.oldOwed],
  ] as const;
  return told.map(([unit, label]) => ({
    label: `${words.oldUnit}: ${label}`,
    press: () => {
      act.oldUnit(unit);
    },
  }));
}

/** A lead takes it back, by name. */
export function goodwillCard({ words, act }: Shown): TemplateResult {
  return html`${sentence(words.decision, words.goodwillAsk)}
    <p class="hint">${words.goodwillHint}</p>
    <form
      class="line-entry"
      @submit=${(event: Event) => {
        event.preventDefault();
        const { value } = (event.currentTarget as HTMLFormElement).elements.namedItem(
          'lead',
        ) as HTMLInputElement;
        act.goodwill(value.trim());
      }}
    >
      <input
        name="lead"
        dir="auto"
        maxlength="80"
        autocomplete="off"
        aria-label=${words.goodwillName}
        placeholder=${words.goodwillName}
      />
      <button type="submit" class="key take">${words.take}</button>
    </form>
    ${leaveKey({ words, act })}`;
}
