import { GrammyError, HttpError } from 'grammy';
import { expect, test } from 'vitest';
import { describeError } from './describe-error.ts';

const token = '123456:ABC';

test('the token never gets into a line, wherever the library has put it', () => {
  const url = `https://api.example.org/bot${token}/sendMessage`;
  const error = new HttpError('Network request failed!', new Error(`request to ${url} failed`));
  expect(describeError(error, token)).toBe(
    'Network request failed! request to https://api.example.org/bot<token>/sendMessage failed',
  );
});

test('what people wrote does not get into a line', () => {
  const answer = { ok: false, error_code: 400, description: 'Bad Request: x' } as const;
  const error = new GrammyError('Call failed!', answer, 'sendMessage', { text: 'a secret' });
  expect(describeError(error, token)).toBe('sendMessage: 400 Bad Request: x');
});

test('a line stays a line', () => {
  expect(describeError(new Error('one\ntwo'), token)).toBe('one two');
  expect(describeError('thrown', token)).toBe('thrown');
});
