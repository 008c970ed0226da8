import { expect, test } from 'vitest';
import { conversationAt, conversationsOf, placeOf } from './place.ts';

test.each([{ chat: 42 }, { chat: -1001, thread: 3 }])('%j has a conversation', (place) => {
  const name = conversationAt(7, place);
  expect(name.startsWith(conversationsOf(7))).toBe(true);
  expect(placeOf(name)).toEqual(place);
});
