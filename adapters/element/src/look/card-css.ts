/** The card below the strip, safety signs, waits. */
export const cardCss = `
.card {
  display: grid;
  gap: .9rem;
  padding: 1rem;
  background: var(--p2);
  border-block-start: 3px solid var(--i);
  scroll-margin-block: calc(var(--keyturn-top, 0px) + var(--head, 4rem)) var(--foot, 8rem);
}
.card > h2 { font-weight: 700; font-size: 1.35em; line-height: 1.25; }
.card .tag { color: var(--a); font-weight: 700; }
.notes { display: grid; gap: .5rem; padding-inline-start: .8rem; border-inline-start: 4px solid var(--l); }
.notes.empty { display: none; }
/* On a telephone the line for own words is to be seen below the first question. */
@media (max-width: 30rem) { .card { gap: .65rem; padding-block: .75rem; } .card .keys { gap: .45rem; } .notes p:not(.refused) { font-size: .9em; } }
.notes .refused { font-weight: 700; }
.notes .refused::before { content: '! '; color: var(--a); }
p.how { color: var(--i2); }
.how summary { min-block-size: 48px; display: flex; align-items: center; gap: .5rem; cursor: pointer; color: var(--i2); }
.how summary::before { content: '+'; font-weight: 700; inline-size: 1ch; }
.how[open] summary::before { content: '−'; }
.how summary::-webkit-details-marker { display: none; }
/* Numbers are what answers are tapped by. */
.how ol { display: grid; gap: .4rem; }
.how li { display: grid; grid-template-columns: 1.1rem 1fr; }
.how li::before { content: '–'; font-weight: 700; color: var(--i2); }
.picture { margin: 0; }
.picture svg { display: block; inline-size: 100%; max-inline-size: 30rem; block-size: auto; }
.picture text { font-family: var(--keyturn-font, 'Keyturn Hyperlegible', system-ui, sans-serif); }
.sign { border: 2px solid var(--sign); background: var(--p); }
.sign .word {
  display: flex;
  align-items: center;
  gap: .5rem;
  padding: .3rem .75rem;
  background: var(--sign);
  color: var(--sign-ink);
  font-weight: 700;
  font-size: 1.15em;
  letter-spacing: .04em;
}
.signs { display: grid; gap: .5rem; }
.signs.small .word { padding-block: .05rem; font-size: 1em; }
.signs.small .text { padding: .35rem .75rem; font-size: .95em; line-height: 1.3; }
.sign .text { padding: .6rem .75rem; }
.sign .alert { inline-size: 1.4rem; block-size: 1.3rem; flex: none; }
.sign .alert path { fill: var(--sign-ink); }
.sign .alert .mark { fill: var(--sign); }
.sign.danger { --sign: #a83a00; --sign-ink: #fff; }
.sign.warning { --sign: #e69f00; --sign-ink: #000; }
.sign.caution { --sign: #f0e442; --sign-ink: #000; }
.sign.notice { --sign: #0072b2; --sign-ink: #fff; }
.wait { display: grid; gap: .5rem; }
.wait .left { font-size: 3.5rem; font-weight: 700; line-height: 1; }
.wait .bar { block-size: 1rem; }
`;
