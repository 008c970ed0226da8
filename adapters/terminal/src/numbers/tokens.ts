/** A piece of a question, folded to lower case, and where it stands in the text as typed. */
export type Token = {
  readonly kind: 'number' | 'word' | 'malformed';
  readonly text: string;
  /** Whether it was typed with a capital letter first. */
  readonly isCapital: boolean;
  readonly start: number;
  readonly end: number;
};

/** One character for one, so that places in the folded text are places in the text as typed. */
const folded: Readonly<Record<string, string>> = {
  '−': '-',
  '–': '-',
  '—': '-',
  '‐': '-',
  '‑': '-',
  '²': '2',
  '·': '.',
  '⋅': '.',
  '’': "'",
  '℃': 'c',
  '℉': 'f',
  µ: 'μ',
  '×': 'x',
  '≥': '}',
  '≤': '{',
};

/** Lower case, and one spelling for what people type in many. As long as the text itself. */
function foldText(text: string): string {
  return text.replace(/[\s\S]/g, (unit) => {
    const lower = folded[unit] ?? unit.toLowerCase();
    return lower.length === 1 ? lower : unit;
  });
}

/** More digits than this are no figure. */
const mostDigits = 12;

/** Threads, lamps and the number of cylinders have their figures in their names. */
const name = /(?:m\d+|h\d+|[wr]\d+w|py?21(?:[-/]5)?w|v(?:[68]|10|12))(?![\p{L}\d])/uy;
const gauge = /(?:0{2,4}|\d\/0)(?![\d.,/])/uy;
const fraction = /\d+\/[1-9]\d*/uy;
const number = /-?(?:\d+(?:[.,]\d+)*|[.,]\d+)/uy;
const word = /mm\^?2|[%{}"]|[<>]=?|'+|[\p{L}°]+/uy;

function take(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

function isJoined(text: string, at: number): boolean {
  return at > 0 && /[\p{L}\d]/u.test(text.charAt(at - 1));
}

/** "1,200" is twelve hundred; any other mark before digits is the decimal mark. */
function plainNumber(said: string): string | undefined {
  if (/^-?[1-9]\d{0,2}(?:,\d{3})+$/.test(said)) return said.replaceAll(',', '');
  const marks = said.match(/[.,]/g) ?? [];
  const digits = said.match(/\d/g) ?? [];
  if (marks.length > 1 || digits.length > mostDigits) return undefined;
  return said.replace(',', '.');
}

function tokenAt(text: string, at: number, typed: string): Token | undefined {
  const made = (kind: Token['kind'], said: string, plain: string = said): Token => ({
    kind,
    text: plain,
    isCapital: /^\p{Lu}/u.test(typed.slice(at, at + 2)),
    start: at,
    end: at + said.length,
  });
  const joined = isJoined(text, at);
  const named = joined ? undefined : take(name, text, at);
  if (named !== undefined) return made('word', named);
  const size = joined ? undefined : take(gauge, text, at);
  if (size !== undefined) return made('number', size);
  const broken = take(fraction, text, at);
  if (broken !== undefined) return made('malformed', broken);
  const figure = joined && /[-.,]/.test(text.charAt(at)) ? undefined : take(number, text, at);
  if (figure !== undefined) {
    const plain = plainNumber(figure);
    return plain === undefined ? made('malformed', figure) : made('number', figure, plain);
  }
  const said = take(word, text, at);
  return said === undefined ? undefined : made('word', said);
}

/**
 * Cuts a question into numbers and words; marks and spaces are left out. Takes time in proportion
 * to the length of the text.
 */
export function readTokens(text: string): Token[] {
  const plain = foldText(text);
  const tokens: Token[] = [];
  let at = 0;
  while (at < plain.length) {
    const token = tokenAt(plain, at, text);
    if (token !== undefined) tokens.push(token);
    at = token?.end ?? at + 1;
  }
  return tokens;
}
