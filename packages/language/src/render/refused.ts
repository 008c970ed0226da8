import type { RefusedMessage } from '@keyturn/core';
import type { Rendered } from '../rendered.ts';
import { unitSigns } from '../numbers/unit.ts';
import type { Voice } from '../voice.ts';

/** An input that was not taken: what was wrong with it, and what is possible. */
export function renderRefused(message: RefusedMessage, voice: Voice): Rendered[] {
  return [{ kind: 'refused', text: wording(message, voice) }];
}

function wording(message: RefusedMessage, voice: Voice): string {
  const { say, flow } = voice;
  const { code } = message;
  const given = givenOf(message, voice);
  const possible = sayPossible(message, voice);
  const name =
    message.check === undefined ? say('refused.thisCheck') : flow.checkName(message.check);
  switch (code) {
    case 'not-an-input':
      return say(`refused.${code}`, { possible });
    case 'unknown-check':
    case 'unknown-choice':
    case 'unknown-unit':
    case 'not-a-number':
    case 'unknown-interrupt':
    case 'unknown-context':
      return say(`refused.${code}`, { given, possible });
    case 'no-such-day':
    case 'day-to-come':
    case 'day-long-ago':
    case 'no-terms':
      return say(`refused.${code}`, { given, name, possible });
    case 'wrong-unit':
    case 'not-this-kind':
      return say(`refused.${code}`, { given, name, possible });
    case 'one-choice':
      return say('refused.one-choice', { name, possible });
    case 'not-answered-yet':
    case 'too-early':
      return say(`refused.${code}`, { name });
    case 'implausible':
      return say('refused.implausible', {
        given,
        name,
        range: sayRange(message, voice),
        help: sayHelp(message, voice),
      });
    case 'wrong-load':
      return sayLoad(message, voice);
    case 'nothing-to-confirm':
    case 'nothing-to-resume':
    case 'resume-first':
    case 'nothing-before':
    case 'closed':
    case 'clock-back':
      return say(`refused.${code}`);
  }
}

/** What was given; a unit as the language writes it. */
function givenOf({ code, given }: RefusedMessage, { figures }: Voice): string {
  const isUnit = code === 'wrong-unit' || code === 'unknown-unit';
  return isUnit && Object.hasOwn(unitSigns, given) ? figures.unitSign(given) : given;
}

/** The load that was told, and the one of the test. */
function sayLoad({ load }: RefusedMessage, { say, figures }: Voice): string {
  if (load === undefined) return say('refused.readAgain');
  const amperes = (value: number): string => figures.formatQuantity({ value, unit: 'A' });
  return say('refused.wrong-load', {
    load: amperes(load.told),
    rating: amperes(load.rating),
    half: amperes(load.half),
  });
}

function sayRange({ range }: RefusedMessage, { say, figures }: Voice): string {
  if (range === undefined) return say('refused.noRange');
  const { low, high, unit } = range;
  return say('refused.range', {
    low: figures.formatQuantity({ value: low, unit }),
    high: figures.formatQuantity({ value: high, unit }),
  });
}

function sayHelp({ likely, hint }: RefusedMessage, { say, figures }: Voice): string {
  const is24 = hint === 'nominal-24';
  if (likely === undefined) return is24 ? say('refused.nominal') : say('refused.readAgain');
  const figure = figures.formatQuantity(likely);
  return say(is24 ? 'refused.likelyNominal' : 'refused.likely', { figure });
}

function sayPossible(message: RefusedMessage, voice: Voice): string {
  const { say, figures } = voice;
  const words = message.possible.slice(0, mostPossible).map((id) => wordFor(id, message, voice));
  return words.length === 0
    ? say('refused.plain')
    : say('refused.possible', { list: figures.listAny(words) });
}

/** A list longer than this is no help. */
const mostPossible = 8;

/** What is possible comes as ids of several sorts; the code says which sort is meant. */
function wordFor(id: string, { code, check }: RefusedMessage, { flow, figures }: Voice): string {
  const { texts } = flow;
  if (code === 'unknown-unit' || code === 'wrong-unit' || code === 'not-a-number') {
    return Object.hasOwn(unitSigns, id) ? figures.figureIn(id) : id;
  }
  if (code === 'unknown-check') return flow.checkName(id);
  if (code === 'unknown-interrupt') return flow.interrupt(id).name;
  if (code === 'unknown-context') return id;
  const answers = check === undefined ? undefined : flow.check(check).answers;
  if (check !== undefined && answers !== undefined && Object.hasOwn(answers, id)) {
    return flow.answerLabel(check, id);
  }
  if (Object.hasOwn(texts.checks, id)) return flow.checkName(id);
  return Object.hasOwn(unitSigns, id) ? figures.figureIn(id) : id;
}
