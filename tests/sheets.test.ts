/**
 * Sheets in every form and language: what a reader program finds in the file is what stands on the
 * sheet, and nothing that somebody typed can do more than be read.
 */
import { readFileSync } from 'node:fs';
import { createSpeaker, localeTags } from '@keyturn/language';
import {
  caseSheet,
  encodeFindings,
  sheetHtml,
  sheetJson,
  sheetText,
  technicianNote,
  type Finding,
  type Sheet,
  type SheetOptions,
} from '@keyturn/sheets';
import { printSheet, sheetTypefaces } from '@keyturn/sheets/pdf';
import { shippedFlow } from '@keyturn/terminal';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { practice } from '../packages/sheets/src/words/practice/practice.ts';
import { again, startBrowser, whyNoBrowser } from './support/browser.ts';
import { noStart } from './support/no-start.ts';
import { firstWrongLine, bare, lettersOf, linesOf, pdfPages } from './support/pdf-text.ts';
import { answers, next, open, playOut, take } from './support/play.ts';
import { scanQr } from './support/scan-qr.ts';
import { paragraphsOf } from './support/sheet-paragraphs.ts';

const { chart } = noStart;

/** A text as HTML writes it. */
const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
const made = '2026-03-04T10:00:00.000Z';

const speakers = new Map(
  localeTags.map((locale) => [
    locale,
    createSpeaker({
      locale,
      flowTexts: shippedFlow('no-start', locale).texts,
      checks: chart.flow.checks,
    }),
  ]),
);

/** A case to the proof of its repair; every figure is made up. */
const repaired = playOut(
  take(
    open({
      role: 'mechanic',
      place: 'home',
      kit: ['voltmeter', 'clamp-meter', 'helper', 'hand-tools'],
      temperature: 12,
      vehicle: { nominal: 12, fuel: 'petrol', transmission: 'manual', ignition: 'key' },
    }),
    answers({
      scene: 'safe',
      complaint: 'slow-crank',
      'battery-look': 'sound',
      terminals: 'clean-tight',
      'battery-rest': { value: 12.68, unit: 'V', resolution: 0.01 },
      'battery-crank': { value: 11.2, unit: 'V', resolution: 0.1 },
      'drop-clamps': { value: 0.03, unit: 'V', resolution: 0.01 },
      'drop-positive': { value: 0.1, unit: 'V', resolution: 0.01 },
      'drop-ground': { value: 1.42, unit: 'V', resolution: 0.01 },
      'crank-current': { value: 95, unit: 'A', resolution: 1 },
    }),
  ),
  {
    when: 'after-standing',
    history: 'none',
    selector: 'park-neutral',
    repair: 'done',
    'start-after': 'starts',
    'drop-ground-after': { value: 0.06, unit: 'V', resolution: 0.01 },
    charging: { value: 14.2, unit: 'V', resolution: 0.1 },
  },
).step.case;

/** A case that has only begun, on the shoulder. */
const begun = take(open({ place: 'shoulder' }), answers({ complaint: 'silent', dash: 'dim' })).case;

function options(locale: string, given: Partial<SheetOptions> = {}): SheetOptions {
  const speaker = speakers.get(locale);
  if (speaker === undefined) throw new Error(`no speaker of ${locale}`);
  return { chart, case: repaired, speaker, made, ...given };
}

const sheets = localeTags.flatMap((locale) => [
  [`the case sheet in ${locale}`, caseSheet(options(locale))] as const,
  [`the note in ${locale}`, technicianNote(options(locale))] as const,
  [
    `the case sheet of a case just begun in ${locale}`,
    caseSheet(options(locale, { case: begun })),
  ] as const,
  [
    `the note of a case just begun in ${locale}`,
    technicianNote(options(locale, { case: begun })),
  ] as const,
]);

describe('what stands on a sheet', () => {
  const sheet = caseSheet(options('en'));
  const block = (id: string): Sheet['blocks'][number] | undefined =>
    sheet.blocks.find((one) => one.id === id);

  test('is every finding in its order, with bounds and their sources', () => {
    const strip = block('found');
    const findings = strip?.kind === 'strip' ? strip.findings : [];
    const found = repaired.state.order.slice(0, findings.length);
    expect(findings.map(({ check }) => check)).toEqual(found);
    const ground = findings.find(({ check }) => check === 'drop-ground');
    expect(ground?.said).toBe('1.42 V');
    expect(ground?.reading?.band).toBe('high');
    expect(ground?.reading?.bounds.length).toBe(1);
    expect(ground?.reading?.ruler?.svg).toContain('1.42');
    expect(ground?.notes.join(' ')).toMatch(/Bound (?:at|between) .*: /);
  });

  test('is the verdict with its strength and its proof, and the repair', () => {
    expect(sheet.verdict).toMatchObject({ fault: 'ground-cable', strength: 'proved' });
    expect(sheet.lead.title).toBe('At fault: Bad ground cable');
    expect(sheetText(sheet)).toContain('Loss on the ground side: ');
    const proof = block('proof');
    expect(proof?.kind === 'strip' ? proof.findings.map(({ check }) => check) : []).toContain(
      'drop-ground-after',
    );
    expect(block('proof-open')).toBeUndefined();
  });

  test('is what is still to be measured, where the repair is not proved', () => {
    const kase = playOut(open({ kit: ['voltmeter', 'helper'], place: 'home' }), {
      complaint: 'slow-crank',
      terminals: 'loose',
      'drop-clamps': 0.9,
      repair: 'done',
    }).step.case;
    const toProve = caseSheet(options('en', { case: kase })).blocks.find(
      ({ id }) => id === 'proof-open',
    );
    expect(toProve?.kind === 'fields' ? toProve.fields.map(({ id }) => id) : []).toEqual(
      Object.keys(chart.flow.faults[kase.state.verdict?.fault ?? '']?.prove ?? {}),
    );
  });

  test('on a note is in few words: what, how sure, what to bring, measured, watch out', () => {
    const note = technicianNote(options('en'));
    const [rows] = note.blocks;
    expect(rows?.kind === 'rows' ? rows.rows.map(({ id }) => id) : []).toEqual([
      'bring',
      'measured',
      'watch',
    ]);
    const text = sheetText({ ...note, blocks: note.blocks.slice(0, 1), head: [], foot: [] });
    expect(text.split(/\s+/).length).toBeLessThan(130);
  });

  test('of a case without a verdict says so, and names what is likeliest', () => {
    const note = technicianNote(options('en', { case: begun }));
    expect(note.verdict).toBeNull();
    expect(note.lead.title).toBe('No verdict yet');
    expect(JSON.stringify(note.blocks)).toContain('so-far');
  });
});

describe.each(sheets)('%s', (_, sheet) => {
  test('is the same for the same case, and its JSON is the sheet itself', () => {
    expect(JSON.parse(sheetJson(sheet))).toEqual(sheet);
    expect(sheetHtml(sheet)).toBe(sheetHtml(JSON.parse(sheetJson(sheet)) as Sheet));
  });

  test('says in plain text all that stands on it', () => {
    const text = bare(sheetText(sheet));
    const { blocks, ...around } = sheet;
    const drawn = blocks.map((one) =>
      'picture' in one ? { ...one, id: '', picture: { svg: '<svg/>', description: '' } } : one,
    );
    for (const paragraph of paragraphsOf({ ...around, blocks: drawn.map(withoutRulers) })) {
      if (bare(paragraph.text) !== '')
        expect(text).toContain(bare(paragraph.text.replace(/:$/, '')));
    }
  });
});

function withoutRulers(block: Sheet['blocks'][number]): Sheet['blocks'][number] {
  if (block.kind !== 'strip') return block;
  return {
    ...block,
    findings: block.findings.map(({ reading, ...finding }) => finding),
  };
}

describe('where its figures come from', () => {
  const findingsOf = ({ blocks }: Sheet): readonly Finding[] =>
    blocks.flatMap((block) => (block.kind === 'strip' ? block.findings : []));

  test.each(localeTags.filter((locale) => locale !== 'en'))(
    'is said in %s, but for published texts, which are marked as English',
    (locale) => {
      const sheet = caseSheet(options(locale));
      const html = sheetHtml(sheet);
      const cited = findingsOf(sheet).flatMap((finding) => finding.cited);
      expect(cited.length).toBeGreaterThan(3);
      for (const text of cited) {
        expect(html).toContain(`<bdi lang="en" dir="ltr">${escaped(text)}</bdi>`);
      }
      const ownWords = findingsOf(sheet).flatMap(({ reading }) =>
        (reading?.bounds ?? []).flatMap(({ source }) => {
          const [founded, ...text] = source.split(': ');
          return founded === 'common practice' ? [text.join(': ')] : [];
        }),
      );
      expect(ownWords.length).toBeGreaterThan(3);
      const text = sheetText(sheet);
      for (const words of ownWords) expect(text).not.toContain(words);
    },
  );

  test('is marked so in no sheet in English', () => {
    expect(findingsOf(caseSheet(options('en'))).flatMap(({ cited }) => cited)).toEqual([]);
    expect(sheetHtml(caseSheet(options('en')))).not.toContain('<bdi lang');
  });

  test('has every sentence of our own that a limit goes by, and none that nobody says any more', () => {
    const said = ['electrics/README.md', 'electrics/src/circuit/expected-reading.ts']
      .concat('core/src/case/part-limits.ts')
      .map((file) => readFileSync(new URL(`../packages/${file}`, import.meta.url), 'utf8'))
      .join('\n');
    const ofLimits = said
      .split('\n')
      .flatMap((row) => row.split('| common practice: ').slice(1))
      .map((cell) => cell.replace('|', '').trim());
    expect(ofLimits.length).toBeGreaterThan(20);
    const known = new Set<string>(practice);
    expect(ofLimits.filter((text) => !known.has(text))).toEqual([]);
    expect(practice.filter((text) => !said.includes(text))).toEqual([]);
  });
});

describe('the code on a sheet', () => {
  test('is read by another program as the findings of the case', () => {
    const sheet = caseSheet(options('en'));
    expect(scanQr(sheet.code.picture.svg)).toBe(encodeFindings(chart.flow, repaired));
    expect(sheetText(sheet)).toContain(sheet.code.text);
  });

  test('is the link of the case where it has one', () => {
    const link = 'https://cases.example/open?case=k1&x=ä';
    expect(scanQr(caseSheet(options('en', { link })).code.picture.svg)).toBe(link);
  });

  test('refuses a link that no code can hold', () => {
    expect(() => caseSheet(options('en', { link: 'x'.repeat(5000) }))).toThrow(RangeError);
  });
});

describe.skipIf(whyNoBrowser !== undefined)('printed', again, () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await startBrowser();
    page = await browser.newPage();
  });
  afterAll(async () => {
    await browser.close();
  });

  const papers = { A4: [595.28, 841.89], Letter: [612, 792] } as const;

  test.each(sheets)('%s holds in PDF all that stands on it, in its order', async (_, sheet) => {
    const pages = await pdfPages(await printSheet(sheet, { browser }));
    const paragraphs = paragraphsOf(sheet).filter(({ text }) => bare(text) !== '');
    if (sheet.direction === 'ltr') {
      expect(lettersOf(pages)).toBe(bare(paragraphs.map(({ text }) => text).join('')));
    } else {
      expect(firstWrongLine(linesOf(pages), paragraphs)).toBeUndefined();
    }
  });

  test('a figure shown backwards would be found', () => {
    const paragraph = { text: 'الجهد: \u206612.4 V\u2069', base: 'rtl' } as const;
    expect(firstWrongLine(['12.4V:دهجلا'], [paragraph])).toBeUndefined();
    expect(firstWrongLine(['4.21V:دهجلا'], [paragraph])).toMatch(/is not the beginning/);
    expect(firstWrongLine(['V12.4:دهجلا'], [paragraph])).toMatch(/is not the beginning/);
  });

  test.each([
    ['A4', 'en'],
    ['A4', 'ar'],
    ['Letter', 'de'],
    ['Letter', 'ar'],
  ] as const)('a case sheet on %s in %s keeps within its margins', async (paper, locale) => {
    const pages = await pdfPages(await printSheet(caseSheet(options(locale)), { browser, paper }));
    const [width, height] = papers[paper];
    for (const one of pages) {
      expect(Math.abs(one.width - width)).toBeLessThan(1.5);
      expect(Math.abs(one.height - height)).toBeLessThan(1.5);
      for (const { x, y, width: wide, seen } of one.pieces) {
        expect(x, seen).toBeGreaterThan(30);
        expect(x + wide, seen).toBeLessThan(one.width - 30);
        expect(y, seen).toBeGreaterThan(15);
        expect(y, seen).toBeLessThan(one.height - 30);
      }
    }
  });

  test.each(localeTags)('a note in %s takes one page of either paper', async (locale) => {
    for (const paper of ['A4', 'Letter'] as const) {
      const pdf = await printSheet(technicianNote(options(locale)), { browser, paper });
      expect((await pdfPages(pdf)).length).toBe(1);
    }
  });

  test('the same sheet gives the same bytes, and another date changes nothing but dates', async () => {
    const note = technicianNote(options('en'));
    const [once, again] = [
      await printSheet(note, { browser }),
      await printSheet(note, { browser }),
    ];
    expect(Buffer.from(once).equals(again)).toBe(true);
    const text = Buffer.from(once).toString('latin1');
    expect(text.match(/\(D:[^)]*\)/g)).toEqual([
      "(D:20260304100000+00'00')",
      "(D:20260304100000+00'00')",
    ]);
  });

  const hostile =
    '</style></title><script>document.title="run"</script><img src=x onerror="document.title=1">\'"&lt;\u0000\u202e]]>';

  test('what somebody typed is only read, in every place where it can stand', async () => {
    const kase = next(repaired, {
      type: 'context',
      set: { 'vehicle.notes': hostile, 'vehicle.notes.starter': hostile },
    }).case;
    const sheet = caseSheet(options('en', { case: { ...kase, id: hostile }, link: hostile }));
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.setContent(sheetHtml(sheet, { typefaces: sheetTypefaces('ltr') }), {
      waitUntil: 'load',
    });
    expect(await page.locator('script, img, link, iframe, object').count()).toBe(0);
    expect(await page.title()).toContain('<script>');
    expect(await page.locator('dd', { hasText: '</style>' }).count()).toBeGreaterThanOrEqual(3);
    expect(asked.filter((url) => !url.startsWith('data:'))).toEqual([]);
    const pages = await pdfPages(await printSheet(sheet, { browser }));
    expect(lettersOf(pages)).toContain(bare('onerror="document.title=1"'));
  });
});
