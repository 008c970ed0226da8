import { describe, expect, test } from 'vitest';
import { TypedAhead } from './typed-ahead.ts';

/** What is handed out after these keys. */
function after(...keys: readonly string[]): ReturnType<TypedAhead['release']> {
  const ahead = new TypedAhead();
  for (const key of keys) ahead.keep(key);
  return ahead.release();
}

describe('what is typed ahead of its question', () => {
  test('figures go into one field each', () => {
    expect(after('1', '0', '.', '9', 'Enter', '.', '2')).toEqual({ figures: ['10.9', '.2'] });
  });

  test('a mark begins a figure, also where the question comes before its first digit', () => {
    expect(after(',', '1')).toEqual({ figures: [',1'] });
    expect(after(',')).toEqual({ figures: [','] });
  });

  test('what is no figure is handed out as keys, and nothing as nothing', () => {
    expect(after('Enter', '2')).toEqual({ keys: '↵2' });
    expect(after('.', 'Enter')).toEqual({ keys: '.↵' });
    expect(after('1', 'Backspace')).toEqual({ keys: '' });
  });
});
