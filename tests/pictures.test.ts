import {
  drawCircuit,
  drawClamp,
  drawPlaces,
  drawProbes,
  drawRanking,
  drawReading,
  type CircuitFinding,
  type RenderedRanking,
  type Theme,
} from '@keyturn/drawings';
import type { Speaker } from '@keyturn/language';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test, vi } from 'vitest';
import { fontFiles } from '../packages/drawings/src/png.ts';
import { contrast } from './support/contrast.ts';
import { renderScales, speakers, takeReading } from './support/drawn.ts';
import { noStart } from './support/no-start.ts';
import {
  overlap,
  readPicture,
  textsOf,
  type DrawnText,
  type ReadPicture,
} from './support/picture.ts';

vi.setConfig({ testTimeout: 60_000 });

const { flow } = noStart.chart;
const themes: readonly Theme[] = ['light', 'dark', 'print'];
const probed = Object.values(flow.checks).filter(({ probes }) => probes !== undefined);
const vehicles = [
  {},
  { nominal: 12, transmission: 'manual', ignition: 'key' },
  { nominal: 24, transmission: 'automatic', ignition: 'button' },
] as const;

/** Without a rating a tester's figure has no bounds. */
const rated = { vehicle: { battery: { rating: 640 } } };

/** Figures far apart and near a bound, for every reading that a meter takes. */
const figures: Readonly<Record<string, readonly number[]>> = {
  V: [0.04, 0.42, 4.2, 9.6, 12.41, 14.9],
  A: [3, 240, 870],
};

const found: readonly CircuitFinding[] = [
  ...probed.map(({ id, probes }) => ({
    check: id,
    quantity: {
      value: id === 'battery-tester' ? 612 : 12.62,
      unit: id === 'battery-tester' ? 'A' : 'V',
      resolution: id === 'battery-tester' ? 1 : 0.01,
    } as const,
    probes,
  })),
  { check: 'crank-current', quantity: { value: 1145, unit: 'A', resolution: 1 } },
];

const taken = Object.values(flow.checks).flatMap((check) => {
  if (check.form.kind !== 'reading' || check.like !== undefined) return [];
  const { unit } = check.form;
  const resolution = unit === 'V' ? 0.01 : 1;
  return (figures[unit] ?? []).flatMap((value) =>
    takeReading({ [check.id]: { value, unit, resolution } }, rated),
  );
});

function readings(speaker: Speaker, theme: Theme): [string, string][] {
  return renderScales(taken, speaker).flatMap((scale): [string, string][] => {
    const { check, quantity } = scale.reading;
    return [true, false].flatMap((hasFlag): [string, string][] => {
      const drawn = drawReading(scale, { speaker, theme, hasFlag });
      const named = `${check} ${String(quantity.value)}${hasFlag ? '' : ' without its flag'}`;
      return drawn === undefined ? [] : [[named, drawn]];
    });
  });
}

function circuits(speaker: Speaker, theme: Theme): [string, string][] {
  const options = { speaker, theme };
  const ofKinds = vehicles.flatMap((vehicle, index): [string, string][] => [
    [`circuit ${String(index)}`, drawCircuit({ vehicle }, options)],
    [`circuit ${String(index)} with figures`, drawCircuit({ vehicle, found }, options)],
    ...probed.map(({ id, probes }): [string, string] => [
      `circuit ${String(index)} with the leads of ${id}`,
      drawCircuit({ vehicle, probes }, options),
    ]),
  ]);
  const suspected = Object.keys(flow.faults).map((id, index): [string, string] => {
    const suspect = { id, name: faultName(speaker, id) };
    const vehicle = vehicles[index % vehicles.length] ?? {};
    return [`circuit with ${id}`, drawCircuit({ vehicle, suspect, found }, options)];
  });
  return [...ofKinds, ...suspected];
}

function faultName(speaker: Speaker, id: string): string {
  const [ranking] = speaker.render([{ kind: 'ranking', faults: [[id, 1]], before: [] }]);
  return ranking?.kind === 'ranking' ? (ranking.faults[0]?.name ?? '') : '';
}

function ranking(speaker: Speaker): RenderedRanking {
  const ids = Object.keys(flow.faults);
  const [rendered] = speaker.render([
    {
      kind: 'ranking',
      faults: ids.map((id, index) => [id, index === 0 ? 0.996 : 0.3 - index / 150]),
      before: ids.map((id, index) => [id, index % 3 === 0 ? 0 : 0.02 + index / 60]),
    },
  ]);
  if (rendered?.kind !== 'ranking') throw new Error('no ranking was rendered');
  return rendered;
}

function picturesOf(speaker: Speaker, theme: Theme): Map<string, string> {
  const options = { speaker, theme };
  return new Map([
    ...readings(speaker, theme),
    ...circuits(speaker, theme),
    ...probed.map(({ id, probes }): [string, string] => [
      `leads of ${id}`,
      probes === undefined ? '' : drawProbes(probes, options),
    ]),
    ['ranking', drawRanking(ranking(speaker), options)],
    ['clamp meter', drawClamp(options)],
    ['places', drawPlaces(options)],
  ]);
}

const rows = [...speakers].flatMap(([locale, speaker]) =>
  themes.map((theme) => ({ locale, theme, speaker })),
);

describe.each(rows)('the pictures in $locale, $theme', ({ locale, theme, speaker }) => {
  const drawn = picturesOf(speaker, theme);
  const pictures = new Map([...drawn].map(([name, svg]) => [name, readPicture(svg)]));
  const faults = (find: (picture: ReadPicture) => readonly string[]): string[] =>
    [...pictures].flatMap(([name, picture]) => find(picture).map((fault) => `${name}: ${fault}`));

  test('are drawn for every reading, fault and pair of leads', () => {
    expect(pictures.size).toBeGreaterThan(150);
  });

  test('tell what they show to who cannot see them', () => {
    expect(
      faults(({ root, title, description }) =>
        root['role'] === 'img' &&
        root['lang'] === locale &&
        title !== '' &&
        description.length > title.length
          ? []
          : [title],
      ),
    ).toEqual([]);
  });

  test('hold nothing that runs, is fetched or could clash in a page', () => {
    const names = new Set([...pictures.values()].flatMap((picture) => [...picture.names]));
    expect([...names].sort()).toEqual([
      'circle',
      'desc',
      'ellipse',
      'g',
      'path',
      'rect',
      'svg',
      'text',
      'title',
    ]);
    const attributes = new Set(
      [...pictures.values()].flatMap((picture) => [...picture.attributes]),
    );
    expect(
      [...attributes].filter((name) => /^(?:on|id|class|style|href|xlink)/.test(name)),
    ).toEqual([]);
  });

  test('cut nothing off', () => {
    expect(
      faults(({ root, items }) => {
        const [, , width = 0, height = 0] = (root['viewBox'] ?? '').split(' ').map(Number);
        return items
          .filter(({ kind, box }) => {
            // The battery in the clamp meter's picture runs out of it on purpose.
            const least = kind === 'text' ? 2 : -8;
            return (
              box.left < least ||
              box.top < Math.min(least, 0) ||
              box.right > width - least ||
              box.bottom > height - Math.max(0, least)
            );
          })
          .map(describeItem);
      }),
    ).toEqual([]);
  });

  test('let no text touch another', () => {
    expect(
      faults((picture) => {
        const texts = textsOf(picture);
        return texts.flatMap((one, index) =>
          texts
            .slice(index + 1)
            .filter((other) => overlap(one.box, other.box))
            .map((other) => `"${one.content}" and "${other.content}"`),
        );
      }),
    ).toEqual([]);
  });

  test('let no shape cover a text', () => {
    expect(
      faults(({ items }) =>
        items.flatMap((item, index) =>
          item.kind !== 'text'
            ? []
            : items
                .slice(index + 1)
                .filter(
                  (over) =>
                    over.kind === 'shape' && over.covers && overlap(item.box, over.box, 1.5),
                )
                .map(() => `"${item.content}"`),
        ),
      ),
    ).toEqual([]);
  });

  test('set every text off from what lies under it by 4.5 to 1', () => {
    expect(
      faults(({ items }) =>
        items.flatMap((item, index) => {
          if (item.kind !== 'text') return [];
          const under = items
            .slice(0, index)
            .findLast(
              (below) => below.kind === 'shape' && below.covers && holds(below.box, item.box),
            );
          const ratio = under === undefined ? 0 : contrast(item.fill, under.fill);
          return ratio >= 4.5 ? [] : [`"${item.content}" ${ratio.toFixed(2)}`];
        }),
      ),
    ).toEqual([]);
  });
});

test('a picture is the same bytes when it is drawn again', () => {
  const speaker = speakers.get('ar');
  if (speaker === undefined) throw new Error('no Arabic');
  expect(picturesOf(speaker, 'dark')).toEqual(picturesOf(speaker, 'dark'));
});

function holds(box: DrawnText['box'], inner: DrawnText['box']): boolean {
  const [x, y] = [(inner.left + inner.right) / 2, (inner.top + inner.bottom) / 2];
  return box.left <= x && x <= box.right && box.top <= y && y <= box.bottom;
}

function describeItem(item: ReadPicture['items'][number]): string {
  const { left, top, right, bottom } = item.box;
  const what = item.kind === 'text' ? `"${item.content}"` : `shape ${item.fill}`;
  return `${what} ${[left, top, right, bottom].map((each) => each.toFixed(0)).join(' ')}`;
}

describe('Arabic', () => {
  const speaker = speakers.get('ar');
  if (speaker === undefined) throw new Error('no Arabic');
  const pictures = [...picturesOf(speaker, 'light').values()];

  test('stands in isolates, each figure with its unit in its own', () => {
    const texts = pictures.flatMap((svg) => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)]);
    expect(texts.length).toBeGreaterThan(1000);
    for (const [, content = ''] of texts) {
      expect(content).toMatch(/^[\u2066\u2067].*\u2069$/u);
      const inner = content.slice(1, -1);
      if (!content.startsWith('\u2067')) continue;
      const outside = inner.replaceAll(/[\u2066\u2068][^\u2066-\u2069]*\u2069/gu, '');
      // What is left holds neither half an isolate nor a figure with its unit.
      expect(outside).not.toMatch(/[\u2066-\u2069]|\d\s(?:V|mV|A)/u);
    }
  });

  test('is never set wider than it was measured', () => {
    const texts = new Map(
      pictures
        .flatMap((svg) => textsOf(readPicture(svg)))
        .filter(({ content }) => /\p{Script=Arabic}/u.test(content))
        .map((text) => [`${text.content} ${text.weight} ${String(text.size)}`, text] as const),
    );
    expect(texts.size).toBeGreaterThan(80);
    const wider = [...texts.values()].filter(({ content, size, weight, box }) => {
      const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="900" height="60"><text x="100" y="30" font-family="DejaVu Sans" font-size="${String(size)}" font-weight="${weight === 'bold' ? 'bold' : 'normal'}">\u2067${content}\u2069</text></svg>`;
      const font = { fontFiles: [...fontFiles], loadSystemFonts: false };
      const set = new Resvg(svg, { font }).getBBox();
      return set === undefined || set.width > box.right - box.left + 1;
    });
    expect(wider.map(({ content }) => content)).toEqual([]);
  });
});

describe('the leads of every check', () => {
  const speaker = speakers.get('en');
  if (speaker === undefined) throw new Error('no English');

  test.each(probed.map(({ id, probes }) => ({ id, probes })))(
    '$id has both drawn',
    ({ probes }) => {
      if (probes === undefined) throw new Error('no probes');
      const pair = probes.red === 'battery-a';
      for (const svg of [
        drawCircuit({ vehicle: { nominal: pair ? 24 : 12 }, probes }, { speaker }),
        drawProbes(probes, { speaker }),
      ]) {
        const words = textsOf(readPicture(svg)).map(({ content }) => content);
        for (const word of pair ? ['1st', '2nd'] : ['red', 'black']) {
          // Once at its place, once beside what the place is called.
          expect(words.filter((one) => one === word)).toHaveLength(2);
        }
        const { description } = readPicture(svg);
        expect(description).toContain(speaker.probePlace(probes.red));
        expect(description).toContain(speaker.probePlace(probes.black));
      }
    },
  );

  test('at a place that there is not are refused, with the places that there are', () => {
    const probes = { red: 'aerial', black: 'battery-negative-post' };
    expect(() => drawCircuit({ probes }, { speaker })).toThrow(/no place "aerial".*starter-body/);
    expect(() => drawProbes(probes, { speaker })).toThrow(/no scene has a place "aerial"/);
  });
});

describe('the circuit', () => {
  const speaker = speakers.get('en');
  if (speaker === undefined) throw new Error('no English');
  const words = (svg: string): string[] => textsOf(readPicture(svg)).map(({ content }) => content);

  test('writes every reading at its place and in the list below', () => {
    const shown = words(
      drawCircuit(
        {
          vehicle: { nominal: 24 },
          found: found.filter(({ check }) =>
            ['battery-crank', 'drop-ground', 'crank-current'].includes(check),
          ),
        },
        { speaker },
      ),
    );
    expect(shown.filter((word) => word === '12.62 V')).toHaveLength(2);
    expect(shown).toContain('1,145 A');
    expect(shown).toContain('Battery voltage while starting: 12.62 V');
  });

  test('has the isolating switch on 24 V alone, and the clutch switch where there is a clutch', () => {
    const lorry = words(
      drawCircuit({ vehicle: { nominal: 24, transmission: 'manual' } }, { speaker }),
    );
    const car = words(
      drawCircuit({ vehicle: { nominal: 12, transmission: 'automatic' } }, { speaker }),
    );
    expect(lorry.join(' ')).toMatch(/clutch switch.*battery isolator/);
    expect(car.join(' ')).toMatch(/P\/N switch/);
    expect(car.join(' ')).not.toMatch(/clutch|isolator/);
  });

  test('marks what is suspected by a sign and by name; outside the circuit only by name', () => {
    const cable = words(
      drawCircuit({ suspect: { id: 'ground-cable', name: 'Bad ground cable' } }, { speaker }),
    );
    expect(cable.filter((word) => word === '?')).toHaveLength(2);
    expect(cable).toContain('suspected: Bad ground cable');
    const fuel = words(
      drawCircuit({ suspect: { id: 'fuel-empty', name: 'Empty tank' } }, { speaker }),
    );
    expect(fuel.filter((word) => word === '?')).toHaveLength(1);
  });

  test('shows a name as it is, whatever it holds', () => {
    const svg = drawCircuit(
      { suspect: { id: 'solenoid', name: '<script>"&\u0000]]>' } },
      { speaker },
    );
    expect(readPicture(svg).description).toContain('<script>"&]]>');
    expect(readPicture(svg).names).not.toContain('script');
  });
});
