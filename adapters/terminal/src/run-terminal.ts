/**
 * One run of the program: reads the command line, finds the case, holds the conversation.
 */
import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Case } from '@keyturn/core';
import { createSpeaker, localeTags } from '@keyturn/language';
import {
  caseOf,
  CaseFileError,
  continueCaseFile,
  createCaseFile,
  readCaseFile,
  type CaseKeeper,
} from './case-file.ts';
import { readCommandLine, usage, type Command } from './command-line.ts';
import { beginCase, continueCase, type Ending } from './conversation.ts';
import { demoLines } from './demo-case.ts';
import { plain, styled } from './emphasis.ts';
import { exchangeLines } from './json-lines.ts';
import { streamLines, type Lines } from './lines.ts';
import { layOutPage, type Page } from './page.ts';
import { FlowError, shippedFlow } from '@keyturn/flows';
import { terminalTexts } from './terminal-texts.ts';
import { wrapText } from './wrap.ts';

/** The world outside, as one run meets it. */
export interface Surroundings {
  readonly args: readonly string[];
  /** The path by which the program was called. */
  readonly program: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdin: NodeJS.ReadableStream & { readonly isTTY?: boolean };
  readonly stdout: {
    readonly isTTY?: boolean;
    readonly columns?: number;
    readonly write: (text: string) => unknown;
  };
  readonly stderr: { readonly write: (text: string) => unknown };
  readonly now: () => Date;
  /** Calls `act` on the first Ctrl-C. */
  readonly onInterrupt: (act: () => void) => unknown;
}

/** How long the first line may take before the question is put without it. */
const firstLineMs = 250;

/** The flow of a new case. */
const flowName = 'no-start';

/** Columns that are laid out at least and at most. */
const [fewestColumns, mostColumns] = [40, 80];

/** Runs the program; gives its exit code. */
export async function runTerminal(around: Surroundings): Promise<0 | 1 | 2> {
  const command = readCommandLine(around.args);
  const program = programName(around);
  if (command.type === 'help') {
    around.stdout.write(usage(program, localeTags));
    return 0;
  }
  if (command.type === 'wrong') return wrongUse(around, command.reason);
  const wanted = [command.locale, command.locale.split('-')[0]];
  const locale = localeTags.find((tag) => wanted.includes(tag));
  if (locale === undefined) {
    return wrongUse(
      around,
      `there is no language “${command.locale}”; there is: ${localeTags.join(', ')}`,
    );
  }
  try {
    return await runCase(around, command, locale);
  } catch (error) {
    if (!(error instanceof CaseFileError) && !(error instanceof FlowError)) throw error;
    around.stderr.write(`${wrapText(`keyturn: ${error.message}`, mostColumns).join('\n')}\n`);
    return 1;
  }
}

function wrongUse(around: Surroundings, reason: string): 2 {
  const line = `keyturn: ${reason}. See ${programName(around)} --help.`;
  around.stderr.write(`${wrapText(line, mostColumns).join('\n')}\n`);
  return 2;
}

/** The words that call this program again. */
function programName({ env, program }: Surroundings): string {
  if (env['npm_lifecycle_event'] === 'start') return 'npm start --';
  const name = path.basename(program);
  return name === 'keyturn' ? name : `node ${path.relative('.', program)}`;
}

type CaseCommand = Extract<Command, { type: 'case' }>;

async function runCase(around: Surroundings, command: CaseCommand, locale: string): Promise<0 | 1> {
  const lines = streamLines(around.stdin);
  around.onInterrupt(lines.end);
  try {
    const { file } = command;
    if (file !== undefined) return await goOn(around, { ...command, file, locale, lines });
    const isTyped = around.stdin.isTTY === true;
    const limit = sleep(firstLineMs, undefined, { ref: false });
    if (!isTyped && (await lines.isEmptyWithin(limit))) {
      return await demonstrate(around, command, locale);
    }
    const keeper = createCaseFile(command.caseFile ?? freeName(around.now()));
    const hall = createHall(around, { command, locale, flow: flowName, lines, keeper });
    const ending = await hall.begin();
    if (!isTyped && lines.isEmpty()) {
      keeper.discard();
      return await demonstrate(around, command, locale);
    }
    return hall.end(ending);
  } finally {
    lines.end();
  }
}

async function goOn(
  around: Surroundings,
  given: {
    readonly file: string;
    readonly json: boolean;
    readonly locale: string;
    readonly lines: Lines;
  },
): Promise<0 | 1> {
  const { file, json, locale, lines } = given;
  const kept = readCaseFile(file);
  const [opened] = kept.events;
  const flow = opened?.type === 'opened' ? opened.flow.id : flowName;
  const keeper = continueCaseFile(file, kept);
  const hall = createHall(around, { command: { json }, locale, flow, lines, keeper });
  const kase = caseOf(hall.chart, file, kept.events);
  return hall.end(
    await hall.goOn(kase, { openedAt: opened?.at ?? kase.state.at, isTorn: kept.isTorn }),
  );
}

/** Nobody answers: an invented vehicle does. Kept only where a file was named for it. */
async function demonstrate(
  around: Surroundings,
  command: CaseCommand,
  locale: string,
): Promise<0 | 1> {
  const keeper = command.caseFile === undefined ? undefined : createCaseFile(command.caseFile);
  const hall = createHall(around, {
    command,
    locale,
    flow: flowName,
    lines: demoLines(),
    keeper,
    isDemo: true,
  });
  return hall.end(await hall.begin());
}

/** Everything that a case is held in: its flow, its words, its page and its file. */
function createHall(
  around: Surroundings,
  given: {
    readonly command: { readonly json: boolean };
    readonly locale: string;
    readonly flow: string;
    readonly lines: Lines;
    readonly keeper: CaseKeeper | undefined;
    readonly isDemo?: boolean;
  },
) {
  const { command, locale, lines, keeper, isDemo = false } = given;
  const { stdout, now } = around;
  const { chart, texts: flowTexts } = shippedFlow(given.flow, locale);
  const speaker = createSpeaker({ locale, flowTexts, checks: chart.flow.checks });
  const texts = terminalTexts(locale);
  const fine = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 });
  const coarse = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
  const time = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' });
  const isStyled = stdout.isTTY === true && (around.env['NO_COLOR'] ?? '') === '';
  const page = (): Page => ({
    width: Math.max(fewestColumns, Math.min(mostColumns, stdout.columns ?? mostColumns)),
    emphasis: isStyled ? styled : plain,
    formatQuantity: speaker.formatQuantity,
    nameOf: (check) => flowTexts.checks[check]?.name ?? flowTexts.computed?.[check]?.name ?? check,
    expected: texts.expected,
    formatNumber: (value) => (Math.abs(value) < 100 ? fine : coarse).format(value),
  });
  const shared = { chart, speaker, lines, now, keep: keeper?.keep ?? (() => undefined) };
  const conversation = {
    ...shared,
    flowTexts,
    texts,
    echo: isDemo || around.stdin.isTTY !== true,
    write: (text: string) => void stdout.write(text),
    page,
    formatTime: (date: Date) => time.format(date),
  };
  const writeJson = (value: unknown): void => void stdout.write(`${JSON.stringify(value)}\n`);
  const exchange = { ...shared, write: writeJson };
  const id = randomUUID();
  const notice = isDemo ? { notice: texts.demo } : {};
  return {
    chart,
    begin: (): Promise<Ending> => {
      if (!command.json) return beginCase(conversation, { id, ...notice });
      if (isDemo) writeJson({ demo: true, notice: texts.demo });
      return exchangeLines(exchange, { id });
    },
    goOn: (
      kase: Case,
      from: { readonly openedAt: string; readonly isTorn: boolean },
    ): Promise<Ending> => {
      if (!command.json) return continueCase(conversation, kase, from);
      return exchangeLines(exchange, { case: kase });
    },
    end: (ending: Ending): 0 | 1 => {
      const isBehind = keeper?.isBehind() === true;
      if (command.json) {
        const { outcome } = ending.case.state;
        writeJson({ end: ending.how, outcome, kept: keeper?.path ?? null, isComplete: !isBehind });
        return isBehind ? 1 : 0;
      }
      const call = `${programName(around)} ${quoted(keeper?.path ?? '')}`;
      const said = [
        ...(isDemo ? [texts.demoEnd] : []),
        ...(keeper === undefined
          ? []
          : [
              ending.how === 'closed'
                ? texts.closedKept(keeper.path)
                : texts.kept(keeper.path, call),
            ]),
      ];
      const lines = layOutPage(
        said.map((text) => ({ kind: 'text', text })),
        page(),
      );
      stdout.write(lines.map((line) => `${line}\n`).join(''));
      return isBehind ? 1 : 0;
    },
  };
}

function quoted(file: string): string {
  return /^[\w./\\:-]+$/.test(file) ? file : JSON.stringify(file);
}

/** A name with the date and the time that no file has yet. */
function freeName(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  const date = [now.getFullYear(), two(now.getMonth() + 1), two(now.getDate())].join('');
  const time = [now.getHours(), now.getMinutes(), now.getSeconds()].map(two).join('');
  const name = `keyturn-case-${date}-${time}`;
  let file = `${name}.jsonl`;
  for (let count = 2; existsSync(file); count += 1) file = `${name}-${String(count)}.jsonl`;
  return file;
}
