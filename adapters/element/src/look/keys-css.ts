/** Answer keys, the pad and the foot: for one hand in a glove. */
export const keysCss = `
.keys { display: grid; gap: .6rem; }
.key {
  position: relative;
  display: flex;
  align-items: center;
  gap: .75rem;
  min-block-size: 56px;
  padding: .5rem .9rem;
  border: 2px solid var(--i2);
  border-block-end-width: 5px;
  border-radius: 4px;
  background: var(--k);
  color: var(--i);
  text-align: start;
  cursor: pointer;
  touch-action: manipulation;
}
.key:hover { border-color: var(--i); }
.key:active { border-block-end-width: 2px; margin-block-start: 3px; }
.key:disabled { color: var(--i2); border-style: dashed; cursor: default; }
.key .label { flex: 1; min-inline-size: 0; }
.key .at { min-inline-size: 1.6rem; font-weight: 700; color: var(--i2); }
.key.pick[aria-pressed='true'] { border-color: var(--a); box-shadow: inset 0 0 0 2px var(--a); font-weight: 700; }
.key .tick { inline-size: 1.2rem; font-weight: 700; color: var(--a); }
.key.take, .key.hold { background: var(--a); border-color: var(--a); color: var(--ai); font-weight: 700; }
.keys > .key.take:enabled { position: sticky; inset-block-end: .5rem; z-index: 1; box-shadow: 0 0 0 .5rem var(--p2); }
.key.emergency { background: #a83a00; border-color: #a83a00; color: #fff; font-weight: 700; text-decoration: none; }
.key.take:disabled { background: var(--k); color: var(--i2); border-color: var(--i2); }
.key.small { min-block-size: 48px; padding: .3rem .75rem; justify-content: center; text-align: center; border-block-end-width: 3px; }
.key.hold { overflow: hidden; touch-action: none; user-select: none; -webkit-user-select: none; -webkit-touch-callout: none; }
.key.hold:active { border-block-end-width: 5px; margin-block-start: 0; }
.key.hold .label { position: relative; }
.key.hold .lift, .key.hold.full .label { display: none; }
.key.hold.full .lift { display: block; }
.key.hold .fill { position: absolute; inset: 0; background: var(--fill); transform: scaleX(0); transform-origin: left; }
[dir='rtl'] .key.hold .fill { transform-origin: right; }
.key.hold.held .fill { transform: scaleX(1); transition: transform .8s linear; }
.key.low-danger { background: #a83a00; border-color: #a83a00; color: #fff; font-weight: 700; }
.hint { color: var(--i2); font-size: .9em; }
.hint.short { color: var(--i); font-size: 1em; font-weight: 700; }
.hint.short::before { content: '! '; color: var(--a); }
.others { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 6.5rem), 1fr)); gap: .6rem; }
.pad { display: grid; gap: .6rem; max-inline-size: 26rem; }
.display {
  display: flex;
  align-items: baseline;
  gap: .5rem;
  direction: ltr;
  padding: .25rem .9rem;
  border: 2px solid var(--i);
  background: var(--p);
}
.display input {
  flex: 1;
  min-inline-size: 0;
  min-block-size: 64px;
  inline-size: 100%;
  border: 0;
  background: none;
  font-size: 2.75rem;
  font-weight: 700;
  text-align: end;
}
.display:focus-within { outline: 3px solid var(--a); outline-offset: 2px; }
.display input:focus { outline: none; }
.display .unit { font-size: 1.75rem; color: var(--i2); }
.digits { display: grid; grid-template-columns: repeat(4, 1fr); gap: .5rem; }
.digit {
  min-block-size: 60px;
  min-inline-size: 48px;
  padding: 0;
  border: 2px solid var(--i2);
  border-block-end-width: 5px;
  border-radius: 4px;
  background: var(--k);
  font-size: 1.6rem;
  font-weight: 700;
  cursor: pointer;
  touch-action: manipulation;
}
.digit:active { border-block-end-width: 2px; }
.digit.enter { grid-row: 3 / 5; grid-column: 4; background: var(--a); border-color: var(--a); color: var(--ai); font-size: 1.1rem; }
.digit.enter:disabled { background: var(--k); color: var(--i2); border-color: var(--i2); border-style: dashed; }
.digit.tall { grid-row: span 2; }
.digits .wide { grid-column: span 2; display: grid; }
.foot { padding: .75rem 1rem 1rem; background: var(--p2); border-block-start: 1px dashed var(--l); }
.foot { display: grid; gap: .6rem; }
.line-entry { display: flex; flex-wrap: wrap; gap: .6rem; }
.line-entry input {
  flex: 1 1 12rem;
  min-inline-size: 0;
  min-block-size: 48px;
  padding-inline: .75rem;
  border: 2px solid var(--i2);
  border-radius: 2px;
  background: var(--p);
}
.line-entry input::placeholder { color: var(--i2); opacity: 1; font-size: .9em; }
@media (prefers-reduced-motion: reduce) { .key.hold.held .fill { transition: none; transform: scaleX(0); } .key.hold.full .fill { transform: none; } }
`;
