import { expect, test } from 'vitest';
import { createLearner } from './learner.ts';

/** So many steps, each told of. */
function* steps(count: number, onStep: () => void): Generator<undefined, undefined> {
  for (let step = 0; step < count; step += 1) {
    onStep();
    yield;
  }
}

/** A learner, and what goes on with it; true where there was something to go on with. */
function learning() {
  const later: (() => void)[] = [];
  const learner = createLearner((goOn) => {
    later.push(goOn);
    return () => (later.length = 0);
  });
  const goOn = (): boolean => {
    const next = later.shift();
    next?.();
    return next !== undefined;
  };
  return { learner, goOn };
}

test('learns one language after the other, to the end', () => {
  const { learner, goOn } = learning();
  const learned: string[] = [];
  learner.learn(steps(3, () => learned.push('en')));
  learner.learn(steps(2, () => learned.push('pl')));
  expect(learned).toEqual([]);
  while (goOn());
  expect(learned).toEqual(['en', 'en', 'en', 'pl', 'pl']);
});

test('leaves room between the steps for whoever writes meanwhile', () => {
  const { learner, goOn } = learning();
  let learned = 0;
  learner.learn(steps(1000, () => (learned += 1)));
  expect(goOn()).toBe(true);
  expect(learned).toBeGreaterThan(0);
  expect(learned).toBeLessThan(50);
});

test('learns another language once all was learned', () => {
  const { learner, goOn } = learning();
  const learned: string[] = [];
  learner.learn(steps(1, () => learned.push('en')));
  while (goOn());
  learner.learn(steps(1, () => learned.push('pl')));
  while (goOn());
  expect(learned).toEqual(['en', 'pl']);
});

test('learns nothing more once it is stopped', () => {
  const { learner, goOn } = learning();
  let learned = 0;
  learner.learn(steps(1000, () => (learned += 1)));
  goOn();
  const before = learned;
  learner.stop();
  expect(goOn()).toBe(false);
  expect(learned).toBe(before);
});

test('learns again what is to be learned after it was stopped', () => {
  const { learner, goOn } = learning();
  let learned = 0;
  learner.learn(steps(1000, () => (learned += 1)));
  learner.stop();
  learner.learn(steps(1, () => (learned += 1)));
  while (goOn());
  expect(learned).toBe(1);
});
