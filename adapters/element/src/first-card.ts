/**
 * The first question, written out when the element was built: it is read while the rest is loaded.
 */
import { directionOf } from './host.ts';

/** The first question of a new case in one language. */
export interface FirstCard {
  readonly name: string;
  readonly opening: string;
  readonly check: string;
  readonly text: string;
  readonly how: readonly string[];
  readonly options: readonly {
    readonly id: string;
    readonly key: string;
    readonly label: string;
  }[];
  /** What is said while an answer waits for the rest. */
  readonly loading: string;
}

/** Shows a first question with its keys; an answer goes to `picked`, and can be changed. */
export function showFirstCard(
  root: ShadowRoot,
  card: FirstCard,
  given: { readonly locale: string; readonly picked: (option: string) => void },
): void {
  const page = make('div', 'page');
  page.lang = given.locale;
  page.dir = directionOf(given.locale);
  const head = make('header', 'head');
  head.append(make('h1', '', card.name));
  const notes = make('div', 'notes');
  notes.setAttribute('role', 'status');
  notes.append(make('p', '', card.opening));
  const asked = make('section', 'card');
  const keys = make('div', 'keys');
  for (const { id, key, label } of card.options) {
    const button = make('button', 'key');
    button.type = 'button';
    button.append(make('span', 'at', key), make('span', 'label', label));
    button.addEventListener('click', () => {
      for (const one of keys.children) one.setAttribute('aria-pressed', String(one === button));
      notes.replaceChildren(make('p', '', card.loading));
      given.picked(id);
    });
    keys.append(button);
  }
  asked.append(notes, make('h2', '', card.text), make('p', 'how', card.how.join(' ')), keys);
  page.append(head, asked);
  root.replaceChildren(page);
}

function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  className: string,
  text = '',
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  element.className = className;
  element.textContent = text;
  return element;
}
