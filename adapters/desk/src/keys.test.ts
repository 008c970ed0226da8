import { describe, expect, test } from 'vitest';
import { goesOn, keyOf, mayBeginText, readKey } from './keys.ts';

describe('a key of the numeric pad', () => {
  test.each([
    ['3', 'one', { type: 'number', key: '3' }],
    ['3', 'several', { type: 'number', key: '3' }],
    ['3', 'figure', { type: 'line' }],
    ['0', 'one', { type: 'dont-know' }],
    ['0', 'figure', { type: 'line' }],
    [',', 'one', { type: 'cannot' }],
    [',', 'figure', { type: 'line' }],
    ['Enter', 'one', { type: 'line' }],
    ['Enter', 'several', { type: 'take' }],
    ['q', 'one', { type: 'line' }],
    ['ق', 'one', { type: 'line' }],
    ['Tab', 'one', undefined],
    ['F5', 'one', undefined],
    [' ', 'one', undefined],
  ] as const)('%j, where the card takes %s, means %j', (key, entry, pressed) => {
    expect(readKey(key, { entry })).toEqual(pressed);
  });

  test.each([
    ['-', { entry: 'figure', isSigned: true }, { type: 'line' }],
    ['-', { entry: 'figure', isSigned: false }, { type: 'correct' }],
    ['Backspace', { entry: 'figure', isSigned: true }, { type: 'correct' }],
    ['Enter', { entry: 'one', isOffered: true }, { type: 'take' }],
    ['F8', { entry: 'several' }, { type: 'number', key: 'F8' }],
  ] as const)('%j, where the card takes %j, means %j', (key, pressing, pressed) => {
    expect(readKey(key, pressing)).toEqual(pressed);
  });

  test.each(Object.entries(keyOf).filter(([command]) => !['take', 'leave'].includes(command)))(
    'for %s is the one that the page shows: %s',
    (command, key) => {
      expect(readKey(key, { entry: 'one' })).toEqual({ type: command });
    },
  );
});

describe('a digit', () => {
  test.each(['1', '0', '.', ','])('%j may begin a text: ".5", "2 children"', (key) => {
    expect(mayBeginText(key)).toBe(true);
  });

  test.each(['1', '.', ' ', 'v', 'ف', '٣'])('is part of a text where %j follows at once', (key) => {
    expect(goesOn(key)).toBe(true);
  });

  test.each(['Enter', '/', '+', '-', '=', 'Tab', 'Escape'])(
    'is an answer where %s follows',
    (key) => {
      expect(goesOn(key)).toBe(false);
    },
  );
});
