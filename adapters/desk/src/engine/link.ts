/**
 * The engine in a worker, and the page's end of it.
 */
import type { Engine } from './engine.ts';

/** A call as it goes to the worker. */
interface Call {
  readonly number: number;
  readonly name: string;
  readonly args: readonly unknown[];
}

/** What comes of it. */
type Reply =
  | { readonly number: number; readonly value: unknown }
  | { readonly number: number; readonly error: string };

/** Either end of a worker. */
export interface Port {
  onmessage: ((event: MessageEvent) => void) | null;
  /** Where it is missing nothing can break at the other end. */
  onerror?: ((event: ErrorEvent) => void) | null;
  postMessage: (message: unknown) => void;
}

/** Serves an engine at the worker's end, one call after another, as they came. */
export function serveEngine(port: Port, engine: object): void {
  let before: Promise<void> = Promise.resolve();
  port.onmessage = ({ data }: MessageEvent<Call>) => {
    before = before.then(async () => {
      port.postMessage(await replyTo(engine, data));
    });
  };
}

async function replyTo(engine: object, { number, name, args }: Call): Promise<Reply> {
  try {
    const calls = engine as Readonly<Record<string, (...given: readonly unknown[]) => unknown>>;
    const call = calls[name];
    if (call === undefined) throw new RangeError(`there is no call ${name}`);
    return { number, value: await call(...args) };
  } catch (error) {
    return { number, error: error instanceof Error ? error.message : String(error) };
  }
}

/** The engine as the page calls it. A call rejects with the words of what went wrong there. */
export function engineAt(port: Port): Engine {
  return callsAt<Engine>(port, ['open', 'lay', 'take', 'say', 'why', 'found']);
}

/** Whatever is served at the worker's end, by the names of its calls. */
export function callsAt<Served>(port: Port, names: readonly (keyof Served & string)[]): Served {
  const waiting = new Map<number, (reply: Reply) => void>();
  let count = 0;
  let broken: string | undefined;
  port.onmessage = ({ data }: MessageEvent<Reply>) => {
    waiting.get(data.number)?.(data);
    waiting.delete(data.number);
  };
  port.onerror = ({ message }) => {
    broken = message;
    for (const [number, settle] of waiting) settle({ number, error: message });
    waiting.clear();
  };
  const calling =
    (name: string) =>
    (...args: readonly unknown[]): Promise<unknown> =>
      new Promise((resolve, reject) => {
        if (broken !== undefined) {
          reject(new Error(broken));
          return;
        }
        count += 1;
        waiting.set(count, (reply) => {
          if ('error' in reply) reject(new Error(reply.error));
          else resolve(reply.value);
        });
        port.postMessage({ number: count, name, args } satisfies Call);
      });
  return Object.fromEntries(names.map((name) => [name, calling(name)])) as Served;
}
