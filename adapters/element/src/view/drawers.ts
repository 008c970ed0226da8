/**
 * What is always within reach: danger, own words, back, and the rest in a drawer.
 */
import { html, nothing, type TemplateResult } from 'lit-html';
import { summaryDraft } from '@keyturn/conversation';
import { canShare } from '../device/pass-on.ts';
import { fittingTag } from '../host.ts';
import type { Shown } from './shown.ts';

/** The head of the strip: what this is, danger, and more. */
export function head(shown: Shown): TemplateResult {
  const { flowTexts, texts, hand, act } = shown;
  const toggle = (drawer: 'danger' | 'more', label: string) =>
    html`<button
      type="button"
      class="head-key ${drawer}"
      aria-expanded=${String(hand.open === drawer)}
      aria-controls="drawer"
      @click=${() => {
        act.hand({ open: hand.open === drawer ? null : drawer, armed: null });
      }}
    >
      ${label}
    </button>`;
  return html`<div class="top">
    <header class="head">
      <h1>${flowTexts.name}</h1>
      ${toggle('danger', texts.danger)} ${toggle('more', texts.menu)}
    </header>
    <div id="drawer">${drawer(shown)}</div>
  </div>`;
}

function drawer(shown: Shown): TemplateResult | typeof nothing {
  switch (shown.hand.open) {
    case 'danger':
      return danger(shown);
    case 'more':
      return more(shown);
    case 'note':
      return note(shown);
    case null:
      return nothing;
  }
}

/** Closes the drawer that is open. */
function closeKey({ texts, act }: Shown): TemplateResult {
  return html`<button
    type="button"
    class="key small close"
    @click=${() => {
      act.hand({ open: null });
    }}
  >
    <span class="label">${texts.close}</span>
  </button>`;
}

function danger(shown: Shown): TemplateResult {
  const { texts } = shown;
  return html`<section class="drawer" tabindex="-1" aria-label=${texts.dangerAsk}>
    <h2>${texts.dangerAsk}</h2>
    <div class="keys">${interruptKeys(shown, ({ word }) => word !== 'notice')}</div>
    ${closeKey(shown)}
  </section>`;
}

function interruptKeys(
  { chart, flowTexts, act }: Shown,
  isWanted: (interrupt: Shown['chart']['flow']['interrupts'][string]) => boolean,
): readonly TemplateResult[] {
  return Object.values(chart.flow.interrupts)
    .filter(isWanted)
    .map(
      ({ id }) =>
        html`<button
          type="button"
          class="key"
          @click=${() => {
            act.take({ type: 'interrupt', interrupt: id });
          }}
        >
          <span class="label">${flowTexts.interrupts[id]?.name ?? id}</span>
        </button>`,
    );
}

/** What was found, as text for whoever comes or is called. */
function note(shown: Shown): TemplateResult {
  const { texts, act, hand, sitting, speaker, flowTexts } = shown;
  const [title, ...found] = summaryDraft(sitting.case, speaker).lines.map(({ text }) => text);
  // That it runs again, or that there was smoke, is no answer and yet the first thing to know.
  const { raised } = sitting.case.state;
  const lines = [...raised.map((id) => `! ${flowTexts.interrupts[id]?.name ?? id}`), ...found];
  return html`<section class="drawer" tabindex="-1" aria-label=${texts.note}>
    <p class="call">${texts.callHelp}</p>
    <div class="keys">
      <button
        type="button"
        class="key take"
        @click=${() => {
          act.passOn([title, ...lines].join('\n'));
        }}
      >
        <span class="label">${canShare() ? texts.passOn : texts.copy}</span>
      </button>
      <p role="status">
        ${hand.copied === null ? '' : hand.copied ? texts.copied : texts.notCopied}
      </p>
    </div>
    <h2>${title}</h2>
    <div class="note">${lines.map((line) => html`<p>${line}</p>`)}</div>
    ${closeKey(shown)}
  </section>`;
}

/** Opens the note. */
export function noteKey({ texts, act }: Shown): TemplateResult {
  return html`<button
    type="button"
    class="key"
    @click=${() => {
      act.hand({ open: 'note', copied: null });
    }}
  >
    <span class="label">${texts.note}</span>
  </button>`;
}

function more(shown: Shown): TemplateResult {
  const { texts, act, hand, locale, locales, position, sitting } = shown;
  const isOpen = position.awaiting !== 'nothing';
  const chosen = fittingTag(locale, Object.keys(locales));
  const talk = (word: 'numbers' | 'person' | 'stop', label: string) =>
    html`<button
      type="button"
      class="key"
      @click=${() => {
        act.take({ type: 'talk', talk: word });
      }}
    >
      <span class="label">${label}</span>
    </button>`;
  const changed = (event: Event): void => {
    act.language((event.currentTarget as HTMLSelectElement).value);
  };
  const clear = (): void => {
    if (hand.armed === 'clear') act.clear();
    else act.hand({ armed: 'clear' });
  };
  return html`<section class="drawer" aria-label=${texts.menu}>
    <div class="keys">
      ${isOpen ? interruptKeys(shown, ({ word }) => word === 'notice') : nothing}
      ${sitting.case.state.order.length === 0 ? nothing : noteKey(shown)}
      ${isOpen ? talk('numbers', texts.numbers) : nothing} ${talk('person', texts.person)}
      ${isOpen ? talk('stop', texts.stop) : nothing}
      <label class="language">
        <span>${texts.language}</span>
        <select @change=${changed}>
          ${Object.entries(locales).map(
            ([tag, name]) =>
              html`<option value=${tag} lang=${tag} ?selected=${tag === chosen}>${name}</option>`,
          )}
        </select>
      </label>
      <button type="button" class="key" @click=${clear}>
        <span class="label">${hand.armed === 'clear' ? texts.clearSure : texts.clear}</span>
      </button>
    </div>
    ${closeKey(shown)}
  </section>`;
}

/** The foot: own words, typed or spoken, a step back, and danger where the head scrolls away. */
export function foot({ texts, act, hand, sitting }: Shown): TemplateResult {
  const send = (event: Event): void => {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    const input = form.elements.namedItem('line') as HTMLInputElement;
    const line = input.value.replaceAll(/\s+/g, ' ').trim();
    if (line === '') return;
    input.value = '';
    act.say(line);
  };
  return html`<footer class="foot">
    <form class="line-entry" @submit=${send}>
      <input
        name="line"
        dir="auto"
        maxlength="400"
        autocomplete="off"
        enterkeyhint="send"
        aria-label=${texts.type}
        placeholder=${hand.isListening ? texts.listening : texts.type}
      />
      <button type="submit" class="key small">${texts.send}</button>
    </form>
    <div class="others">
      <button
        type="button"
        class="key small"
        ?disabled=${sitting.case.state.order.length === 0}
        @click=${() => {
          act.take({ type: 'talk', talk: 'back' });
        }}
      >
        ${texts.back}
      </button>
      <button
        type="button"
        class="key small low-danger"
        @click=${() => {
          act.hand({ open: 'danger', armed: null });
        }}
      >
        ${texts.danger}
      </button>
      ${
        act.speakIn === undefined
          ? nothing
          : html`<button
              type="button"
              class="key small"
              aria-pressed=${String(hand.isListening)}
              @click=${act.speakIn}
            >
              ${texts.speak}
            </button>`
      }
    </div>
  </footer>`;
}
