/**
 * The look: the strip. Constructed style sheets, so that a page may forbid inline style.
 */
import { cardCss } from './card-css.ts';
import { keysCss } from './keys-css.ts';
import { paperCss } from './paper-css.ts';
import { stripCss } from './strip-css.ts';

let sheets: CSSStyleSheet[] | undefined;

/** The style sheets of every element, made once. */
export function look(): CSSStyleSheet[] {
  sheets ??= [paperCss, stripCss, cardCss, keysCss].map((css) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    return sheet;
  });
  return sheets;
}
