/**
 * A case card played through the bot: keys are tapped, readings are typed.
 */
import { readCase, type CaseStore } from '@keyturn/cases';
import { positionOf, type VerdictMessage } from '@keyturn/core';
import { shippedTexts } from '@keyturn/flows';
import { createSpeaker } from '@keyturn/language';
import type { Card } from '@keyturn/terminal';
import type { Writer } from './bot-api.ts';
import { caseOf, driver, startBot, type RunningBot } from './bot-driver.ts';
import { nextActs } from './card-acts.ts';
import { noStart } from './no-start.ts';

const { chart } = noStart;

/** What a card came to through the bot. */
export interface PlayedCard {
  readonly verdict: VerdictMessage;
  readonly asked: readonly string[];
}

/** More turns than any card takes. */
const mostTurns = 200;

/** Plays a card up to its verdict, in a language; the bot knows what the card says of the context. */
export async function playCard(
  card: Card,
  { locale, store }: { readonly locale: string; readonly store?: CaseStore },
): Promise<PlayedCard & { readonly running: RunningBot }> {
  const opening = { context: card.context, notAsked: unaskedChecks(card) };
  const running = await startBot({ opening, ...(store === undefined ? {} : { store }) });
  const writer: Writer = { person: 7, language: locale };
  const person = driver(running, writer);
  const { role } = card.context as { readonly role?: string };
  const flowTexts = shippedTexts('no-start', locale);
  const spoken = createSpeaker({
    locale,
    flowTexts,
    checks: chart.flow.checks,
    ...(role === undefined ? {} : { role }),
  });
  const asked: string[] = [];
  await person.say('/start');
  for (let turns = 0; turns < mostTurns; turns += 1) {
    const id = await caseOf(running.store, writer);
    const kase = (await readCase(running.store, chart, id ?? ''))?.case;
    if (kase === undefined) throw new Error(`${card.id}: there is no case`);
    const { verdict } = kase.state;
    if (verdict !== null) return { verdict, asked, running };
    const position = positionOf(kase);
    for (const act of nextActs(kase, { card, spoken, asked })) {
      await (act.type === 'tap' ? person.tap(act.key) : person.say(act.text));
    }
    if (position.awaiting === 'answer') asked.push(position.check);
  }
  throw new Error(`${card.id} never ends`);
}

/** Checks that fill the context, but for those that the card answers: nobody is there to say it. */
function unaskedChecks(card: Card): readonly string[] {
  return Object.values(chart.flow.checks)
    .filter(({ sets, writes }) => writes !== undefined || Object.keys(sets).length > 0)
    .map(({ id }) => id)
    .filter((id) => card.answers[id] === undefined);
}
