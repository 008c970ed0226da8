/**
 * What is always within reach: danger, own words, back, and the rest in a drawer.
 */
import { html, nothing, type TemplateResult } from 'lit-html';
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
    <div id="drawer">
      ${hand.open === 'danger' ? danger(shown) : hand.open === 'more' ? more(shown) : nothing}
    </div>
  </div>`;
}

function danger({ chart, flowTexts, texts, act }: Shown): TemplateResult {
  return html`<section class="drawer" tabindex="-1" aria-label=${texts.dangerAsk}>
    <h2>${texts.dangerAsk}</h2>
    <div class="keys">
      ${Object.keys(chart.flow.interrupts).map(
        (id) =>
          html`<button
            type="button"
            class="key"
            @click=${() => {
              act.take({ type: 'interrupt', interrupt: id });
            }}
          >
            <span class="label">${flowTexts.interrupts[id]?.name ?? id}</span>
          </button>`,
      )}
    </div>
  </section>`;
}

function more(shown: Shown): TemplateResult {
  const { texts, act, hand, locale, locales } = shown;
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
      ${talk('numbers', texts.numbers)} ${talk('person', texts.person)} ${talk('stop', texts.stop)}
      <label class="language">
        <span>${texts.language}</span>
        <select @change=${changed}>
          ${Object.entries(locales).map(
            ([tag, name]) =>
              html`<option value=${tag} lang=${tag} ?selected=${tag === locale}>${name}</option>`,
          )}
        </select>
      </label>
      <button type="button" class="key" @click=${clear}>
        <span class="label">${hand.armed === 'clear' ? texts.clearSure : texts.clear}</span>
      </button>
    </div>
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
