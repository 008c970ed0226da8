/**
 * What people are heard to say, from which understanding is learned: all of it belongs to something
 * that the flow asks or raises, and nothing is said to two answers of one question.
 */
import { localeTags } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';

/** Talk that is learned. */
const talk = ['dont-know', 'cannot', 'why', 'back', 'repeat', 'person', 'stop', 'correction'];

/** So many words of what tells nothing are left out at most; an apostrophe may part two. */
const mostOfAside = 6;

/** The least that is heard of each answer, and of each interrupt. */
const [leastOfAnswer, leastOfInterrupt] = [20, 140];

describe.each(localeTags)('in %s', (locale) => {
  const { chart, texts } = shippedFlow('no-start', locale);
  const { checks, interrupts } = chart.flow;
  const heard = texts.heard!;

  test('every question is one of the flow, and every answer one of its own', () => {
    for (const [id, answers] of Object.entries(heard.answers)) {
      expect(checks, id).toHaveProperty(id);
      const known = texts.checks[id]?.answers ?? texts.checks[checks[id]?.like ?? '']?.answers;
      for (const answer of Object.keys(answers)) expect(known, id).toHaveProperty(answer);
    }
    expect(Object.keys(heard.unclear).filter((id) => checks[id] === undefined)).toEqual([]);
    expect(Object.keys(heard.interrupts).sort()).toEqual(Object.keys(interrupts).sort());
    expect(Object.keys(heard.harmless).sort()).toEqual(Object.keys(interrupts).sort());
    expect(Object.keys(heard.signs!).sort()).toEqual(
      [...Object.keys(interrupts).filter((id) => id !== 'starts-now'), 'ordinary'].sort(),
    );
    expect(Object.keys(heard.talk).sort()).toEqual(talk.toSorted());
  });

  test('every sign names what is said, and the questions of the flow', () => {
    const signs = Object.values(heard.signs!).flat();
    const asked = signs.flatMap((sign) => [...sign.matchAll(/\?([a-z-]+)/g)].map(([, id]) => id!));
    expect(asked.filter((id) => checks[id] === undefined)).toEqual([]);
    const ways = signs.flatMap((sign) => sign.split(/[|,]/));
    expect(ways.filter((way) => way.replace(/^!/, '').trim() === '')).toEqual([]);
  });

  test('what tells nothing is short, and nothing that is said by itself', () => {
    const { answers, talk, interrupts, harmless } = heard;
    const said = [...Object.values(answers), talk, interrupts, harmless]
      .flatMap((by) => Object.values(by).flat())
      .map((one) => one.toLowerCase());
    const asides = heard.asides ?? [];
    expect(asides.length).toBeGreaterThan(200);
    expect(asides.filter((aside) => said.includes(aside))).toEqual([]);
    expect(asides.filter((aside) => aside.split(' ').length > mostOfAside)).toEqual([]);
    expect(new Set(asides).size).toBe(asides.length);
  });

  test('of each there is enough to learn from', () => {
    for (const [id, answers] of Object.entries(heard.answers)) {
      for (const [answer, said] of Object.entries(answers))
        expect(said.length, `${id} ${answer}`).toBeGreaterThanOrEqual(leastOfAnswer);
    }
    for (const [id, said] of Object.entries(heard.interrupts))
      expect(said.length, id).toBeGreaterThanOrEqual(leastOfInterrupt);
  });

  test('nothing says two answers to one question', () => {
    for (const [id, answers] of Object.entries(heard.answers)) {
      const all = Object.values(answers).flatMap((said) => said.map((one) => one.toLowerCase()));
      const twice = all.filter((one, at) => all.indexOf(one) !== at);
      expect([...new Set(twice)], id).toEqual([]);
    }
  });
});
