const dark = `
  --p: var(--keyturn-paper, #17140f);
  --p2: var(--keyturn-paper-raised, #221d16);
  --i: var(--keyturn-ink, #f3e6cf);
  --i2: var(--keyturn-ink-soft, #c9b99c);
  --l: var(--keyturn-line, #54493a);
  --k: var(--keyturn-key, #2d261c);
  --a: var(--keyturn-accent, #56b4e9);
  --ai: #10202b;
  --fill: #a8dcff;
  --here: #56b4e9;
  --odd: #3a3226;
  --grid: #211c15;
`;

/** Paper, ink and type: Okabe-Ito colours on warm paper, warm text on dark at night. */
export const paperCss: string = `
:host {
  display: block;
  color-scheme: light;
  --p: var(--keyturn-paper, #fbf5e6);
  --p2: var(--keyturn-paper-raised, #fffdf7);
  --i: var(--keyturn-ink, #201a10);
  --i2: var(--keyturn-ink-soft, #5b4f3c);
  --l: var(--keyturn-line, #c3b391);
  --k: var(--keyturn-key, #f4ead3);
  --a: var(--keyturn-accent, #005a8e);
  --ai: #ffffff;
  --fill: #003250;
  --here: #0072b2;
  --odd: #e6d9ba;
  --grid: #f3ead4;
}
:host([hidden]) { display: none; }
@media (prefers-color-scheme: dark) {
  :host(:not([theme='light'])) { color-scheme: dark; ${dark} }
}
:host([theme='dark']) { color-scheme: dark; ${dark} }
*, *::before, *::after { box-sizing: border-box; }
/* What a page says of all elements is inherited from its element: from here on it is not. */
.page {
  all: initial;
  display: block;
  box-sizing: border-box;
  font-family: var(--keyturn-font, 'Keyturn Hyperlegible', 'Atkinson Hyperlegible', system-ui, sans-serif);
  font-size: var(--keyturn-size, 1.125rem);
  line-height: 1.4;
  color: var(--i);
  background: var(--p);
  max-inline-size: var(--keyturn-width, 44rem);
  margin-inline: auto;
  min-block-size: 100%;
  overflow-wrap: anywhere;
  -webkit-text-size-adjust: 100%;
}
h1, h2, h3, p, ol, ul { margin: 0; padding: 0; font: inherit; }
ol, ul { list-style: none; }
button, input, select { font: inherit; color: inherit; letter-spacing: inherit; }
:focus-visible { outline: 3px solid var(--a); outline-offset: 2px; }
[tabindex='-1']:focus { outline: none; }
.head {
  display: flex;
  flex-wrap: wrap;
  align-items: center;
  gap: .5rem;
  padding: .5rem 1rem;
  border-block-end: 2px solid var(--i);
}
.head h1 { flex: 1 1 4.5rem; min-inline-size: 0; font-weight: 700; line-height: 1.15; }
/* Where there is little width, the two keys need it more than the title, which is read out all the same. */
.top { container-type: inline-size; }
@container (max-width: 26em) { .head h1 { font-size: .9em; } }
@container (max-width: 21em) {
  .head h1 { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  .head-key { flex: 1; }
}
/* Danger stays within reach of a thumb; where there is little height, text needs it more. */
@media (min-height: 34rem) {
  .top {
    position: sticky;
    inset-block-start: var(--keyturn-top, 0px);
    z-index: 1;
    background: var(--p);
    max-block-size: calc(100vh - var(--keyturn-top, 0px));
    max-block-size: calc(100dvh - var(--keyturn-top, 0px));
    overflow-y: auto;
  }
  .page :is(button, input, select, summary, [tabindex]) { scroll-margin-block: calc(var(--keyturn-top, 0px) + var(--head, 4rem) + .75rem) 1rem; }
  .top :is(button, select) { scroll-margin-block: 0; }
  .foot .low-danger { display: none; }
}
.head-key {
  min-block-size: 48px;
  min-inline-size: 48px;
  padding: .25rem .9rem;
  border: 2px solid var(--i);
  border-radius: 2px;
  background: var(--p2);
  font-weight: 700;
  cursor: pointer;
}
.head-key.danger { background: #a83a00; border-color: #a83a00; color: #fff; }
.head-key[aria-expanded='true'] { text-decoration: underline; text-underline-offset: .2em; }
.drawer { padding: 1rem; border-block-end: 2px solid var(--i); background: var(--p2); }
.drawer h2 { font-weight: 700; margin-block-end: .75rem; }
.drawer .keys + h2 { margin-block-start: .75rem; }
.drawer .call { margin-block-end: .75rem; }
.drawer .close { inline-size: 100%; margin-block-start: .75rem; }
.drawer .note { display: grid; gap: .25rem; user-select: text; }
.language { display: flex; flex-wrap: wrap; align-items: center; gap: .25rem 1rem; min-block-size: 48px; }
.language select {
  flex: 1 1 10rem;
  min-block-size: 48px;
  padding-inline: .75rem;
  border: 2px solid var(--i2);
  border-radius: 2px;
  background: var(--k);
}
@media (forced-colors: active) {
  .head-key, .key, .digit, .sign { border: 2px solid ButtonText; }
  svg { forced-color-adjust: none; }
  .ruler text { fill: CanvasText; }
  .ruler .axis, .ruler .expected { stroke: CanvasText; }
  .ruler .band, .ruler .band.odd, .bar .rail { fill: Canvas; stroke: CanvasText; }
  .ruler .band.here, .bar .share { fill: Highlight; stroke: CanvasText; }
  .ruler .mark, .ruler .zone, .bar .before, .page .sign .alert path { fill: CanvasText; }
  .page .sign .alert .mark { fill: Canvas; }
}
`;
