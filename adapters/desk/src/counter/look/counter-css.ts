/**
 * The look of the counter, on top of the look of the strip: the step on the left, and beside it the
 * slip as it is written, the part and the vehicle.
 */
const css = `
.page.counter { max-inline-size: 96rem; min-block-size: 100vh; font-size: 1.0625rem; }
.counter .head { gap: .35rem 1.25rem; padding: .6rem 1.5rem; }
.counter .head h1 { flex: 0 0 auto; font-size: 1.05em; }
.shop-name { flex: 1 1 12rem; min-inline-size: 0; color: var(--i2); }
.counter .head-list { display: contents; }
.counter .head-keys { display: flex; flex-wrap: wrap; align-items: center; gap: .4rem; }
.counter .head-key { border-width: 1px; font-weight: 400; padding-inline: .7rem; min-block-size: 44px; }
.counter .head-key[aria-pressed='true'] { background: var(--i); color: var(--p); }
.counter .language { margin-inline-start: .6rem; }
.counter .language span { color: var(--i2); }
.counter .language select { flex: 0 1 auto; background: var(--p2); border-width: 1px; min-block-size: 44px; }
.at { font: inherit; font-weight: 700; color: var(--i2); font-variant-numeric: tabular-nums lining-nums; }
.bench {
  display: grid;
  grid-template-columns: minmax(0, 1fr) minmax(24rem, 34rem);
  grid-template-areas: 'card ledger' 'waiting ledger';
  grid-template-rows: auto 1fr;
  column-gap: 2rem;
  align-items: start;
}
.bench.bare { max-inline-size: 72rem; grid-template-columns: minmax(0, 1fr); grid-template-areas: 'card' 'waiting'; }
.counter .card { grid-area: card; padding: 1rem 1.5rem 1.5rem; background: none; border: 0; gap: 1rem; scroll-margin-block: 0; }
.counter .card .tag { font-size: 1em; letter-spacing: .01em; }
.counter .card > .sentence {
  font-size: clamp(1.5rem, 1.1rem + 1.4vw, 2.25rem);
  line-height: 1.2;
  font-weight: 700;
  text-wrap: balance;
}
.counter .card > .tag + .sentence { margin-block-start: -.6rem; }
.standing { display: grid; gap: .35rem; padding: .7rem .9rem .9rem; border: 1px solid var(--l); border-inline-start: 3px solid var(--i); background: var(--p2); }
.standing .keys { margin-block-start: .3rem; }
.counter .signs { display: grid; gap: .6rem; }
.counter .line-entry { align-items: end; padding-block-end: .9rem; border-block-end: 1px solid var(--l); }
.counter .line-entry label { flex: 1 1 16rem; min-inline-size: 0; display: grid; gap: .15rem; }
.counter .line-entry label span { font-size: .9em; color: var(--i2); }
.counter .line-entry input { min-block-size: 48px; inline-size: 100%; border-width: 1px; background: var(--p2); }
.counter .line-entry .key { min-block-size: 48px; }
.counter .key { min-block-size: 48px; align-items: center; padding: .45rem .8rem; border-width: 1px; border-block-end-width: 3px; }
.counter .key:active { border-block-end-width: 1px; margin-block-start: 2px; }
.counter .key .at { min-inline-size: 1.3rem; flex: none; }
.counter .key.take .at { color: inherit; }
.counter .key .label { font-weight: 700; }
.counter .key.small { min-block-size: 44px; border-block-end-width: 2px; background: var(--p2); gap: .5rem; }
.counter .key.small .at { min-inline-size: 0; }
.counter .key.small .label { font-weight: 400; flex: none; max-inline-size: 100%; }
.counter .keys { grid-template-columns: repeat(auto-fill, minmax(min(100%, 19rem), 1fr)); gap: .55rem; }
.counter .keys.row { display: flex; flex-wrap: wrap; }
.counter h3 { font-weight: 700; color: var(--i2); font-size: .95em; }
.sure { font-size: 1.15em; max-inline-size: 46rem; }
.taken { color: var(--i2); font-size: .95em; display: flex; flex-wrap: wrap; gap: 0 .4rem; }
.taken li { display: inline; }
.taken li + li + li:not(.unlisted)::before { content: '· '; }
.taken .unlisted { flex-basis: 100%; color: var(--i); font-weight: 700; }
.until { display: flex; flex-wrap: wrap; gap: 0 .5rem; color: var(--i2); }
.until .ruler { display: none; }
.coming { display: flex; flex-wrap: wrap; gap: 0 .6rem; padding-block-start: .8rem; border-block-start: 1px dashed var(--l); color: var(--i2); font-size: .95em; }
.coming ol { display: contents; }
.coming li + li::before { content: '· '; }
.how-to { display: grid; gap: .3rem; max-inline-size: 46rem; padding-inline-start: .9rem; border-inline-start: 3px solid var(--l); color: var(--i2); }
.practice { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: baseline; gap: 0 1.5rem; padding: .35rem .9rem; border: 1px dashed var(--i2); }
.invented { font-size: .85em; color: var(--i2); display: flex; flex-wrap: wrap; align-items: center; gap: 0 .8rem; }
.counter .notes { order: 1; display: grid; gap: .3rem; position: sticky; inset-block-end: .5rem; z-index: 2; padding: .6rem .9rem; border: 1px solid var(--i); border-inline-start: 3px solid var(--a); background: var(--p2); }
/* What takes figures or a list is in sight however much stands above it, and over a message. */
:is(.figures, .usual) > .keys.row { position: sticky; inset-block-end: calc(var(--notes, 0px) + .5rem); z-index: 1; padding-block-start: .3rem; background: var(--p); }
.figure input { scroll-margin-block-end: calc(var(--notes, 0px) + 5rem); }
.counter .notes.empty { display: block; padding: 0; border: 0; }
.counter .notes .notice { font-weight: 700; }
.not-told { display: grid; gap: .3rem; padding: .7rem .9rem; border: 1px solid var(--l); border-inline-start: 3px solid var(--a); background: var(--p2); }
.to-do { display: grid; gap: .3rem; max-inline-size: 46rem; }
.told li { display: flex; gap: .4rem; align-items: center; }
.told .fix { min-block-size: 44px; min-inline-size: 44px; margin-inline-start: auto; border: 1px solid var(--l); border-radius: 2px; background: var(--p2); font-size: 1.2em; cursor: pointer; }
.to-do li { padding-inline-start: 1rem; position: relative; }
.to-do li::before { content: ''; position: absolute; inset-inline-start: 0; inset-block-start: .6em; inline-size: .45rem; block-size: .15rem; background: var(--i2); }
.usual { display: grid; gap: .7rem; }
.usual ol { display: grid; gap: .4rem .55rem; grid-template-columns: repeat(auto-fill, minmax(min(100%, 19rem), 1fr)); }
.usual li { display: grid; grid-template-rows: 1fr auto; gap: .2rem; }
.counter .line-key { border-block-end-width: 2px; background: var(--p2); }
.counter .line-key .label { display: flex; flex-wrap: wrap; gap: 0 .5rem; font-weight: 400; }
.counter .line-key .what { color: var(--i2); }
.figures { display: grid; gap: .7rem; }
.figure { display: grid; grid-template-columns: minmax(8rem, 11rem) minmax(0, 1fr); gap: 0 1.25rem; align-items: end; }
.figure label, .figure .how-to, .figure .keys { grid-column: 1 / -1; }
.figure label { font-weight: 700; margin-block-end: .1rem; }
.figures > .keys .hint { align-self: center; }
.figure .how-to { margin-block-end: .3rem; }
.counter .display { border-width: 1px; padding-inline: .6rem; align-self: start; }
.counter .display input { min-block-size: 48px; font-size: 1.8rem; }
/* What was read on a vehicle stands side by side, each with a word; names of two lines move no field. */
.by-hand .figures { grid-template-columns: repeat(auto-fit, minmax(min(15rem, 100%), 1fr)); gap: 0 1.5rem; align-items: start; }
.by-hand .figure { grid-template: subgrid / minmax(0, 1fr); grid-row: span 5; margin-block-end: .6rem; }
.by-hand .display { max-inline-size: 11rem; }
.by-hand .figure:has(label) label { grid-row: auto; align-self: end; padding-block-end: .3rem; }
.by-hand .figure:has(label) .means { grid-area: auto; place-self: start; min-block-size: 1.4em; max-inline-size: none; text-align: start; }
.by-hand .figures > .keys.row { grid-column: 1 / -1; position: static; }
/* What each of six cells shows is typed into one field: it grows over the scale. */
.figure .display:has(input.long) { grid-column: 1 / -1; max-inline-size: 34rem; }
.counter .display .unit { font-size: 1.3rem; }
.figure .means { grid-column: 1 / -1; min-block-size: 1.4em; color: var(--i2); }
.figure .means.wrong { color: var(--i); font-weight: 700; }
.figure .means.wrong::before { content: '! '; color: var(--a); }
/* On the counter a tint says good, as on the scale of a figure that is typed. */
.counter .ruler .band.odd { fill: var(--p2); }
.bench-ruler { display: block; inline-size: 100%; max-inline-size: 30rem; block-size: auto; overflow: visible; direction: ltr; }
.bench-ruler text { font-size: 14px; fill: var(--i2); font-family: inherit; font-variant-numeric: tabular-nums lining-nums; }
.bench-ruler .bound { fill: var(--i); font-weight: 700; }
.bench-ruler .axis { stroke: var(--i); stroke-width: 1.5; }
.bench-ruler .band { fill: var(--p2); stroke: var(--i2); stroke-width: .75; }
.bench-ruler .band.good { fill: var(--odd); }
.bench-ruler .band.here { fill: var(--here); stroke: var(--here); }
.bench-ruler .zone { fill: var(--i); opacity: .55; }
.bench-ruler .spread { fill: var(--i); opacity: .35; }
.bench-ruler .mark { fill: var(--i); }
.day-entry { display: flex; flex-wrap: wrap; align-items: start; gap: .6rem 1rem; }
.day-entry .typed { display: grid; gap: .2rem; }
.day-entry label, .counter .day-entry .field span { line-height: 1.4; }
.day-entry.labelled > .key { margin-block-start: calc(1.4em + .2rem); }
.day-entry .field { gap: .2rem; }
.day-entry .field span { font-size: 1em; color: inherit; }
.day-entry .price input { max-inline-size: 9rem; }
.counter .wrong { max-inline-size: 24rem; color: var(--i); font-weight: 700; }
.counter .wrong::before { content: '! '; color: var(--a); }
.facts .unlisted, .facts .hint.price { grid-column: 1 / -1; }
.day-entry input, .day-pick input { min-block-size: 48px; padding-inline: .75rem; border: 1px solid var(--i2); border-radius: 2px; background: var(--p2); font-size: 1.2em; }
.camera { display: grid; gap: .5rem; }
.camera video { inline-size: 100%; max-inline-size: 30rem; background: #000; }
.ledger { grid-area: ledger; display: grid; gap: 1.25rem; align-content: start; padding: 1rem 1.5rem 3rem 0; }
[dir='rtl'] .ledger { padding: 1rem 0 3rem 1.5rem; }
.slip-title { font-weight: 700; font-size: 1.3em; line-height: 1.2; }
.printed {
  display: grid;
  gap: .6rem;
  padding: 1rem 2rem 1.4rem;
  border: 1px solid var(--l);
  background:
    radial-gradient(circle at 50% 50%, var(--l) 0 3.5px, transparent 4.2px) 4px 6px / 14px 22px repeat-y,
    radial-gradient(circle at 50% 50%, var(--l) 0 3.5px, transparent 4.2px) calc(100% - 4px) 6px / 14px 22px repeat-y,
    var(--p2);
}
.printed header { display: flex; justify-content: space-between; gap: 1rem; padding-block-end: .5rem; border-block-end: 1px dashed var(--l); }
.printed h3 { margin: 0; font-size: 1.05em; color: inherit; }
.printed h4 { margin: 0; font-weight: 700; font-size: .95em; color: var(--i2); }
.printed dl { margin: 0; }
.printed dl div { display: flex; flex-wrap: wrap; gap: 0 .5rem; }
.printed dt { color: var(--i2); }
.printed dt::after { content: ':'; }
.printed dd { margin: 0; font-weight: 700; }
.printed ul li { padding-inline-start: 1rem; position: relative; }
.printed ul li::before { content: '•'; position: absolute; inset-inline-start: 0; }
.printed ol { display: grid; gap: .5rem; }
.printed small { display: block; font-size: .8em; }
.printed figure { margin: 0; }
.printed .picture svg { max-inline-size: 100%; block-size: auto; }
.printed .code { flex: none; inline-size: 6.5rem; font-size: .7em; }
.printed .block { display: grid; gap: .15rem; }
.printed .to-sign { display: grid; grid-template-columns: 1fr 1fr; gap: 2rem; margin-block-start: 2rem; font-size: .85em; }
.printed .to-sign span { border-block-start: 1px solid var(--i2); padding-block-start: .2rem; }
.facts, .vehicle { display: grid; gap: .5rem; padding: .75rem .8rem .8rem; background: var(--p2); border: 1px solid var(--l); }
.fields { display: grid; grid-template-columns: 1fr 1fr; gap: .45rem .7rem; }
.field { display: grid; gap: .1rem; min-inline-size: 0; align-content: start; }
.field.name, .field.picked { grid-column: 1 / -1; }
.field span { font-size: .85em; color: var(--i2); }
.fields input, .fields select { min-block-size: 44px; min-inline-size: 0; inline-size: 100%; padding-inline: .5rem; border: 1px solid var(--i2); border-radius: 2px; background: var(--p); }
.file { position: relative; overflow: hidden; justify-self: start; }
.file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; font-size: 0; }
.file:focus-within { outline: 3px solid var(--a); outline-offset: 2px; }
.counter .line { min-block-size: 40px; }
.counter .line .number { padding-block-start: .65rem; }
.counter .line .fix { min-block-size: 44px; min-inline-size: 44px; }
.others-list { grid-area: waiting; padding: 1rem 1.5rem 3rem; border-block-start: 1px solid var(--l); }
.others-list h2 { font-weight: 700; color: var(--i2); margin-block-end: .4rem; }
.others-list button {
  display: grid;
  grid-template-columns: minmax(10rem, 2fr) minmax(9rem, 1.6fr) minmax(6rem, 1fr);
  gap: 0 1rem;
  inline-size: 100%;
  min-block-size: 44px;
  align-items: center;
  padding: .4rem .9rem;
  margin-block-end: .4rem;
  border: 1px solid var(--l);
  border-block-end: 2px solid var(--i2);
  border-radius: 2px;
  background: var(--p2);
  text-align: start;
  cursor: pointer;
}
.others-list button:hover b { text-decoration: underline; }
.others-list .more { color: var(--i2); font-size: .9em; }
.report { padding: 1.5rem; display: grid; gap: 1rem; max-inline-size: 64rem; }
.report h2 { font-weight: 700; font-size: 1.6rem; }
.report table { border-collapse: collapse; }
.report th { text-align: start; vertical-align: baseline; padding: .3rem 0; padding-inline-end: 1.4rem; font-weight: 700; }
.report td { padding: .4rem 0; padding-inline-end: 1.4rem; vertical-align: baseline; border-block-start: 1px solid var(--grid); }
.slip-again { min-block-size: 24px; padding: 0; border: 0; background: none; font: inherit; color: inherit; text-align: start; text-decoration: underline; text-underline-offset: .2em; cursor: pointer; }
.report td.amount, .report th:last-child { text-align: end; padding-inline-end: 0; }
.report td.amount { font-variant-numeric: tabular-nums lining-nums; white-space: nowrap; font-weight: 700; }
.report kbd { font: inherit; font-weight: 700; white-space: nowrap; }
.report .refused { font-weight: 700; }
.wide { overflow-x: auto; }
.wide table { min-inline-size: 34rem; overflow-wrap: normal; }
.day-pick { justify-self: start; }
.sums { display: grid; gap: .4rem; padding: .9rem 1rem; border: 1px solid var(--i); background: var(--p2); justify-self: start; }
.sums .paid { font-weight: 700; }
.led { display: grid; gap: .9rem; }
.led li { display: grid; grid-template-columns: 10rem minmax(0, 1fr); gap: 0 1rem; align-items: center; }
.led b { grid-column: 1 / -1; }
.marks { display: block; max-inline-size: 100%; block-size: auto; }
[dir='rtl'] .marks { transform: scaleX(-1); }
.marks .good { fill: var(--here); stroke: var(--i); stroke-width: 1; }
.marks .failed { fill: none; stroke: var(--i); stroke-width: 1.5; }
.day-list > .printed { display: none; }
/* On a low screen a list and the key that takes it are seen together. */
@media (max-height: 58rem) and (min-width: 40.1rem) {
  .counter .head { padding-block: .3rem; }
  .counter .card { gap: .6rem; padding-block-start: .6rem; }
  .counter .card > .sentence { font-size: 1.6rem; }
  .counter .card > .tag + .sentence { margin-block-start: -.4rem; }
  .counter .line-entry { padding-block-end: .5rem; }
  .counter .line-key { min-block-size: 44px; padding-block: .25rem; }
  .figures { gap: .2rem; }
  .figure .means { min-block-size: 0; }
  .figure:not(:has(.bench-ruler)) .means { grid-column: 2; align-self: center; }
  .figure:has(label) { max-inline-size: 43rem; }
  .figure:has(label) :is(label, .means) { grid-column: 1 / -1; grid-row: 1; }
  .figure:has(label) .means { justify-self: end; align-self: end; max-inline-size: calc(100% - 14rem); text-align: end; }
  .figure:has(label) .means.wrong { grid-row: auto; justify-self: start; max-inline-size: none; text-align: start; }
}
@media (max-width: 64rem) {
  .bench { grid-template-columns: minmax(0, 1fr); grid-template-areas: 'card' 'ledger' 'waiting'; grid-template-rows: none; }
  .ledger, [dir='rtl'] .ledger { padding: 0 1.5rem 2rem; }
}
@media (max-width: 40rem) {
  /* Here a message at the foot would lie over the keys: it stands above the question. */
  .counter .notes { order: 0; position: static; }
  :is(.figures, .usual) > .keys.row { inset-block-end: .5rem; }
  .figure input { scroll-margin-block-end: 5rem; }
  .figures > .keys.row { position: static; }
  .counter .head { padding: .4rem 1rem; display: grid; grid-template-columns: minmax(0, 1fr) auto; }
  .shop-name { grid-column: 1; font-size: .9em; }
  .shop-name:empty { display: none; }
  .counter .head-keys { display: contents; }
  .counter .language { grid-column: 2; grid-row: 1 / span 2; margin: 0; }
  .counter .language span { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  .counter .head-list { grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: .3rem; }
  .counter .head-key { flex: 1 1 4.4rem; min-inline-size: min-content; padding: .2rem; font-size: .85em; line-height: 1.15; overflow-wrap: normal; }
  .counter .line-entry { gap: .4rem; }
  .counter .line-entry label { display: contents; }
  .counter .line-entry label span { flex: 1 0 100%; }
  .counter .line-entry input { flex: 1 1 8rem; }
  .counter .card, .others-list, .report { padding-inline: 1rem; }
  .ledger, [dir='rtl'] .ledger { padding-inline: 1rem; }
  .others-list button, .figure { grid-template-columns: minmax(0, 1fr); }
  .figure .means { min-block-size: 2.8em; }
  .bench-ruler { margin-block-start: .5rem; }
  .printed { padding-inline: 1.6rem; }
  .wide table { min-inline-size: 0; inline-size: 100%; }
  .wide thead { display: none; }
  .wide tr { display: grid; grid-template-columns: 3.6rem minmax(0, 1fr) auto; gap: 0 .6rem; padding-block: .5rem; border-block-start: 1px solid var(--grid); }
  .wide td { padding: 0; border: 0; grid-column: 2 / -1; }
  .wide td:nth-child(1) { grid-column: 1; }
  .wide td:nth-child(2) { grid-row: 1; font-weight: 700; }
  .wide td:nth-child(3) { grid-column: 2; }
  .wide td.amount { grid-column: 3; grid-row: 2; }
}
@media (max-width: 24rem) { .fields { grid-template-columns: 1fr; } }
@media (forced-colors: active) {
  .key, .head-key, .printed, .facts, .vehicle, .sums { border-color: ButtonText; }
  .bench-ruler text { fill: CanvasText; }
  .bench-ruler .axis { stroke: CanvasText; }
  .bench-ruler .band, .bench-ruler .band.good { fill: Canvas; stroke: CanvasText; }
  .bench-ruler .band.here { fill: Highlight; stroke: CanvasText; }
  .bench-ruler .mark, .bench-ruler .zone, .bench-ruler .spread { fill: CanvasText; }
  .marks .good { fill: Highlight; stroke: CanvasText; }
  .marks .failed { stroke: CanvasText; }
}
@media print {
  .page.counter { background: #fff; color: #000; font-size: 11pt; min-block-size: 0; }
  .head, .counter .card, .others-list, .ledger > :not(.printed), .report .keys, .day-pick { display: none !important; }
  .bench, .ledger, [dir='rtl'] .ledger { display: block; padding: 0; }
  .day-list.again > :not(.printed) { display: none !important; }
  .slip-again { text-decoration: none; }
  .printed, .day-list > .printed { display: grid; gap: .5rem; border: 0; padding: 0; background: none; }
  .printed dt, .printed h4 { color: #000; }
  .printed .facts-block dl { columns: 2; column-gap: 8mm; }
  .printed .facts-block dl div { break-inside: avoid; }
  .printed .strip-block ol { display: block; columns: 2; column-gap: 8mm; }
  .printed header { border-block-end: 1px solid #000; padding-block-end: .4rem; }
  .printed h3 { font-size: 1.4em; font-weight: 700; }
  .printed h4 { font-size: 1em; break-after: avoid; }
  .printed .block:not(.strip-block) { break-inside: avoid; }
  .printed li { break-inside: avoid; }
  .printed .picture svg { max-inline-size: 80mm; }
  .printed .code { inline-size: 32mm; }
  .printed .to-sign { margin-block-start: 2.5rem; font-size: 1em; }
  .printed .to-sign span { border-block-start: 1px solid #000; }
}
`;

let sheet: CSSStyleSheet | undefined;

/** The style sheet of every counter, made once. */
export function counterLook(): CSSStyleSheet {
  if (sheet === undefined) {
    sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
  }
  return sheet;
}
