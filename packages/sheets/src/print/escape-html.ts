const named: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** What no page can hold: controls, halves of pairs, and characters that are none. */
const unwritable = /[^\t\n\r\u0020-\u007e\u00a0-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

/** Text as it stands in HTML, in an element or an attribute in quotes, whoever wrote it. */
export function escapeHtml(text: string): string {
  return text.replace(unwritable, '').replace(/[&<>"']/g, (character) => named[character] ?? '');
}

/** Text as it stands in a CSS string, whoever wrote it. */
export function escapeCss(text: string): string {
  return text
    .replace(unwritable, '')
    .replace(
      /\W/gu,
      (character) => `\\${(character.codePointAt(0) ?? 0).toString(16).padStart(6, '0')}`,
    );
}
