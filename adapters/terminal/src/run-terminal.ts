/**
 * One run of the program: reads the command line, finds the case, holds the conversation.
 */
import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { createLearner, hearsByHand } from '@keyturn/conversation';
import type { Case } from '@keyturn/core';
import {
  FlowError,
  TermsError,
  shippedFlow,
  shippedFlowNames,
  shippedTexts,
  shippedVehicle,
  type ShippedFlow,
} from '@keyturn/flows';
import { localeTags } from '@keyturn/language';
import {
  caseOf,
  CaseFileError,
  continueCaseFile,
  createCaseFile,
  readCaseFile,
  type CaseKeeper,
} from './case-file.ts';
import { readCommandLine, usage, usualFlow, type Command } from './command-line.ts';
import { beginCase, continueCase, type Ending, type Spoken } from './conversation.ts';
import { demoLines } from './demo-case.ts';
import { plain, styled } from './emphasis.ts';
import { exchangeLines } from './json-lines.ts';
import { streamLines, type Lines } from './lines.ts';
import { learnedChart } from './outcomes/learned-chart.ts';
import { OutcomesError } from './outcomes/outcomes-error.ts';
import { layOutPage } from './page.ts';
import { knownOfReturn, ReturnError, type KnownOfReturn } from './known-of-return.ts';
import { speakIn } from './speak-in.ts';
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

/** Columns that are laid out at least and at most. */
const [fewestColumns, mostColumns] = [40, 80];

/** Runs the program; gives its exit code. */
export async function runTerminal(around: Surroundings): Promise<0 | 1 | 2> {
  const command = readCommandLine(around.args);
  const program = programName(around);
  if (command.type === 'help') {
    around.stdout.write(usage(program, { locales: localeTags, flows: shippedFlowNames() }));
    return 0;
  }
  if (command.type === 'wrong') return wrongUse(around, command.reason);
  const { locale } = command;
  if (!localeTags.includes(locale.split('-', 1)[0] ?? '')) {
    return wrongUse(
      around,
      `there is no language “${command.locale}”; there is: ${localeTags.join(', ')}`,
    );
  }
  const flows = shippedFlowNames();
  if (!flows.includes(command.flow)) {
    return wrongUse(around, `there is no flow “${command.flow}”; there is: ${flows.join(', ')}`);
  }
  try {
    return await runCase(around, command, locale);
  } catch (error) {
    const isExpected = [CaseFileError, FlowError, OutcomesError, ReturnError, TermsError].some(
      (kind) => error instanceof kind,
    );
    if (!isExpected) throw error;
    around.stderr.write(
      `${wrapText(`keyturn: ${(error as Error).message}`, mostColumns).join('\n')}\n`,
    );
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
    const isShown = !isTyped && command.flow === usualFlow;
    if (isShown && (await lines.isEmptyWithin(limit))) {
      return await demonstrate(around, command, locale);
    }
    // Read before the case's file is made: none is left behind where the flow cannot be used.
    const flow = flowFor(command.flow, locale, command);
    const known = await knownOfReturn(flow.chart.flow, command);
    const keeper = createCaseFile(command.caseFile ?? freeName(around.now()));
    const hall = createHall(around, { command, locale, flow, lines, keeper });
    const ending = await hall.begin(known);
    if (isShown && lines.isEmpty()) {
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
    readonly learned?: string;
    readonly json: boolean;
    readonly locale: string;
    readonly lines: Lines;
  },
): Promise<0 | 1> {
  const { file, locale, lines } = given;
  const kept = readCaseFile(file);
  const [opened] = kept.events;
  const name = opened?.type === 'opened' ? opened.flow.id : usualFlow;
  const flow = flowFor(name, locale, given);
  const keeper = continueCaseFile(file, kept);
  const hall = createHall(around, { command: given, locale, flow, lines, keeper });
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
  const flow = flowFor(usualFlow, locale, command);
  const keeper = command.caseFile === undefined ? undefined : createCaseFile(command.caseFile);
  const hall = createHall(around, {
    command,
    locale,
    flow,
    keeper,
  });
  return hall.end(await hall.begin({ opening: {} }));
}

/** The flow of a case, and its words; it has learned where the command line says so. */
function flowFor(
  name: string,
  locale: string,
  { learned }: { readonly learned?: string },
): ShippedFlow {
  const { chart, texts } = shippedFlow(name, locale);
  return { chart: learned === undefined ? chart : learnedChart(chart, learned), texts };
}

/** Lets what is typed go first; it keeps no process alive. */
function betweenLines(goOn: () => void): () => void {
  const timer = setTimeout(goOn, 5).unref();
  return () => {
    clearTimeout(timer);
  };
}

/** Everything that a case is held in: its flow, its words, its page and its file. */
function createHall(
  around: Surroundings,
  given: {
    readonly command: { readonly json: boolean };
    readonly locale: string;
    readonly flow: ShippedFlow;
    /** None where an invented vehicle answers. */
    readonly lines?: Lines;
    readonly keeper: CaseKeeper | undefined;
  },
) {
  const { command, locale, keeper } = given;
  const { stdout, now } = around;
  const { chart, texts: first } = given.flow;
  const isStyled = stdout.isTTY === true && (around.env['NO_COLOR'] ?? '') === '';
  // Somebody who types takes their time, in which their language is learned.
  const learner =
    given.lines !== undefined && around.stdin.isTTY === true ? createLearner(betweenLines) : null;
  const speakNow = (tag: string): Spoken => {
    const spoken = speakIn(tag, {
      chart,
      texts: tag === locale ? first : shippedTexts(chart.flow.id, tag),
      columns: () => Math.max(fewestColumns, Math.min(mostColumns, stdout.columns ?? mostColumns)),
      emphasis: isStyled ? styled : plain,
    });
    learner?.learn(spoken.speaker.learnAhead(chart.flow.checks));
    return spoken;
  };
  const spoken = speakNow(locale);
  const { speaker, texts } = spoken;
  // The last words are in the language that was spoken last.
  let latest = spoken;
  const spokenIn = (tag: string): Spoken => {
    latest = speakNow(tag);
    return latest;
  };
  const lines =
    given.lines ??
    demoLines({
      label: speaker.answerLabel,
      figure: speaker.formatQuantity,
      dontKnow: texts.dontKnow,
    });
  const isDemo = given.lines === undefined;
  const shared = { chart, speaker, lines, now, keep: keeper?.keep ?? (() => undefined) };
  const conversation = {
    ...shared,
    ...spoken,
    spokenIn,
    byHandIn: (tag: string) => hearsByHand(() => shippedVehicle(tag)),
    echo: isDemo || around.stdin.isTTY !== true,
    write: (text: string) => void stdout.write(text),
  };
  const writeJson = (value: unknown): void => void stdout.write(`${JSON.stringify(value)}\n`);
  const exchange = {
    ...shared,
    write: writeJson,
    speakerIn: (tag: string) => spokenIn(tag).speaker,
  };
  const id = randomUUID();
  return {
    chart,
    begin: ({ opening: known, vehicleAt }: KnownOfReturn): Promise<Ending> => {
      const opening = { id, ...known };
      const notices = [
        ...(isDemo ? [texts.demo] : []),
        ...(vehicleAt === undefined
          ? []
          : [speaker.vehicle('taken', { day: speaker.formatDay(vehicleAt.slice(0, 10)) })]),
      ];
      if (!command.json) return beginCase(conversation, { opening, notices });
      if (isDemo) writeJson({ demo: true, notice: texts.demo });
      return exchangeLines(exchange, { opening });
    },
    goOn: (
      kase: Case,
      from: { readonly openedAt: string; readonly isTorn: boolean },
    ): Promise<Ending> => {
      if (!command.json) return continueCase(conversation, kase, from);
      return exchangeLines(exchange, { case: kase });
    },
    end: (ending: Ending): 0 | 1 => {
      learner?.stop();
      const isBehind = keeper?.isBehind() === true;
      if (command.json) {
        const { outcome } = ending.case.state;
        writeJson({ end: ending.how, outcome, kept: keeper?.path ?? null, isComplete: !isBehind });
        return isBehind ? 1 : 0;
      }
      const { texts: last, page } = latest;
      const call = `${programName(around)} ${quoted(keeper?.path ?? '')}`;
      const said = [
        ...(isDemo ? [last.demoEnd] : []),
        ...(keeper === undefined
          ? []
          : [
              ending.how === 'closed' ? last.closedKept(keeper.path) : last.kept(keeper.path, call),
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
