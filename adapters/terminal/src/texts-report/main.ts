/**
 * `npm run -s texts -- [LOCALE…] [--made]`: what is missing, unused, overlong or changed since it
 * was translated, a language each line group. `--made` notes for the named languages that they have
 * been made from the English texts as these are now. Exits 0, or 1 where anything is to be done, or
 * 2 where a language has no texts.
 */
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { generalTexts, localeTags } from '@keyturn/language';
import { type FlatTexts, flattenTexts } from './flat-texts.ts';
import { isComplete, type MadeFrom, madeFromNow, reportTexts } from './report.ts';

const flowsFolder = new URL('../../../../flows/', import.meta.url);
const languageFolder = new URL('../../../../packages/language/texts/', import.meta.url);

process.exitCode = run(process.argv.slice(2));

/** One body of texts: a flow's, or the general ones. */
interface Body {
  readonly name: string;
  readonly textsIn: (locale: string) => FlatTexts;
  readonly madeFromFile: (locale: string) => URL;
}

function run(args: readonly string[]): number {
  const isMade = args.includes('--made');
  const named = args.filter((arg) => arg !== '--made');
  const unknown = named.filter((tag) => !localeTags.includes(tag));
  if (unknown.length > 0) {
    process.stderr.write(
      `texts: there is no language “${unknown.join(', ')}”; there is: ${localeTags.join(', ')}\n`,
    );
    return 2;
  }
  if (isMade && named.length === 0) {
    process.stderr.write('texts: name the languages that have been translated anew\n');
    return 2;
  }
  const locales = (named.length > 0 ? named : localeTags).filter((tag) => tag !== 'en');
  let isAllDone = true;
  for (const body of bodies()) {
    const english = body.textsIn('en');
    for (const locale of locales) {
      const file = body.madeFromFile(locale);
      if (isMade) writeJson(file, madeFromNow(english));
      const report = reportTexts(english, body.textsIn(locale), readMadeFrom(file));
      isAllDone &&= isComplete(report);
      const counts = Object.entries(report).map(
        ([what, keys]) => `${what} ${String((keys as readonly string[]).length)}`,
      );
      process.stdout.write(`${locale} ${body.name}: ${counts.join(', ')}\n`);
      for (const [what, keys] of Object.entries(report)) {
        for (const key of keys as readonly string[]) process.stdout.write(`  ${what} ${key}\n`);
      }
    }
  }
  return isAllDone ? 0 : 1;
}

function bodies(): readonly Body[] {
  const flows = readdirSync(flowsFolder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }): Body => {
      const folder = new URL(`${name}/texts/`, flowsFolder);
      return {
        name,
        textsIn: (locale) => {
          const file = new URL(`${locale}.json`, folder);
          return existsSync(file)
            ? flattenTexts(JSON.parse(readFileSync(file, 'utf8')))
            : new Map();
        },
        madeFromFile: (locale) => new URL(`${locale}.made-from.json`, folder),
      };
    });
  const general: Body = {
    name: 'general',
    textsIn: (locale) => flattenTexts(generalTexts(locale)),
    madeFromFile: (locale) => new URL(`${locale}.made-from.json`, languageFolder),
  };
  return [...flows, general];
}

function readMadeFrom(file: URL): MadeFrom {
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as MadeFrom) : {};
}

function writeJson(file: URL, value: MadeFrom): void {
  writeFileSync(fileURLToPath(file), `${JSON.stringify(value, null, 2)}\n`);
}
