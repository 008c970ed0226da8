/**
 * The pad on which a reading is entered: large digits, the decimal key of the locale, no keyboard
 * of the phone in the way.
 */
import { html, nothing, type TemplateResult } from 'lit-html';

/** As long as any meter shows. */
const mostDigits = 7;

/** Draws the pad. `figure` holds plain digits with a point, whatever the locale shows. */
export function pad(given: {
  readonly figure: string;
  readonly locale: string;
  readonly unit: string | undefined;
  /** True where a figure below zero can be a reading. */
  readonly isSigned: boolean;
  readonly texts: {
    readonly erase: string;
    readonly minus: string;
    readonly take: string;
  };
  readonly change: (figure: string) => void;
  readonly take: (value: number, resolution: number) => void;
}): TemplateResult {
  const { figure, texts, change } = given;
  const signs = signsOf(given.locale);
  const show = (plain: string): string => Array.from(plain, (one) => signs[one] ?? one).join('');
  const add = (one: string): void => {
    change(appended(figure, one));
  };
  const take = (): void => {
    if (!/\d/.test(figure)) return;
    given.take(Number(figure), 10 ** -(figure.split('.')[1]?.length ?? 0));
  };
  const digit = (one: string, name = show(one)) =>
    html`<button
      type="button"
      class="digit"
      aria-label=${name}
      @click=${() => {
        add(one);
      }}
    >
      ${show(one)}
    </button>`;
  const typed = (event: InputEvent): void => {
    const input = event.currentTarget as HTMLInputElement;
    change(plainOf(input.value, signs));
  };
  return html`<form
    class="pad"
    @submit=${(event: Event) => {
      event.preventDefault();
      take();
    }}
  >
    <div class="display">
      <input
        dir="ltr"
        inputmode="none"
        autocomplete="off"
        aria-labelledby="asked"
        .value=${show(figure)}
        @input=${typed}
      />
      ${given.unit === undefined ? nothing : html`<span class="unit" dir="ltr">${given.unit}</span>`}
    </div>
    <div class="digits" dir="ltr">
      ${['7', '8', '9'].map((one) => digit(one))}
      <button
        type="button"
        class=${given.isSigned ? 'digit' : 'digit tall'}
        aria-label=${texts.erase}
        @click=${() => {
          change(figure.slice(0, -1));
        }}
      >
        ⌫
      </button>
      ${['4', '5', '6'].map((one) => digit(one))}
      ${given.isSigned ? digit('-', texts.minus) : nothing}
      ${['1', '2', '3'].map((one) => digit(one))}
      <button type="submit" class="digit enter" ?disabled=${!/\d/.test(figure)}>
        ${texts.take}
      </button>
      <span class="wide">${digit('0')}</span>${digit('.', show('.'))}
    </div>
  </form>`;
}

function appended(figure: string, one: string): string {
  if (one === '-') return figure.startsWith('-') ? figure.slice(1) : `-${figure}`;
  if (one === '.' && figure.includes('.')) return figure;
  if (figure.replaceAll(/\D/g, '').length >= mostDigits) return figure;
  return one === '.' && !/\d/.test(figure) ? `${figure}0.` : figure + one;
}

type Signs = Readonly<Record<string, string>>;

/** How a locale writes the ten digits, the decimal sign and the minus. */
function signsOf(locale: string): Signs {
  const format = new Intl.NumberFormat(locale, { useGrouping: false });
  const point = format.formatToParts(1.5).find(({ type }) => type === 'decimal')?.value ?? '.';
  const digits = Array.from({ length: 10 }, (_, digit) => [String(digit), format.format(digit)]);
  return { ...(Object.fromEntries(digits) as Signs), '.': point, '-': '−' };
}

/** What was typed on a real keyboard, in whichever digits, as plain digits with a point. */
function plainOf(typed: string, signs: Signs): string {
  const plain = new Map(Object.entries(signs).map(([one, sign]) => [sign, one]));
  return Array.from(typed, (sign) => plain.get(sign) ?? sign)
    .map((sign) => (sign === ',' ? '.' : sign))
    .reduce((figure, sign) => (/[\d.-]/.test(sign) ? appended(figure, sign) : figure), '');
}
