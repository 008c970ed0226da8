/**
 * The command line of `outcomes`: what it may hold, and what its help says.
 */
import { parseArgs } from 'node:util';

/** What the command line asks for. */
export type OutcomesCommand =
  | { readonly type: 'help' }
  | { readonly type: 'wrong'; readonly reason: string }
  | (OutcomesAction & { readonly kept: string });

/** What is to be done with the outcomes kept in a file. */
export type OutcomesAction =
  | { readonly type: 'confirm'; readonly caseFile: string; readonly cause: string }
  | { readonly type: 'undo'; readonly of: string }
  | { readonly type: 'export'; readonly file: string; readonly replace: boolean }
  | { readonly type: 'import'; readonly file: string }
  | {
      readonly type: 'report';
      readonly role?: string;
      readonly channel?: string;
      readonly picture?: string;
      readonly replace: boolean;
    };

const options = {
  help: { type: 'boolean', short: 'h' },
  kept: { type: 'string' },
  cause: { type: 'string' },
  role: { type: 'string' },
  channel: { type: 'string' },
  picture: { type: 'string' },
  replace: { type: 'boolean' },
} as const;

/** Beside `--kept`, what each action takes: whether a file, and which options. */
const actions: Readonly<
  Record<OutcomesAction['type'], { readonly of?: string; readonly takes: readonly string[] }>
> = {
  confirm: { of: 'the file of a case', takes: ['cause'] },
  undo: { of: 'the file of a case, or the id of an outcome', takes: [] },
  export: { of: 'a file', takes: ['replace'] },
  import: { of: 'a file', takes: [] },
  report: { takes: ['role', 'channel', 'picture', 'replace'] },
};

/** Reads the arguments behind the program's name. Never throws. */
export function readOutcomesCommand(args: readonly string[]): OutcomesCommand {
  let parsed;
  try {
    parsed = parseArgs({ args: [...args], allowPositionals: true, options });
  } catch (error) {
    return { type: 'wrong', reason: (error as Error).message };
  }
  const { values, positionals } = parsed;
  if (values.help === true) return { type: 'help' };
  const [type = '', of, ...more] = positionals;
  if (!isAction(type)) {
    return { type: 'wrong', reason: `say what to do: ${Object.keys(actions).join(', ')}` };
  }
  const { of: needed, takes } = actions[type];
  const { kept = 'keyturn-outcomes.json', replace = false, ...given } = values;
  const names = Object.keys(values).filter((name) => name !== 'kept');
  const odd = names.find((name) => !takes.includes(name));
  if (odd !== undefined) return { type: 'wrong', reason: `${type} takes no --${odd}` };
  if (more.length > 0 || (needed === undefined && of !== undefined)) {
    return { type: 'wrong', reason: `there is too much: ${more[0] ?? of ?? ''}` };
  }
  if (needed !== undefined && of === undefined) {
    return { type: 'wrong', reason: `${type} needs ${needed}` };
  }
  if ([of, ...Object.values(values)].includes('')) {
    return { type: 'wrong', reason: 'something given is empty' };
  }
  switch (type) {
    case 'confirm':
      return given.cause === undefined
        ? {
            type: 'wrong',
            reason:
              'confirm needs --cause with what the repair or an inspection showed; ' +
              'it is never taken from the verdict',
          }
        : { type, kept, caseFile: of ?? '', cause: given.cause };
    case 'undo':
      return { type, kept, of: of ?? '' };
    case 'export':
      return { type, kept, file: of ?? '', replace };
    case 'import':
      return { type, kept, file: of ?? '' };
    case 'report': {
      const { role, channel, picture } = given;
      return {
        type,
        kept,
        replace,
        ...(role === undefined ? {} : { role }),
        ...(channel === undefined ? {} : { channel }),
        ...(picture === undefined ? {} : { picture }),
      };
    }
  }
}

function isAction(type: string): type is OutcomesAction['type'] {
  return Object.hasOwn(actions, type);
}

/** The help, in lines of at most 80 columns. */
export function outcomesUsage(command: string): string {
  return `Learns from what turned out to be the cause.

  ${command} confirm CASE --cause FAULT
      counts the cause that the repair or an inspection showed, for the kept
      case in the file CASE, and every check done; a case counts once
  ${command} undo CASE
      takes it back, exactly; in place of CASE the id that confirm printed
  ${command} export FILE
      writes the counts as JSON: ids and whole numbers, no time, place or text
  ${command} import FILE
      adds the counts of such a file; a later export of the same place takes
      the place of the earlier one
  ${command} report
      shows how far the probabilities of verdicts could be taken at their word;
      --role ROLE or --channel CHANNEL for those only; --picture FILE draws it
      as SVG

  --kept FILE    where outcomes are kept; keyturn-outcomes.json in the current
                 folder when left out
  --replace      write over a file that exists
  -h, --help     this help

Exit codes
  0  done
  1  something cannot be used or is refused; then nothing is changed
  2  wrong use of the command line
`;
}
