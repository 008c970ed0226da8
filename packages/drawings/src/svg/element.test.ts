import { expect, test } from 'vitest';
import { element, escapeText } from './element.ts';

test('an element is written with its attributes, numbers to two decimals', () => {
  expect(element('circle', { cx: 1 / 3, cy: -0.001, r: 4, fill: undefined })).toBe(
    '<circle cx="0.33" cy="0" r="4"/>',
  );
  expect(element('g', {}, [element('path', { d: 'M0 0' })])).toBe('<g><path d="M0 0"/></g>');
});

test('text is never read as markup, and what XML cannot hold is left out', () => {
  expect(escapeText('<b> & "x" \u0000\uffff]]>')).toBe('&lt;b&gt; &amp; &quot;x&quot; ]]&gt;');
  expect(element('text', { lang: '"><script>' })).toBe('<text lang="&quot;&gt;&lt;script&gt;"/>');
});
