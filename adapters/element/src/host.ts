/**
 * What the host page says of the element.
 */

/** Where a case is kept when the page says nothing else. */
const usualKey = 'keyturn-case';

/** The key under which the case is kept in the browser; empty where none is to be kept. */
export function keptUnder(host: Element): string {
  return host.getAttribute('keep') ?? usualKey;
}

/** The language of the element, or of what it stands in, or of the browser, as a BCP 47 tag. */
export function wantedLanguage(host: Element): string {
  const near = host.closest('[lang]')?.getAttribute('lang') ?? '';
  return properTag(near === '' ? navigator.language : near);
}

/** Some pages and systems write a tag as "en_US" or "en-US@posix", which no formatter takes. */
function properTag(written: string): string {
  const [plain = ''] = written.replaceAll('_', '-').split(/[.@]/u, 1);
  try {
    return new Intl.Locale(plain).toString();
  } catch {
    return 'en';
  }
}

/** Of these tags the one that fits: the very tag, or that of its language alone. */
export function fittingTag(wanted: string, tags: readonly string[]): string | undefined {
  const base = wanted.split('-', 1)[0] ?? wanted;
  return [wanted, base].find((tag) => tags.includes(tag));
}

/** Whether a language is written from right to left. */
export function directionOf(locale: string): 'rtl' | 'ltr' {
  const isRight = new Set(['ar', 'fa', 'he', 'ur']).has(locale.split('-', 1)[0] ?? '');
  return isRight ? 'rtl' : 'ltr';
}

/** The theme that is wanted: by attribute, or as the person has set the device. */
export function themeOf(host: Element): 'light' | 'dark' {
  const asked = host.getAttribute('theme');
  if (asked === 'light' || asked === 'dark') return asked;
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
}
