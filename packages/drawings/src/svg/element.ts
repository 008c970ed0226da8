/** What an attribute may be; numbers are written with at most two decimals. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

const named: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** What XML 1.0 has no way to hold, section 2.2. */
const unwritable = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

/** Text as it stands in XML, whoever wrote it. */
export function escapeText(text: string): string {
  return text.replace(unwritable, '').replace(/[&<>"]/g, (character) => named[character] ?? '');
}

/** A number as it is written into a picture: the same bytes on every machine. */
export function round(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}

/** One element of SVG as text; attributes that are undefined are left out. */
export function element(
  name: string,
  attributes: Attributes,
  children: readonly string[] = [],
): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => {
      const text = typeof value === 'number' ? String(round(value)) : escapeText(value ?? '');
      return ` ${key}="${text}"`;
    })
    .join('');
  return children.length === 0
    ? `<${name}${written}/>`
    : `<${name}${written}>${children.join('')}</${name}>`;
}
