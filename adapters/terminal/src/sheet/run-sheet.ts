/**
 * One run of `sheet`: reads the command line and the case, makes the sheet, writes it.
 */
import { existsSync } from 'node:fs';
import type { Case, Chart } from '@keyturn/core';
import { FlowError, shippedFlow, shippedFlowNames, shippedTexts } from '@keyturn/flows';
import { createSpeaker, localeTags } from '@keyturn/language';
import {
  CodeError,
  decodeFindings,
  replayFindings,
  sheetHtml,
  sheetJson,
  sheetOf,
  sheetText,
  technicianNote,
  type Sheet,
} from '@keyturn/sheets';
import { printSheet, sheetTypefaces } from '@keyturn/sheets/pdf';
import { CaseFileError } from '../case-file.ts';
import { readKeptCase } from '../outcomes/outcome-of-case.ts';
import { OutcomesError } from '../outcomes/outcomes-error.ts';
import { writeNew } from '../outcomes/write-whole.ts';
import { BrowserError, startPrintBrowser } from './print-browser.ts';
import { readSheetCommand, sheetUsage, type SheetCommand } from './sheet-command.ts';

/** The world outside, as one run meets it. */
export interface SheetSurroundings {
  readonly args: readonly string[];
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdout: {
    readonly isTTY?: boolean;
    readonly write: (text: string | Uint8Array) => unknown;
  };
  readonly stderr: { readonly write: (text: string) => unknown };
  readonly now: () => Date;
  /** IANA name of the zone in which dates are written. */
  readonly timeZone: string;
}

const program = 'npm run -s sheet --';

type SheetAsked = Extract<SheetCommand, { type: 'sheet' }>;

/** Runs the program; gives its exit code. */
export async function runSheet(around: SheetSurroundings): Promise<0 | 1 | 2> {
  const { stdout, stderr } = around;
  const command = readSheetCommand(around.args);
  if (command.type === 'help') {
    stdout.write(sheetUsage(program, localeTags));
    return 0;
  }
  const wrong = command.type === 'wrong' ? command.reason : whyNot(command, around);
  if (command.type === 'wrong' || wrong !== undefined) {
    stderr.write(`sheet: ${wrong ?? ''}\nSee ${program} --help\n`);
    return 2;
  }
  try {
    const written = await writtenAs(sheetFor(command, around), command, around);
    if (command.out === undefined) stdout.write(written);
    else writeNew(command.out, written, command.isToReplace);
    return 0;
  } catch (error) {
    const isExpected = [CaseFileError, FlowError, CodeError, OutcomesError, BrowserError].some(
      (kind) => error instanceof kind,
    );
    if (!isExpected && !(error instanceof RangeError)) throw error;
    stderr.write(`sheet: ${(error as Error).message}\n`);
    return 1;
  }
}

/** What of a command cannot be done, though each part of it is right. */
function whyNot(
  { locale, as, out }: SheetAsked,
  { stdout }: SheetSurroundings,
): string | undefined {
  if (!localeTags.includes(locale.split('-', 1)[0] ?? '')) {
    return `there is no language “${locale}”; there is: ${localeTags.join(', ')}`;
  }
  return as === 'pdf' && out === undefined && stdout.isTTY === true
    ? 'a PDF cannot be shown here: name a file with --out'
    : undefined;
}

function sheetFor(command: SheetAsked, { now, timeZone }: SheetSurroundings): Sheet {
  const { kind, locale, link, made = now().toISOString() } = command;
  const { chart, case: kase } = caseFrom(command.from);
  const speaker = createSpeaker({
    locale,
    flowTexts: shippedTexts(chart.flow.id, locale),
    checks: chart.flow.checks,
  });
  const options = {
    chart,
    case: kase,
    speaker,
    made,
    timeZone,
    ...(link === undefined ? {} : { link }),
  };
  return kind === 'case' ? sheetOf(options) : technicianNote(options);
}

/** The case that a file keeps, or that a code carries where there is no such file. */
function caseFrom(from: string): { readonly chart: Chart; readonly case: Case } {
  if (/^kt\d/iu.test(from) && !existsSync(from)) {
    const charts = shippedFlowNames().map((name) => shippedFlow(name, 'en').chart);
    const found = decodeFindings(
      charts.map(({ flow }) => flow),
      from,
    );
    const chart = charts.find(({ flow }) => flow.id === found.flow);
    if (chart === undefined) throw new FlowError(`there is no flow ${found.flow}`);
    return { chart, case: replayFindings(chart, found).case };
  }
  const { flow, case: kase } = readKeptCase(from);
  return { chart: flow.chart, case: kase };
}

async function writtenAs(
  sheet: Sheet,
  { as, paper }: SheetAsked,
  { env }: SheetSurroundings,
): Promise<string | Uint8Array> {
  switch (as) {
    case 'text':
      return sheetText(sheet);
    case 'json':
      return sheetJson(sheet);
    case 'html':
      return sheetHtml(sheet, { typefaces: sheetTypefaces(sheet.direction) });
    case 'pdf': {
      const browser = await startPrintBrowser(env);
      try {
        return await printSheet(sheet, { browser, paper });
      } finally {
        await browser.close();
      }
    }
  }
}
