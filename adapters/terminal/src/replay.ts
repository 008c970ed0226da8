/**
 * `npm run -s replay -- FILE…`: plays the case cards of the files and prints one JSON object a
 * line. Exits 0 when every card is ok, 1 when one is not, 2 on a file that it cannot read.
 */
import { readFileSync } from 'node:fs';
import { ContextError } from '@keyturn/core';
import { createSpeaker, type Speaker } from '@keyturn/language';
import { CardError, readCards, type Card } from './card.ts';
import { replayCard, replayDecision } from './replay-card.ts';
import { FlowError, shippedFlow, type ShippedFlow } from '@keyturn/flows';

const files = process.argv.slice(2);
process.exitCode = replayFiles(files);

function replayFiles(paths: readonly string[]): number {
  if (paths.length === 0) {
    process.stderr.write('replay: give one or more files of case cards\n');
    return 2;
  }
  try {
    const cards = paths.flatMap((path) => readCards(path, readText(path)));
    const flows = new Map<string, ShippedFlow & { readonly speaker: Speaker }>();
    let allOk = true;
    for (const card of cards) {
      const { chart, speaker } = flowFor(card, flows);
      const play = chart.flow.decisions.length > 0 ? replayDecision : replayCard;
      const replayed = play(chart, speaker, card);
      process.stdout.write(`${JSON.stringify(replayed)}\n`);
      allOk &&= replayed.ok;
    }
    return allOk ? 0 : 1;
  } catch (error) {
    if (error instanceof CardError || error instanceof FlowError || error instanceof ContextError) {
      process.stderr.write(`replay: ${error.message}\n`);
      return 2;
    }
    throw error;
  }
}

function readText(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (cause) {
    throw new CardError(`${path}: cannot be read: ${(cause as Error).message}`);
  }
}

function flowFor(
  card: Card,
  flows: Map<string, ShippedFlow & { readonly speaker: Speaker }>,
): ShippedFlow & { readonly speaker: Speaker } {
  const key = `${card.flow} ${card.locale}`;
  const known = flows.get(key);
  if (known !== undefined) return known;
  const shipped = shippedFlow(card.flow, card.locale);
  const { flow } = shipped.chart;
  const speaker = createSpeaker({
    locale: card.locale,
    flowTexts: shipped.texts,
    checks: flow.checks,
  });
  const made = { ...shipped, speaker };
  flows.set(key, made);
  return made;
}
