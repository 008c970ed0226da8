import { GrammyError, HttpError } from 'grammy';
import { describe, expect, test } from 'vitest';
import { fateOf, isUneditable, isUnchanged } from './fate.ts';

const refusal = (error_code: number, description: string, parameters = {}): GrammyError =>
  new GrammyError('x', { ok: false, error_code, description, parameters }, 'sendMessage', {});

describe('a message that could not be sent', () => {
  test.each([
    ['waits for as long as it is told', refusal(429, 'x', { retry_after: 7 }), 7000],
    ['waits longer each time after a failure', refusal(502, 'Bad Gateway'), 4000],
    ['the same where nothing was reached', new HttpError('x', new Error('reset')), 4000],
    ['and where the token is not taken for a while', refusal(401, 'Unauthorized'), 4000],
  ])('%s', (_, error, afterMs) => {
    expect(fateOf(error, 3)).toEqual({ type: 'again', afterMs });
  });

  test('waits ten minutes at most, and is given up in the end', () => {
    expect(fateOf(refusal(500, 'x'), 20)).toEqual({ type: 'again', afterMs: 600_000 });
    expect(fateOf(refusal(500, 'x'), 30)).toEqual({ type: 'refused' });
  });

  test('is over where it cannot even be made', () => {
    expect(fateOf(new RangeError('no scene has a place "x"'), 0).type).toBe('refused');
  });

  test('is over where the person has gone, or where it cannot be sent as it is', () => {
    expect(fateOf(refusal(403, 'Forbidden: bot was blocked by the user'), 0).type).toBe('gone');
    expect(fateOf(refusal(400, 'Bad Request: chat not found'), 0).type).toBe('refused');
  });
});

test('an edit that changes nothing is told from one that cannot be made', () => {
  expect(isUnchanged(refusal(400, 'Bad Request: message is not modified: …'))).toBe(true);
  expect(isUneditable(refusal(400, 'Bad Request: message to edit not found'))).toBe(true);
  expect(isUneditable(refusal(400, "Bad Request: message can't be edited"))).toBe(true);
  expect(isUneditable(refusal(400, 'Bad Request: chat not found'))).toBe(false);
});
