import { compileFlow, positionOf, type Input, type VerdictMessage } from '@keyturn/core';
import { loadFlow } from '@keyturn/core/load';
import { openSitting, takeInputs, type Sitting } from '@keyturn/element/sittings';
import { createSpeaker, localeTags, type FlowTexts } from '@keyturn/language';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { helpShares, helpWords } from './case/help.ts';
import { technicianSlip } from './case/slip.ts';
import { countsFile, diagramFile } from './case/saved.ts';
import { callerLines } from './case/told-caller.ts';
import { evening, firstCaller } from './demo/town.ts';
import { createEngine, type Engine } from './engine/engine.ts';
import { engineAt, serveEngine, type Port } from './engine/link.ts';
import { DeskBook } from './store/desk-book.ts';
import type { DeskStore } from './store/desk-store.ts';
import { createPassingStore } from './store/passing-store.ts';
import { duration, fill, timeOfDay } from './wording.ts';
import { en } from './words/en.ts';
import { ar } from './words/ar.ts';
import { de } from './words/de.ts';
import { es } from './words/es.ts';
import { fr } from './words/fr.ts';
import { pl } from './words/pl.ts';

const folder = new URL('../../../flows/no-start/', import.meta.url);
const loaded = loadFlow(
  readdirSync(folder)
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => ({ path: file, text: readFileSync(new URL(file, folder), 'utf8') })),
);
if (loaded.type === 'issues') throw new Error('the flow has issues');
const { flow } = loaded;
const chart = compileFlow(flow);
const textsOf = (tag: string): FlowTexts =>
  JSON.parse(readFileSync(new URL(`texts/${tag}.json`, folder), 'utf8')) as FlowTexts;
const speakerOf = (tag: string) =>
  createSpeaker({ locale: tag, flowTexts: textsOf(tag), checks: flow.checks, role: 'dispatcher' });

const at = '2026-01-01T20:00:00.000Z';
const opened = openSitting(chart, { id: 'k1', at, context: { role: 'dispatcher' } });
const take = (sitting: Sitting, ...inputs: readonly Input[]): Sitting =>
  takeInputs(chart, sitting, { at, inputs }).sitting;
const choice = (check: string, ...value: readonly string[]): Input => ({
  type: 'answers',
  answers: [{ check, value }],
});
const deskCase = (id: string, version: number) => ({
  id,
  openedAt: at,
  touchedAt: at,
  sitting: opened,
  sent: null,
  practice: null,
  version,
});

describe('the words of the desk', () => {
  const all = { ar, de, es, fr, pl };
  test.each(Object.entries(all))('have the same placeholders in %s as in English', (_, words) => {
    const placeholders = (text: string): readonly string[] =>
      (text.match(/\{\{\w+\}\}/g) ?? []).toSorted();
    for (const [name, text] of Object.entries(en)) {
      expect([name, placeholders(words[name as keyof typeof en])]).toEqual([
        name,
        placeholders(text),
      ]);
    }
  });

  test('keep the direction of what is filled in, and leave what is unknown as it is', () => {
    expect(fill('{{who}} waits {{else}}', { who: '{{who}}' })).toBe(
      '\u2068{{who}}\u2069 waits {{else}}',
    );
  });

  test('write durations as a language does', () => {
    expect(duration(0, 'en')).toBe('1 minute');
    expect(duration(64.6, 'en')).toBe('1 hour 5 minutes');
    expect(duration(120, 'de')).toBe('2 Stunden');
    expect(duration(5, 'pl')).toBe('5 minut');
    expect(timeOfDay('2026-01-01T00:05:00', 'en')).toBe('00:05');
  });
});

describe('the kinds of help', () => {
  test.each(localeTags)('each have a name and what to bring in %s, but for nobody', (tag) => {
    const texts = textsOf(tag);
    const unnamed = Object.keys(texts.send).filter(
      (help) => helpWords(texts, help).name === undefined,
    );
    expect(unnamed).toEqual(['nothing']);
    for (const help of Object.keys(texts.send)) {
      expect(helpWords(texts, help).rest).not.toBe('');
      expect(helpWords(texts, help).rest).not.toMatch(/^\s|:\s*$/);
    }
  });

  test('are ranked by the faults that they are for, none left out', () => {
    const kinds = Object.keys(textsOf('en').send);
    const shares = helpShares(flow, kinds, [
      ['battery-worn', 0.2],
      ['starter-motor', 0.3],
      ['solenoid', 0.4],
    ]);
    expect(shares[0]?.[0]).toBe('flatbed');
    expect(shares[0]?.[1]).toBeCloseTo(0.7);
    expect(shares[1]?.[0]).toBe('battery-van');
    expect(shares).toHaveLength(kinds.length);
  });
});

describe('what a caller is told to whom help is sent', () => {
  const told = (tag: string, remedy: string, send: string) => {
    const verdict = { remedy, send, stops: [], waits: false } as unknown as VerdictMessage;
    return callerLines({ flow, texts: textsOf(tag), speaker: speakerOf(tag) }, verdict, {
      warned: [],
    });
  };

  test.each(Object.keys(textsOf('en').remedies).filter((id) => id !== 'call-emergency'))(
    'has nobody called who is on the way already: %s',
    (remedy) => {
      expect(told('en', remedy, 'technician-van').join(' ')).not.toMatch(
        /\bcall (for )?a|call for|ask for|towed/iu,
      );
    },
  );

  test('still says what to do meanwhile', () => {
    expect(told('en', 'fit-battery', 'battery-van')[0]).toMatch(/kind and size/u);
    expect(told('en', 'repair-switch', 'technician-van').join(' ')).toMatch(/Never let anybody/u);
  });

  test('has somebody called where nobody is sent', () => {
    expect(told('en', 'replace-cable', 'nothing')[0]).toMatch(/^Call for a technician/u);
  });

  test.each(localeTags)('leaves out the same lines in %s as in English', (tag) => {
    const calls = (texts: FlowTexts) =>
      Object.entries(texts.remedies).map(([id, { driver = [], waiting = [] }]) => [
        id,
        [driver, waiting].map((lines) => lines.map((line) => typeof line)),
      ]);
    expect(calls(textsOf(tag))).toEqual(calls(textsOf('en')));
  });
});

describe('the note for the technician', () => {
  const found = take(
    opened,
    choice('place', 'shoulder'),
    { type: 'confirm' },
    choice('scene', 'safe'),
    choice('drive', 'diesel'),
    choice('complaint', 'slow-crank'),
  );
  const noteIn = (tag: string, more: object = {}): readonly string[] =>
    technicianSlip({
      case: found.case,
      help: 'technician-van',
      caller: { where: 'Reed Lane 3', callback: '555 0199', trailer: '' },
      speaker: speakerOf(tag),
      texts: textsOf(tag),
      flow,
      words: en,
      ...more,
    });

  test('says where, what it does, what is likely and what to bring', () => {
    const note = noteIn('en');
    expect(note[0]).toBe('Reed Lane 3 · 555 0199');
    expect(note[1]).toBe(
      'on the roadside or hard shoulder · Safety where you are: yes, safe · diesel',
    );
    expect(note[2]).toMatch(/^Most likely: .+: \d+%/);
    expect(note[3]).toBe('What happens at start: it turns slowly');
    expect(note.at(-1)).toContain('Voltmeter');
  });

  test('names every figure that was read, and no road that is written down already', () => {
    const read = {
      type: 'answers' as const,
      answers: [
        { check: 'battery-rest', value: { value: 12.62, unit: 'V', resolution: 0.01 } },
        { check: 'battery-age', value: { value: 0.5, unit: 'a', resolution: 0.1 } },
      ],
    };
    const later = ['terminals', 'dash', 'when', 'history', 'battery-look'];
    const answers = {
      terminals: 'clean-tight',
      dash: 'stays-bright',
      when: 'cold',
      history: 'none',
      'battery-look': 'sound',
    };
    let sitting = take(found, read);
    for (const check of later)
      sitting = take(sitting, choice(check, answers[check as keyof typeof answers]));
    const note = noteIn('en', { case: sitting.case, help: 'police' });
    expect(note.join('\n')).toMatch(/Resting voltage: 12\.62.V · Age of the battery: 0\.5/);
    expect(note.join('\n')).not.toContain('Give road');
  });

  test.each(localeTags)('has no empty line in %s', (tag) => {
    expect(noteIn(tag, { caller: {} }).filter((line) => line.trim() === '')).toEqual([]);
  });

  test('names a stop that binds whoever comes, and none that only leaves a question out', () => {
    const frozen = take(found, choice('battery-look', 'frozen'));
    const { verdict } = frozen.case.state;
    const stopped = {
      ...frozen.case,
      state: {
        ...frozen.case.state,
        verdict: verdict ?? {
          kind: 'verdict' as const,
          fault: 'battery-discharged',
          strength: 'open' as const,
          probability: 0.4,
          ranking: [],
          remedy: 'technician-visit',
          send: 'technician-van',
          licensed: false,
          roots: [],
          proof: [],
          settle: [],
          stops: ['driver-tap', 'battery-unfit'],
        },
      },
    };
    const note = noteIn('en', { case: stopped }).join('\n');
    expect(note).toContain('Mind: The battery is damaged or frozen');
    expect(note).not.toContain('Knocking on the starter');
  });
});

describe('the invented town', () => {
  const callers = [firstCaller, ...evening.map(({ invented }) => invented)];
  test.each(callers)('has a caller $id whose answers the flow knows', ({ answers, cause }) => {
    expect(Object.keys(flow.faults)).toContain(cause);
    for (const [check, answer] of Object.entries(answers)) {
      const form = flow.checks[check]?.form;
      if (typeof answer === 'number') expect([check, form?.kind]).toEqual([check, 'reading']);
      else if (form?.kind === 'choice') {
        expect([check, ...form.choices, 'none']).toEqual(expect.arrayContaining([...answer]));
      } else throw new Error(`${check} is no choice`);
    }
  });
});

/** Both ends of a worker without one: what is sent goes through JSON as through a worker. */
function joined(): readonly [page: Port, worker: Port] {
  const page: Port = { onmessage: null, postMessage: () => undefined };
  const worker: Port = { onmessage: null, postMessage: () => undefined };
  const bring = (to: Port) => (message: unknown) => {
    queueMicrotask(() => to.onmessage?.({ data: structuredClone(message) } as MessageEvent));
  };
  page.postMessage = bring(worker);
  worker.postMessage = bring(page);
  return [page, worker];
}

describe('the engine at the other end of a worker', () => {
  const [page, worker] = joined();
  const own = createEngine(chart, (tag) => Promise.resolve(speakerOf(tag)));
  serveEngine(worker, own);
  const engine = engineAt(page);

  test('opens, takes answers and lines, and says what they would change', async () => {
    const { sitting } = await engine.open({ id: 'k2', at, context: { role: 'dispatcher' } });
    expect(positionOf(sitting.case)).toEqual({ awaiting: 'answer', check: 'place' });
    const inputs = [choice('place', 'home'), choice('scene', 'safe'), choice('drive', 'petrol')];
    const taken = await engine.take(sitting, { at, inputs });
    expect(taken.laid.strip.findings.map(({ check }) => check)).toEqual([
      'place',
      'scene',
      'drive',
    ]);
    const why = await engine.why(taken.laid.sitting);
    expect(why?.outcomes.map(({ answer }) => answer)).toContain('rapid-clicking');
    const said = await engine.say(taken.laid.sitting, {
      at,
      line: 'klickt schnell',
      locale: 'de',
      isAsked: true,
    });
    expect(said.laid.sitting.case.state.answers['complaint']).toEqual([['rapid-clicking']]);
    expect(await engine.found(said.laid.sitting)).toHaveProperty('complaint');
    expect(await engine.lay(said.laid.sitting)).toEqual(said.laid);
  });

  test.each(['frozen', 'swollen', 'cracked', 'leaking', 'sound'])(
    'says of a %s battery beforehand what is sent once that is answered',
    async (look) => {
      const inputs = [
        choice('place', 'parking'),
        choice('scene', 'safe'),
        choice('drive', 'petrol'),
        choice('complaint', 'rapid-clicking'),
        choice('kit', 'none'),
        choice('when', 'after-standing'),
        choice('history', 'lights-left-on'),
      ];
      let sitting = take(opened, ...inputs);
      for (let turns = 0; turns < 9; turns += 1) {
        const position = positionOf(sitting.case);
        if (position.awaiting === 'answer' && position.check === 'battery-look') break;
        sitting = take(sitting, { type: 'talk', talk: 'dont-know' });
      }
      const why = await own.why(sitting);
      expect(why?.check).toBe('battery-look');
      let after = take(sitting, choice('battery-look', look));
      for (let turns = 0; after.case.state.verdict === null; turns += 1) {
        expect(turns).toBeLessThan(9);
        const isConfirmed = positionOf(after.case).awaiting === 'confirm';
        after = take(
          after,
          isConfirmed ? { type: 'confirm' } : { type: 'talk', talk: 'dont-know' },
        );
      }
      expect(why?.sends[look]).toBe(after.case.state.verdict.send);
      if (look !== 'sound') expect(why?.sends[look]).not.toBe('boost-van');
    },
  );

  test('answers calls in the order in which they came', async () => {
    const order: string[] = [];
    await Promise.all(
      ['a', 'b', 'c'].map(async (id) => {
        await engine.open({ id, at, context: {} });
        order.push(id);
      }),
    );
    expect(order).toEqual(['a', 'b', 'c']);
  });

  test('says what went wrong there, and goes on', async () => {
    await expect(engine.open({ id: 'k3', at, context: { colour: 'red' } })).rejects.toThrow(
      /colour/,
    );
    await expect(engine.open({ id: 'k3', at, context: {} })).resolves.toBeDefined();
  });

  test('rejects every call once the worker is broken', async () => {
    const dead: Port = { onmessage: null, postMessage: () => undefined };
    const broken: Engine = engineAt(dead);
    const waiting = broken.lay(opened);
    dead.onerror?.({ message: 'out of memory' } as ErrorEvent);
    await expect(waiting).rejects.toThrow('out of memory');
    await expect(broken.lay(opened)).rejects.toThrow('out of memory');
  });
});

describe('the book of the desk', () => {
  test('takes what another desk kept later, and keeps what is on its way', async () => {
    const store = createPassingStore();
    const book = new DeskBook(store, flow);
    await book.keep(deskCase('a', 1));
    await store.keep(deskCase('a', 3));
    await book.read();
    expect(book.case('a')?.version).toBe(3);
    let written = (): void => undefined;
    const slow: DeskStore = {
      ...store,
      keep: () =>
        new Promise((resolve) => {
          written = () => {
            resolve({ type: 'kept' });
          };
        }),
    };
    const second = new DeskBook(slow, flow);
    const keeping = second.keep(deskCase('b', 1));
    await second.read();
    expect(second.case('b')).toBeDefined();
    written();
    expect(await keeping).toBe('kept');
  });

  test('holds theirs where another desk was first, and nothing of a case that was closed', async () => {
    const theirs = { ...deskCase('a', 5), practice: 'theirs' };
    const first: DeskStore = {
      ...createPassingStore(),
      keep: ({ id }) =>
        Promise.resolve({ type: 'conflict', theirs: id === 'a' ? theirs : undefined }),
    };
    const book = new DeskBook(first, flow);
    expect(await book.keep(deskCase('a', 2))).toBe('theirs');
    expect(book.case('a')).toBe(theirs);
    expect(await book.keep(deskCase('gone', 2))).toBe('gone');
    expect(book.case('gone')).toBeUndefined();
  });

  test('leaves cases of another version of the flow kept, and counts them', async () => {
    const store = createPassingStore();
    const old = { ...opened.case, flow: { id: 'no-start', version: '0' } };
    await store.keep({ ...deskCase('old', 1), sitting: { ...opened, case: old } });
    const book = new DeskBook(store, flow);
    await book.read();
    expect([book.unfit, book.cases.length]).toEqual([1, 0]);
    expect((await store.read()).cases).toHaveLength(1);
  });
});

describe('what is saved of the outcomes', () => {
  const outcome = (id: string, channel: string) => ({
    id,
    flow: { id: flow.id, version: flow.version },
    role: 'dispatcher',
    channel,
    cause: 'battery-worn',
    answers: { complaint: ['slow-crank'] },
    forecast: {
      fault: 'battery-worn',
      probability: 0.8,
      ranking: [['battery-worn', 0.8] as const],
    },
  });
  const outcomes = [outcome('a1', 'desk'), outcome('b2', 'practice')];

  test('counts calls, never practice', () => {
    const counts = JSON.parse(countsFile(flow, outcomes).text) as { outcomes: object };
    expect(Object.keys(counts.outcomes)).toEqual(['a1']);
    expect(diagramFile(outcomes, 'How sure were we?').text).toContain('1 confirmed case');
  });
});
