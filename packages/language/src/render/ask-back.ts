import type { Rendered } from '../rendered.ts';
import type { AnswerOffer, Doubt, Understood } from '../understand/understood.ts';
import type { Voice } from '../voice.ts';

/**
 * Asks back after a text that was not understood for certain: what was wrong, and what is
 * possible. Nothing for one that was.
 */
export function askBack(understood: Understood, voice: Voice): Rendered[] {
  switch (understood.type) {
    case 'input':
    case 'language':
      return [];
    case 'offers': {
      const answers = understood.offers.filter((one) => 'check' in one);
      if (understood.doubt !== undefined) return [questioned(understood.doubt, answers, voice)];
      const danger = understood.offers.find((one) => 'interrupt' in one);
      const text = danger ? voice.say('offers.danger', danger) : offered(answers, voice);
      return [{ kind: 'refused', text }];
    }
    case 'unclear':
      return [{ kind: 'refused', text: wording(understood, voice) }];
  }
}

/** What may have been meant; answers to one question name it once. */
function offered(offers: readonly AnswerOffer[], { say, flow, figures }: Voice): string {
  const [first, ...others] = offers;
  const check = first?.check ?? '';
  if (others.length > 0 && others.every((other) => other.check === check)) {
    const list = figures.listAny(offers.map(({ label }) => say('offers.answer', { label })));
    return say('offers.askOf', { name: flow.checkName(check), list });
  }
  const list = figures.listAny(
    offers.map((one) => say('offers.one', { label: one.label, name: flow.checkName(one.check) })),
  );
  return say(others.length === 0 ? 'offers.askOne' : 'offers.ask', { list });
}

/** A figure that cannot be a reading: why not, and the likely meaning. */
function questioned(
  { check, given, range, isRightAt24 }: Doubt,
  [likely]: readonly AnswerOffer[],
  { say, flow, figures }: Voice,
): Rendered {
  const write = (value: number): string => figures.formatQuantity({ value, unit: range.unit });
  const ask = (): string => {
    if (likely === undefined) return say(isRightAt24 ? 'refused.nominal' : 'refused.readAgain');
    const key = isRightAt24 ? 'refused.likelyNominal' : 'refused.likely';
    return say(key, { figure: likely.label });
  };
  const text = say('refused.implausible', {
    given: figures.formatQuantity(given),
    name: flow.checkName(check),
    range: say('refused.range', { low: write(range.low), high: write(range.high) }),
    help: ask(),
  });
  return { kind: 'refused', text };
}

function wording(unclear: Extract<Understood, { type: 'unclear' }>, voice: Voice): string {
  const { say } = voice;
  const { code, given } = unclear;
  const possible = sayPossible(unclear, voice);
  switch (code) {
    case 'empty':
    case 'nothing-to-confirm':
    case 'which-language':
      return say(`unclear.${code}`, { possible });
    case 'unknown-choice':
    case 'one-choice':
    case 'not-a-number':
    case 'not-a-day':
    case 'not-exact':
    case 'two-numbers':
    case 'unknown-unit':
    case 'which-check':
    case 'not-understood':
      return say(`unclear.${code}`, { given, possible });
    case 'too-long':
    case 'not-confirmed':
    case 'not-done':
    case 'waiting':
    case 'not-over':
    case 'closed':
      return say(`unclear.${code}`);
  }
}

function sayPossible(
  { code, possible }: Extract<Understood, { type: 'unclear' }>,
  voice: Voice,
): string {
  const { say, figures } = voice;
  if (possible.length === 0) return say('unclear.plain');
  const list = figures.listAny(possible);
  if (code === 'which-language') return list;
  return say('unclear.possible', { list });
}
