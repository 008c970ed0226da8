/**
 * The command line of `sheet`: what it may hold, and what its help says.
 */
import { parseArgs } from 'node:util';

/** What a sheet is written as. */
const sheetForms = ['text', 'html', 'pdf', 'json'] as const;

/** What a sheet is for. */
const sheetKinds = ['case', 'technician'] as const;

const papers = ['A4', 'Letter'] as const;

/** What the command line asks for. */
export type SheetCommand =
  | { readonly type: 'help' }
  | { readonly type: 'wrong'; readonly reason: string }
  | {
      readonly type: 'sheet';
      /** The case, or the code of one. */
      readonly from: string;
      readonly kind: (typeof sheetKinds)[number];
      readonly as: (typeof sheetForms)[number];
      readonly paper: (typeof papers)[number];
      readonly locale: string;
      /** Where it is written; left out, to standard output. */
      readonly out?: string;
      readonly isToReplace: boolean;
      readonly link?: string;
      /** ISO 8601; left out, now. */
      readonly made?: string;
    };

/** Reads the arguments behind the program's name. Never throws. */
export function readSheetCommand(args: readonly string[]): SheetCommand {
  let parsed;
  try {
    parsed = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        help: { type: 'boolean', short: 'h', default: false },
        kind: { type: 'string', default: 'case' },
        as: { type: 'string', default: 'text' },
        paper: { type: 'string', default: 'A4' },
        locale: { type: 'string', default: 'en' },
        out: { type: 'string' },
        replace: { type: 'boolean', default: false },
        link: { type: 'string' },
        made: { type: 'string' },
      },
    });
  } catch (error) {
    return { type: 'wrong', reason: (error as Error).message };
  }
  const { values, positionals } = parsed;
  if (values.help) return { type: 'help' };
  const [from, ...more] = positionals;
  if (from === undefined || from === '' || more.length > 0) {
    return { type: 'wrong', reason: 'name one file of a case, or give the code of one' };
  }
  const kind = sheetKinds.find((one) => one === values.kind);
  if (kind === undefined) return notOneOf('kind', values.kind, sheetKinds);
  const as = sheetForms.find((one) => one === values.as);
  if (as === undefined) return notOneOf('as', values.as, sheetForms);
  const paper = papers.find((one) => one === values.paper);
  if (paper === undefined) return notOneOf('paper', values.paper, papers);
  const { out, link, made, locale } = values;
  if (out === '') return { type: 'wrong', reason: 'the name behind --out is empty' };
  if (made !== undefined && Number.isNaN(Date.parse(made))) {
    return { type: 'wrong', reason: `--made is “${made}”; it takes a time like 2026-01-01T08:00Z` };
  }
  return {
    type: 'sheet',
    from,
    kind,
    as,
    paper,
    locale,
    isToReplace: values.replace,
    ...(out === undefined ? {} : { out }),
    ...(link === undefined ? {} : { link }),
    ...(made === undefined ? {} : { made }),
  };
}

function notOneOf(name: string, given: string, possible: readonly string[]): SheetCommand {
  return { type: 'wrong', reason: `--${name} is “${given}”; it takes ${possible.join(', ')}` };
}

/** The help, in lines of at most 80 columns. */
export function sheetUsage(program: string, locales: readonly string[]): string {
  return `Writes a sheet of a case: to keep, to hand over, to print, or for a machine.

  ${program} FILE      of the case kept in FILE
  ${program} CODE      of the findings that a code carries (KT1…)

  --kind KIND    case: all that is known of the case, with its measurements
                 technician: a note to be read in ten seconds
  --as FORM      text, html (one file, prints on A4 and Letter), pdf, or json
                 (its form: packages/sheets/schema/sheet.schema.json)
  --paper SIZE   A4 or Letter, for pdf
  --locale TAG   the language; there is: ${locales.join(', ')}
  --out FILE     where to; --replace replaces a file that is there already
  --link URL     what the square code on the sheet holds, in place of the
                 findings
  --made TIME    the date on the sheet, in place of now
  -h, --help     this help

A PDF is printed by a browser of the Chromium kind: the one that KEYTURN_BROWSER
names, else one that is installed, else that of the package @sparticuz/chromium.

Exit codes
  0  the sheet is written
  1  the case cannot be used, or the sheet cannot be written
  2  wrong use of the command line
`;
}
