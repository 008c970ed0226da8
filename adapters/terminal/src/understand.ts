/**
 * `npm run -s understand -- LOCALE [FLOW]`: what typed texts mean. Reads lines of JSON
 * `{ "check": ID or null, "text": STRING }` from standard input and prints one for each:
 * `{ "understood", "talk", "offers" }`. Exits 0, or 2 where a line, the locale or the flow cannot
 * be read: each such line is named on standard error and the others are answered.
 */
import { createInterface } from 'node:readline';
import { createSpeaker, LanguageError } from '@keyturn/language';
import { meaningOf } from './meaning.ts';
import { PhraseLineError, readPhraseLine } from './phrase-line.ts';
import { FlowError, shippedFlow } from '@keyturn/flows';

process.exitCode = await understandLines(process.argv.slice(2));

async function understandLines([locale, flow = 'no-start', ...more]: readonly string[]): Promise<
  0 | 2
> {
  if (locale === undefined || more.length > 0) {
    process.stderr.write('understand: give a locale, and a flow where it is not no-start\n');
    return 2;
  }
  try {
    const { chart, texts } = shippedFlow(flow, locale);
    const { checks } = chart.flow;
    const speaker = createSpeaker({ locale, flowTexts: texts, checks });
    let code: 0 | 2 = 0;
    let at = 0;
    for await (const line of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
      at += 1;
      if (line.trim() === '') continue;
      try {
        const meaning = meaningOf(readPhraseLine(line, at, checks), chart, speaker);
        process.stdout.write(`${JSON.stringify(meaning)}\n`);
      } catch (error) {
        if (!(error instanceof PhraseLineError)) throw error;
        process.stderr.write(`understand: ${error.message}\n`);
        code = 2;
      }
    }
    return code;
  } catch (error) {
    if (!(error instanceof FlowError) && !(error instanceof LanguageError)) throw error;
    process.stderr.write(`understand: ${error.message}\n`);
    return 2;
  }
}
