/** A number, and how exactly it was typed. */
export interface SaidNumber {
  readonly value: number;
  /** Decimals as typed: 2 for "12.40". */
  readonly decimals: number;
  /** As typed, without sign and grouping. */
  readonly digits: string;
}

/** A piece of a typed text. */
export type Token =
  | (SaidNumber & {
      readonly kind: 'number';
      /** True where it was said in words alone: "twelve". */
      readonly inWords?: true;
      /** True of what others are counted in, alone: "hundred". */
      readonly isScale?: true;
      /** The other way to read it, where a mark before three digits may be either: "12.650". */
      readonly other?: SaidNumber;
      /** True where it is written on to a letter: "x12". */
      readonly isWrittenOn?: true;
    })
  | {
      readonly kind: 'word';
      readonly text: string;
      /** True where it is written on to a digit: the "x" of "12.4x". */
      readonly isWrittenOn?: true;
    }
  | { readonly kind: 'mark'; readonly text: string }
  /** Digits that are no number: "12.4.5", or more of them than any meter has. */
  | {
      readonly kind: 'malformed';
      readonly text: string;
      /** The number that is likely meant, where letters stand in it that look like digits: "1o.3". */
      readonly likely?: Extract<Token, { kind: 'number' }>;
    };

/** More digits than this are no reading; a double holds 15 exactly. */
const mostDigits = 15;

/** What a scanner is doing: where it stands in the text, and what it has found. */
interface Scan {
  readonly text: string;
  readonly grouping: string;
  readonly tokens: Token[];
  at: number;
}

/**
 * Cuts a normalised text into numbers, words and marks in one pass, so that it takes linear time
 * whatever is typed. `grouping` is what stands between groups of thousands; a mark followed by
 * anything but three digits is taken for the decimal mark, whichever it is.
 */
export function tokenise(text: string, grouping: string): Token[] {
  const scan: Scan = { text, grouping, tokens: [], at: 0 };
  while (scan.at < text.length) {
    const character = text[scan.at] ?? '';
    if (scanLookalike(scan)) continue;
    if (isDigit(character) || startsDecimals(scan) || startsNegative(scan)) scanNumber(scan);
    else if (isLetter(character)) scanWord(scan);
    else scanMark(scan, character);
  }
  return scan.tokens;
}

function isDigit(character: string | undefined): boolean {
  return character !== undefined && character >= '0' && character <= '9';
}

const letter = /^[\p{L}\p{M}°%]$/u;

/** True for a letter, and for the signs that stand in units. */
function isLetter(character: string | undefined): boolean {
  if (character === undefined) return false;
  return (character >= 'a' && character <= 'z') || letter.test(character);
}

/** ".5" or ",5" where nothing that it could belong to stands before it. */
function startsDecimals({ text, at }: Scan): boolean {
  return (
    (text[at] === '.' || (text[at] === ',' && (at === 0 || text[at - 1] === ' '))) &&
    isDigit(text[at + 1]) &&
    !isDigit(text[at - 1]) &&
    !isLetter(text[at - 1])
  );
}

/** "-8", but not the dash of "12-13". */
function startsNegative({ text, at }: Scan): boolean {
  if (text[at] !== '-') return false;
  const follows = isDigit(text[at + 1]) || (text[at + 1] === '.' && isDigit(text[at + 2]));
  return follows && !isDigit(text[at - 1]) && !isLetter(text[at - 1]);
}

/**
 * Digits among which letters may stand that look like them, with nothing behind but a unit; but not
 * the size of an engine: "1.6i", "2.0l".
 */
const lookalike =
  /(?<![\p{L}\d])(?<!\d[.,])(?![1-9][.,]\d[li](?!\p{L}))-?(?:(?:[lio]*\d[\dlio]*|[lio]|l[lo])[.,][\dlio]{1,3}|\d[lo]\d|\d{2,3}o|l\d\d)(?=(?:m?v(?:olt\p{L}*)?|a(?:mp\p{L}*)?)?(?![\p{L}\d]|[.,]\d))/uy;

/** Takes a figure in which letters were typed for digits: "12.l", "1o.3", "o.4". */
function scanLookalike(scan: Scan): boolean {
  lookalike.lastIndex = scan.at;
  const [typed = ''] = lookalike.exec(scan.text) ?? [];
  if (!/\d/.test(typed) || !/[lio]/.test(typed)) return false;
  const [likely] = tokenise(typed.replaceAll('o', '0').replaceAll(/[li]/g, '1'), '');
  if (likely?.kind !== 'number') return false;
  scan.tokens.push({ kind: 'malformed', text: typed, likely });
  scan.at += typed.length;
  return true;
}

function takeDigits(scan: Scan): string {
  const start = scan.at;
  while (isDigit(scan.text[scan.at])) scan.at += 1;
  return scan.text.slice(start, scan.at);
}

function scanNumber(scan: Scan): void {
  const start = scan.at;
  const negative = scan.text[scan.at] === '-';
  if (negative) scan.at += 1;
  let whole = takeDigits(scan);
  const lead = whole;
  let groups = 0;
  while (lead.length <= 3 && startsGroup(scan, whole)) {
    scan.at += 1;
    whole += takeDigits(scan);
    groups += 1;
  }
  let decimals = '';
  if (isDecimalMark(scan)) {
    scan.at += 1;
    decimals = takeDigits(scan);
  }
  const tooMany = whole.length + decimals.length > mostDigits;
  let malformed = tooMany || isLeftOpen(scan);
  while (isDecimalMark(scan)) {
    malformed = true;
    scan.at += 1;
    takeDigits(scan);
  }
  if (malformed) {
    scan.tokens.push({ kind: 'malformed', text: scan.text.slice(start, scan.at) });
    return;
  }
  const number = numberOf(whole, decimals, negative);
  const isEither = groups === 1 && decimals === '';
  const other = isEither ? numberOf(lead, whole.slice(lead.length), negative) : undefined;
  scan.tokens.push({
    kind: 'number',
    ...number,
    ...(other === undefined ? {} : { other }),
    ...(isLetter(scan.text[start - 1]) ? { isWrittenOn: true } : {}),
  });
}

function numberOf(whole: string, decimals: string, negative: boolean): SaidNumber {
  const digits = decimals === '' ? whole : `${whole === '' ? '0' : whole}.${decimals}`;
  const value = Number(digits);
  return { value: negative ? -value : value, decimals: decimals.length, digits };
}

/** "12.x", "12,xx": decimals that were left out. */
function isLeftOpen({ text, at }: Scan): boolean {
  if (text[at] !== '.' && text[at] !== ',') return false;
  return text[at + 1] === 'x' && !isLetter(text[at + (text[at + 2] === 'x' ? 3 : 2)]);
}

/** A mark with a digit behind it, as between whole number and decimals. */
function isDecimalMark({ text, at }: Scan): boolean {
  return (text[at] === '.' || text[at] === ',') && isDigit(text[at + 1]);
}

/** ",200" of "1,200": exactly three digits, after one to three that do not begin with 0. */
function startsGroup({ text, at, grouping }: Scan, whole: string): boolean {
  if (text[at] !== grouping) return false;
  if (whole === '' || whole.startsWith('0')) return false;
  return (
    isDigit(text[at + 1]) &&
    isDigit(text[at + 2]) &&
    isDigit(text[at + 3]) &&
    !isDigit(text[at + 4])
  );
}

/** A trouble code, which is no figure: "p0340". */
const troubleCode = /[pbcu][0-3]\d{3}(?![\d\p{L}])/uy;

function scanWord(scan: Scan): void {
  const start = scan.at;
  while (isLetter(scan.text[scan.at])) scan.at += 1;
  const isWrittenOn = isDigit(scan.text[start - 1]);
  troubleCode.lastIndex = start;
  if (troubleCode.test(scan.text)) scan.at = troubleCode.lastIndex;
  const text = scan.text.slice(start, scan.at);
  scan.tokens.push({ kind: 'word', text, ...(isWrittenOn ? { isWrittenOn } : {}) });
}

/**
 * White space is left out, and so are the dots, dashes and strokes inside a word or a unit
 * ("no-change", "r/min"); everything else is a mark. A line's end is a mark.
 */
function scanMark(scan: Scan, character: string): void {
  const { text, at } = scan;
  scan.at += 1;
  if (character === '\n') scan.tokens.push({ kind: 'mark', text: '\n' });
  else if (character.trim() === '') return;
  else if ('.-/_'.includes(character) && isLetter(text[at - 1]) && isLetter(text[at + 1])) return;
  else scan.tokens.push({ kind: 'mark', text: character });
}
