/**
 * The look of the desk, on top of the look of the strip: a sheet to read from, and beside it the
 * paper of the case as a recorder prints it.
 */
const css = `
.page.desk {
  max-inline-size: 96rem;
  min-block-size: 100vh;
  font-size: 1.0625rem;
}
.desk .head { align-items: center; gap: .35rem 1.25rem; padding: .6rem 1.5rem; }
/* Where there is room, whoever is in danger elsewhere stays in sight. */
@media (min-width: 64.01rem) and (min-height: 40rem) {
  .desk .head { position: sticky; inset-block-start: 0; z-index: 1; background: var(--p); }
  .desk :is(button, input, select) { scroll-margin-block: 7rem 1rem; }
  /* The line and the keys that always work stay in sight however many answers there are. */
  .desk .reach { position: sticky; inset-block-end: 0; z-index: 1; padding-block-end: .5rem; background: var(--p); }
  .desk .card :is(button, input, select) { scroll-margin-block-end: 10rem; }
  .desk .low-danger { display: none; }
}
@media not ((min-width: 64.01rem) and (min-height: 40rem)) {
  .desk .head-key.danger { display: none; }
}
/* Where the head scrolls away, danger and whose case it is stay in sight; text needs little height more. */
@media (max-width: 64rem) and (min-height: 34rem) {
  .desk .whose { position: sticky; inset-block-start: 0; z-index: 1; background: var(--p); }
  .desk .card :is(button, input, select) { scroll-margin-block-start: 4.5rem; }
  .desk .card .whose button { scroll-margin-block-start: 0; }
}
.desk .head h1 { flex: 0 0 auto; font-size: 1.05em; }
.desk .summary { flex: 1 1 22rem; min-inline-size: 0; }
.desk .head-keys { display: flex; flex-wrap: wrap; align-items: center; gap: .4rem; }
.desk .head-key { border-width: 1px; font-weight: 400; padding-inline: .7rem; }
.desk .head-key[aria-pressed='true'] { background: var(--i); color: var(--p); }
.desk .head-key.danger { border-color: #a83a00; font-weight: 700; }
.desk .head-key.danger .at { color: inherit; }
.desk .language { margin-inline-start: .6rem; }
.desk .language span { color: var(--i2); }
.desk .language select { flex: 0 1 auto; background: var(--p2); border-width: 1px; }
.at {
  font: inherit;
  font-weight: 700;
  color: var(--i2);
  font-variant-numeric: tabular-nums lining-nums;
}
.sheet {
  display: grid;
  grid-template-columns: minmax(0, 1fr) minmax(24rem, 28rem);
  grid-template-areas: 'card paper' 'others paper';
  grid-template-rows: auto 1fr;
  column-gap: 2rem;
  align-items: start;
}
.sheet.bare { grid-template-areas: 'card card' 'others others'; }
.desk .card {
  grid-area: card;
  padding: 1.25rem 1.5rem 1.5rem;
  background: none;
  border: 0;
  gap: 1rem;
  scroll-margin-block: 7rem 0;
}
/* There even when empty, so that what comes into it is read out. */
.desk .notes.empty { display: grid; border: 0; padding: 0; margin-block-end: -1rem; }
.desk .card .tag { font-size: 1em; letter-spacing: .01em; }
.desk .card > .sentence {
  font-size: clamp(1.5rem, 1rem + 1.25vw, 2.15rem);
  line-height: 1.2;
  font-weight: 700;
  text-wrap: balance;
  margin-block-start: -.6rem;
}
.desk .signs { display: grid; gap: .6rem; }
.desk .signs .sign .text { font-size: 1.2em; line-height: 1.35; }
.desk .signs.small .sign .text { font-size: 1em; }
.desk .signs.small .sign .word { font-size: 1em; padding-block: .1rem; }
.other-words { display: grid; gap: .25rem; max-inline-size: 46rem; padding-inline-start: .9rem; border-inline-start: 3px solid var(--l); color: var(--i2); }
.desk h3 { font-weight: 700; color: var(--i2); font-size: .95em; }
/* On this page "!" is a key. */
.desk .notes .refused::before { content: none; }
.reach { display: grid; gap: .6rem; padding-block-start: .6rem; border-block-start: 1px solid var(--l); }
.whose { display: flex; align-items: center; justify-content: space-between; gap: 1rem; font-size: .95em; color: var(--i2); margin-block-end: -.6rem; }
.whose p { min-inline-size: 0; }
.whose:has(+ .practice, + .notes:not(.empty)) { margin-block-end: 0; }
.desk .low-danger .key.small { background: #a83a00; border-color: #a83a00; color: #fff; }
.desk .low-danger .key.small :is(.label, .at) { font-weight: 700; color: inherit; }
.desk .keys { grid-template-columns: repeat(auto-fill, minmax(min(100%, 15rem), 1fr)); gap: .55rem; }
.desk .keys.row { display: flex; flex-wrap: wrap; }
.desk .key { min-block-size: 48px; align-items: center; padding: .45rem .8rem; border-width: 1px; border-block-end-width: 3px; }
.desk .key:has(.more) { align-items: baseline; }
.desk .key:active { border-block-end-width: 1px; margin-block-start: 2px; }
.lacking { font-weight: 700; }
.desk .key .at { min-inline-size: 1.3rem; flex: none; }
.desk .key.take .at { color: inherit; }
.desk .key.small { align-items: center; min-block-size: 44px; padding-inline: .6rem; border-block-end-width: 2px; background: var(--p2); gap: .4rem; }
.desk .key.small .at { min-inline-size: 0; }
.desk .key .label { font-weight: 700; }
.desk .key.small .label { font-weight: 400; flex: none; }
.desk .more { display: block; font-weight: 400; font-size: .88em; line-height: 1.35; color: var(--i2); }
.desk .key.take .more { color: inherit; }
.desk .line-entry input { min-block-size: 48px; flex-basis: 14rem; background: var(--p2); }
.practice {
  display: grid;
  gap: .2rem;
  padding: .6rem .9rem;
  border: 1px dashed var(--i2);
  font-size: 1.05em;
}
.practice .invented { font-size: .85em; color: var(--i2); }
.sure { font-size: 1.15em; max-inline-size: 52rem; }
.briefing { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 22rem), 1fr)); gap: 1.25rem 2rem; margin-block-start: .5rem; }
.briefing section { display: grid; gap: .4rem; align-content: start; }
.briefing li { padding-inline-start: 1rem; position: relative; margin-block-end: .25rem; }
.briefing li::before { content: ''; position: absolute; inset-inline-start: 0; inset-block-start: .6em; inline-size: .45rem; block-size: .15rem; background: var(--i2); }
.briefing > div { display: grid; gap: 1.25rem; align-content: start; }
.changes ul { display: grid; gap: .15rem; }
.changes li { display: flex; flex-wrap: wrap; gap: 0 .8rem; }
.changes span { color: var(--i2); }
.slip { display: grid; gap: .25rem; padding: .8rem 1rem; background: var(--p2); border: 1px solid var(--i); border-inline-start-width: 6px; }
.slip-title { font-weight: 700; font-size: 1.15em; }
.paper {
  grid-area: paper;
  min-block-size: calc(100vh - 8rem);
  padding: 1.25rem 2.1rem 3rem;
  border-inline: 1px solid var(--l);
  border-block-end: 1px solid var(--l);
  margin-inline-end: 1.5rem;
  background:
    radial-gradient(circle at 50% 50%, var(--l) 0 3.5px, transparent 4.2px) 4px 6px / 14px 22px repeat-y,
    radial-gradient(circle at 50% 50%, var(--l) 0 3.5px, transparent 4.2px) calc(100% - 4px) 6px / 14px 22px repeat-y,
    repeating-linear-gradient(var(--grid) 0 1px, transparent 1px 22px),
    var(--p);
  display: grid;
  gap: 1.25rem;
  align-content: start;
}
.caller { display: grid; gap: .5rem; padding: .75rem .8rem .7rem; background: var(--p2); border: 1px solid var(--l); }
.caller h3 { display: flex; justify-content: space-between; }
.fields { display: grid; grid-template-columns: 1fr 1fr; gap: .45rem .7rem; align-items: end; }
.field { display: grid; gap: .1rem; min-inline-size: 0; }
.field.where, .field.vehicle { grid-column: 1 / -1; }
.field span { font-size: .85em; color: var(--i2); }
.field input, .field select {
  min-block-size: 44px;
  min-inline-size: 0;
  inline-size: 100%;
  padding-inline: .5rem;
  border: 1px solid var(--i2);
  border-radius: 2px;
  background: var(--p);
}
form.field.row { display: flex; flex-wrap: wrap; align-items: end; gap: .6rem; }
form.field.row label { flex: 1 1 14rem; }
form.field.row select { min-block-size: 44px; background: var(--k); }
.spot ul { display: grid; }
.fact {
  display: flex;
  flex-wrap: wrap;
  justify-content: space-between;
  gap: 0 .8rem;
  inline-size: 100%;
  min-block-size: 44px;
  align-items: center;
  padding: .35rem .1rem;
  border: 0;
  border-block-end: 1px dashed var(--l);
  background: none;
  text-align: start;
  cursor: pointer;
}
.fact .what { color: var(--i2); }
.fact .value { font-weight: 700; }
.fact .value.none { font-weight: 400; color: var(--i2); }
.fact:hover .value { text-decoration: underline; }
.desk .line { min-block-size: 44px; }
.desk .line .number { padding-block-start: .65rem; }
.desk .line .fix { min-block-size: 44px; min-inline-size: 44px; }
.others-list { grid-area: others; padding: 1rem 1.5rem 3rem; border-block-start: 1px solid var(--l); }
.others-list h2 { font-weight: 700; color: var(--i2); margin-block-end: .4rem; }
.others-list ol { counter-reset: place; }
.others-list li { counter-increment: place; }
.others-list button {
  display: grid;
  grid-template-columns: minmax(10rem, 2fr) minmax(9rem, 1.4fr) minmax(8rem, 1.4fr);
  gap: 0 1rem;
  inline-size: 100%;
  min-block-size: 44px;
  align-items: center;
  padding: .4rem .2rem;
  border: 0;
  border-block-end: 1px solid var(--grid);
  background: none;
  text-align: start;
  cursor: pointer;
}
.others-list button:hover b { text-decoration: underline; }
.others-list b { font-weight: 400; }
.others-list .danger b, .others-list .danger .state { font-weight: 700; }
.others-list .danger .state::before { content: '▲ '; }
.others-list .traffic .state::before { content: '△ '; }
.others-list :is(.traffic, .call-back) .state { font-weight: 700; }
.report { padding: 1.5rem; display: grid; gap: 1rem; max-inline-size: 52rem; }
.report h2 { font-weight: 700; font-size: 1.6rem; }
.report table { border-collapse: collapse; }
.report th { text-align: start; padding: .3rem 1.2rem .3rem 0; vertical-align: baseline; white-space: nowrap; }
[dir='rtl'] .report th { padding: .3rem 0 .3rem 1.2rem; }
.report td { padding-block: .3rem; vertical-align: baseline; }
.report kbd { font: inherit; font-weight: 700; }
.bins { display: grid; gap: .9rem; }
.bin { display: block; inline-size: 100%; max-inline-size: 30rem; block-size: auto; }
.bin .axis { stroke: var(--i2); stroke-width: .4; }
.bin .gap { stroke: var(--here); stroke-width: 1.4; }
.bin .seen { fill: var(--here); stroke: var(--i); stroke-width: .4; }
.bin .said { fill: var(--p); fill-opacity: .2; stroke: var(--i); stroke-width: .9; }
[aria-busy='true'] .sentence { opacity: .5; transition: opacity .1s .25s; }
[dir='rtl'] .bin { transform: scaleX(-1); }
@media (max-width: 64rem) {
  .desk .card { scroll-margin-block: 0; }
  .sheet { grid-template-columns: minmax(0, 1fr); grid-template-areas: 'card' 'paper' 'others'; grid-template-rows: none; }
  .sheet.bare { grid-template-areas: 'card' 'others'; }
  .paper { margin-inline: 0; min-block-size: 0; border-inline: 0; padding-block-end: 1.5rem; }
}
@media (max-width: 40rem) {
  .desk .head { padding: .5rem 1rem; }
  .desk .card, .others-list, .report { padding-inline: 1rem; }
  .others-list button { grid-template-columns: 1fr; }
  .fields { grid-template-columns: 1fr; }
}
/* Where a screen is wide and not high, a question with many answers is to be seen whole. */
@media (min-width: 64.01rem) and (max-height: 60rem) {
  .desk .card { padding-block: .6rem 0; gap: .6rem; }
  .desk .card > .sentence { margin-block-start: -.5rem; font-size: clamp(1.5rem, 1rem + 1vw, 1.9rem); }
  .desk .other-words { display: block; }
  .desk .other-words :is(h3, h3 + p) { display: inline; }
  .desk .keys:not(.row) { gap: .4rem; }
  .desk .key:has(.more) { padding-block: .25rem; }
  .desk .more { line-height: 1.25; }
  .desk .reach { gap: .4rem; padding-block: .4rem; }
}
@media (prefers-reduced-motion: reduce) { [aria-busy='true'] .sentence { opacity: 1; transition: none; } }
@media (forced-colors: active) {
  .key, .head-key, .fact, .slip, .caller { border-color: ButtonText; }
  .bin .axis, .bin .said { stroke: CanvasText; }
  .bin .seen { fill: Highlight; stroke: CanvasText; }
  .bin .gap { stroke: Highlight; }
}
@media print {
  .head, .paper, .others-list, .desk .card > :not(.briefing), .briefing section:not(.note), .note > h3, .note .keys { display: none !important; }
  .sheet, .briefing, .desk .card { display: block; padding: 0; }
  .slip { border: 0; padding: 0; font-size: 14pt; }
}
`;

let sheet: CSSStyleSheet | undefined;

/** The style sheet of every desk, made once. */
export function deskLook(): CSSStyleSheet {
  if (sheet === undefined) {
    sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
  }
  return sheet;
}
