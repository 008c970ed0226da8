/** The printed strip: sprocket holes along both edges, a faint grid, a line for every finding. */
export const stripCss = `
.strip {
  position: relative;
  padding: .75rem 2rem 1rem;
  background:
    radial-gradient(circle at 50% 50%, var(--l) 0 3.5px, transparent 4.2px) 4px 6px / 14px 22px repeat-y,
    radial-gradient(circle at 50% 50%, var(--l) 0 3.5px, transparent 4.2px) calc(100% - 4px) 6px / 14px 22px repeat-y,
    repeating-linear-gradient(var(--grid) 0 1px, transparent 1px 22px),
    var(--p);
}
.line {
  display: grid;
  grid-template-columns: auto 1fr auto;
  gap: 0 .6rem;
  align-items: center;
  border-block-end: 1px dashed var(--l);
  min-block-size: 48px;
}
.line .number { color: var(--i2); font-size: .8em; align-self: start; padding-block-start: .85rem; }
.line .finding { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 .6rem; padding-block: .5rem; min-inline-size: 0; }
/* Figures that stand under one another, or change in place. */
.number, .value, .ruler, .ranking, .digits, .display, .left, .numbers { font-variant-numeric: tabular-nums lining-nums; }
.read-before { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 .6rem; }
:is(.line, .read-before) .what { color: var(--i2); }
:is(.line, .read-before) .value { font-weight: 700; font-size: 1.15em; }
:is(.line, .read-before) .ruler { flex: 1 0 100%; }
.line.correcting { outline: 2px solid var(--a); outline-offset: -2px; }
.line:last-child .finding { animation: printed .28s ease-out; }
@keyframes printed { from { opacity: 0; transform: translateY(.6rem); } }
.fix {
  min-inline-size: 48px;
  min-block-size: 48px;
  border: 0;
  background: none;
  color: var(--i2);
  font-size: 1.2em;
  cursor: pointer;
}
.fix:hover { color: var(--a); }
.ruler { display: block; inline-size: 100%; max-inline-size: 26rem; block-size: auto; overflow: visible; margin-block-start: .15rem; }
.ruler text { font-size: 11px; fill: var(--i2); font-family: inherit; }
.ruler .label.here { fill: var(--i); font-weight: 700; }
.ruler .axis { stroke: var(--i); stroke-width: 1.5; }
.ruler .band { fill: var(--p2); stroke: var(--i2); stroke-width: .75; }
.ruler .band.odd { fill: var(--odd); }
.ruler .band.here { fill: var(--here); stroke: var(--here); }
.ruler .zone { fill: var(--i); opacity: .55; }
.ruler .expected { stroke: var(--i2); stroke-width: 2; stroke-dasharray: 2 3; }
.ruler .spread { fill: var(--i); opacity: .35; }
.ruler .mark { fill: var(--i); }
.fits { margin-block-start: .5rem; }
.fits summary { min-block-size: 48px; display: flex; align-items: center; gap: .5rem; cursor: pointer; color: var(--i2); }
.fits summary::before { content: '+'; font-weight: 700; inline-size: 1ch; }
.fits[open] summary::before { content: '−'; }
.fits summary::-webkit-details-marker { display: none; }
.ranking { display: grid; gap: .5rem; padding-block: .25rem .5rem; }
.bar { display: block; inline-size: 100%; block-size: .6rem; margin-block-start: .15rem; }
[dir='rtl'] .bar { transform: scaleX(-1); }
.bar .rail { fill: var(--odd); }
.bar .share { fill: var(--here); transition: width .3s ease-out; }
.bar .before { fill: var(--i); }
.verdict { margin-block: 1rem .5rem; padding: .9rem 1rem; border: 3px solid var(--i); background: var(--p2); scroll-margin-block: calc(var(--keyturn-top, 0px) + var(--head, 4rem) + .75rem) 1rem; }
.verdict .key { margin-block: .6rem; }
.verdict h2 { font-weight: 700; font-size: 1.3em; line-height: 1.2; }
.verdict .signs { display: grid; gap: .6rem; margin-block: .9rem; }
.verdict .strength { margin-block-start: .35rem; }
.verdict h3, .numbers h3 { font-weight: 700; margin-block-start: .9rem; }
.verdict li, .numbers li { padding-inline-start: 1.1rem; position: relative; margin-block-start: .25rem; }
.verdict li::before, .numbers li::before { content: ''; position: absolute; inset-inline-start: 0; inset-block-start: .55em; inline-size: .45rem; block-size: .15rem; background: var(--i2); }
/* A ruler needs the whole width of a narrow strip to be read: it goes below its number and its key. */
@media (max-width: 24rem) {
  .strip { padding-inline: 1.25rem; }
  .line:has(.ruler) .fix { align-self: start; }
  .line .ruler { flex: none; inline-size: calc(100% + 48px + 2.4rem); max-inline-size: none; margin-inline-start: -1.8rem; }
}
@media (prefers-reduced-motion: reduce) {
  .line:last-child .finding { animation: none; }
  .bar .share { transition: none; }
}
@media print { .fix { display: none; } }
`;
