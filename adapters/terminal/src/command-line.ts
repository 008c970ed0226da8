/**
 * The command line: what it may hold, and what its help says.
 */
import { parseArgs } from 'node:util';

/** What the command line asks for. */
export type Command =
  | { readonly type: 'help' }
  | { readonly type: 'wrong'; readonly reason: string }
  | {
      readonly type: 'case';
      /** A case to go on with. */
      readonly file?: string;
      /** Where a new case is kept. */
      readonly caseFile?: string;
      /** What a new case is about. */
      readonly flow: string;
      /** A file of the shop's terms, where a part is taken back. */
      readonly terms?: string;
      /** What was paid for the part, as it is typed; it wants the terms. */
      readonly price?: string;
      /** True where the old unit is still owed, so that its deposit is held. */
      readonly isOldUnitOwed: boolean;
      /** The case of the vehicle that a part came from: its file or its code. */
      readonly vehicle?: string;
      /** A file of confirmed outcomes by which it is weighed as well. */
      readonly learned?: string;
      readonly json: boolean;
      readonly locale: string;
    };

/** What a case is about unless it is said. */
export const usualFlow = 'no-start';

/** Reads the arguments behind the program's name. Never throws. */
export function readCommandLine(args: readonly string[]): Command {
  let parsed;
  try {
    parsed = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        help: { type: 'boolean', short: 'h', default: false },
        json: { type: 'boolean', default: false },
        locale: { type: 'string', default: 'en' },
        case: { type: 'string' },
        flow: { type: 'string' },
        terms: { type: 'string' },
        price: { type: 'string' },
        'old-unit-owed': { type: 'boolean', default: false },
        vehicle: { type: 'string' },
        learned: { type: 'string' },
      },
    });
  } catch (error) {
    return { type: 'wrong', reason: (error as Error).message };
  }
  const { values, positionals } = parsed;
  if (values.help) return { type: 'help' };
  const [file, ...more] = positionals;
  if (more.length > 0)
    return { type: 'wrong', reason: 'only one case can be gone on with at a time' };
  if (file !== undefined && values.case !== undefined) {
    return {
      type: 'wrong',
      reason: 'a case that is gone on with stays in its file: leave --case out',
    };
  }
  if (file !== undefined && values.flow !== undefined) {
    return {
      type: 'wrong',
      reason: 'a case that is gone on with stays with its flow: leave --flow out',
    };
  }
  if (file !== undefined && (values.terms !== undefined || values.vehicle !== undefined)) {
    return {
      type: 'wrong',
      reason:
        'a case that is gone on with stays with what was known when it began: leave --terms and --vehicle out',
    };
  }
  if (values.terms === undefined && (values.price !== undefined || values['old-unit-owed'])) {
    return {
      type: 'wrong',
      reason: 'without the terms of a shop no amount is reckoned: add --terms',
    };
  }
  if ([file, values.case, values.learned, values.terms, values.vehicle].includes(''))
    return { type: 'wrong', reason: 'the name of the file is empty' };
  return {
    type: 'case',
    ...(file === undefined ? {} : { file }),
    ...(values.case === undefined ? {} : { caseFile: values.case }),
    ...(values.terms === undefined ? {} : { terms: values.terms }),
    ...(values.price === undefined ? {} : { price: values.price }),
    isOldUnitOwed: values['old-unit-owed'],
    ...(values.vehicle === undefined ? {} : { vehicle: values.vehicle }),
    ...(values.learned === undefined ? {} : { learned: values.learned }),
    flow: values.flow ?? usualFlow,
    json: values.json,
    locale: values.locale,
  };
}

/** The help, in lines of at most 80 columns. */
export function usage(
  command: string,
  { locales, flows }: { readonly locales: readonly string[]; readonly flows: readonly string[] },
): string {
  return `Finds by measurement why a vehicle will not start, and proves the repair.

  ${command}                begins a case
  ${command} FILE           goes on with the case kept in FILE

  --case FILE    keep the new case in FILE instead of
                 keyturn-case-<date>-<time>.jsonl in the current folder
  --flow NAME    what the new case is about, ${usualFlow} unless said; there is:
${flows.map((flow) => `                 ${flow}`).join('\n')}
  --terms FILE   the terms on which the shop takes parts back, YAML or JSON
  --price AMOUNT what was paid for the part, in the currency of the terms; no
                 amount is reckoned without it
  --old-unit-owed
                 the deposit for the old unit was paid, and is still held
  --vehicle CASE the no-start case of the vehicle that a part came from, by its
                 file or its code
  --learned FILE weigh by the confirmed outcomes kept in FILE as well, such as
                 keyturn-outcomes.json of the program outcomes
  --json         for programs: each step is one line of JSON with its messages
                 and position; a line given is a JSON input or typed text
  --locale TAG   the language; there is: ${locales.join(', ')}
  -h, --help     this help

Where standard input is not a terminal, its lines are the answers. Where it is
empty, a demonstration with an invented vehicle is played (of ${usualFlow} alone).
Every answer is kept as it is given. Ctrl-C, stop or the end of the input put
the case aside, to be gone on with. NO_COLOR leaves out bold and inverse;
nothing is said by colour.

Exit codes
  0  the case has ended or was put aside
  1  a file cannot be used: of a case, or of the flow
  2  wrong use of the command line
`;
}
