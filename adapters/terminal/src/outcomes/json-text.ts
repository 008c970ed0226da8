/**
 * JSON read so that it is known on which line each value stands, for messages to whoever wrote it.
 */

/** What a text holds, or the first line that is no JSON and why. */
export type JsonText =
  | {
      readonly type: 'json';
      readonly data: unknown;
      /** The line of a value by the names and positions that lead to it, or of what is around it. */
      readonly lineOf: (path: readonly (string | number)[]) => number;
    }
  | { readonly type: 'broken'; readonly line: number; readonly reason: string };

/** Values within values, at most. */
const deepest = 40;

/** A text in quotation marks; whether all in it may stand there is seen when it is parsed. */
const quoted = /"(?:[^"\\]|\\.)*"/sy;

/** Reads a text. Never throws. */
export function readJsonText(text: string): JsonText {
  const reader = new JsonReader(text);
  try {
    const data = reader.readAll();
    return { type: 'json', data, lineOf: (path) => reader.lineOf(path) };
  } catch (error) {
    if (error instanceof BrokenJson) {
      return { type: 'broken', line: reader.line, reason: error.message };
    }
    throw error;
  }
}

class BrokenJson extends Error {}

class JsonReader {
  readonly #text: string;
  readonly #lines = new Map<string, number>();
  #at = 0;
  line = 1;

  constructor(text: string) {
    this.#text = text;
  }

  readAll(): unknown {
    const data = this.#value([]);
    this.#skip();
    if (this.#at < this.#text.length) throw this.#unexpected('the end');
    return data;
  }

  lineOf(path: readonly (string | number)[]): number {
    for (let depth = path.length; depth > 0; depth -= 1) {
      const line = this.#lines.get(JSON.stringify(path.slice(0, depth).map(String)));
      if (line !== undefined) return line;
    }
    return 1;
  }

  #value(path: readonly string[]): unknown {
    this.#skip();
    this.#lines.set(JSON.stringify(path), this.line);
    if (path.length > deepest) throw new BrokenJson('it is nested too deeply');
    if (this.#take('{')) return this.#object(path);
    if (this.#take('[')) return this.#array(path);
    const token =
      this.#match(quoted) ??
      this.#match(/-?(?:0|[1-9]\d*)(?:\.\d+)?(?:e[+-]?\d+)?/iy) ??
      this.#match(/true|false|null/y);
    if (token === undefined) throw this.#unexpected('a value');
    return this.#parsed(token);
  }

  #object(path: readonly string[]): object {
    const entries = new Map<string, unknown>();
    this.#skip();
    if (this.#take('}')) return {};
    do {
      this.#skip();
      const name = this.#match(quoted);
      if (name === undefined) throw this.#unexpected('a name in quotation marks');
      const key = this.#parsed(name) as string;
      if (entries.has(key)) throw new BrokenJson(`${name} is there twice`);
      this.#skip();
      if (!this.#take(':')) throw this.#unexpected('a colon');
      entries.set(key, this.#value([...path, key]));
      this.#skip();
    } while (this.#take(','));
    if (!this.#take('}')) throw this.#unexpected('a comma or }');
    return Object.fromEntries(entries);
  }

  #array(path: readonly string[]): unknown[] {
    const items: unknown[] = [];
    this.#skip();
    if (this.#take(']')) return items;
    do {
      items.push(this.#value([...path, String(items.length)]));
      this.#skip();
    } while (this.#take(','));
    if (!this.#take(']')) throw this.#unexpected('a comma or ]');
    return items;
  }

  #parsed(token: string): unknown {
    try {
      return JSON.parse(token);
    } catch {
      throw new BrokenJson(`it is not JSON: ${token.slice(0, 40)} is not written as a text is`);
    }
  }

  #skip(): void {
    this.line += (this.#match(/[ \t\r\n]*/y) ?? '').split('\n').length - 1;
  }

  #take(character: string): boolean {
    if (this.#text[this.#at] !== character) return false;
    this.#at += 1;
    return true;
  }

  #match(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text)?.[0];
    if (found !== undefined) this.#at += found.length;
    return found;
  }

  #unexpected(wanted: string): BrokenJson {
    const seen = this.#text.slice(this.#at, this.#at + 12).split(/[\r\n]/)[0] ?? '';
    const found = this.#at >= this.#text.length ? 'the end of the file' : JSON.stringify(seen);
    return new BrokenJson(`it is not JSON: expected ${wanted}, found ${found}`);
  }
}
