/**
 * A case card played through the bot: keys are tapped, readings are typed.
 */
import { readCase, type CaseStore } from '@keyturn/cases';
import {
  expected,
  positionOf,
  repeat,
  type AskMessage,
  type Case,
  type VerdictMessage,
} from '@keyturn/core';
import { shippedTexts } from '@keyturn/flows';
import { createSpeaker, type Speaker } from '@keyturn/language';
import type { Card } from '@keyturn/terminal';
import type { Writer } from './bot-api.ts';
import { caseOf, driver, startBot, type Driver, type RunningBot } from './bot-driver.ts';
import { noStart, speaker } from './no-start.ts';

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
    await answer({ card, kase, person, spoken, asked });
  }
  throw new Error(`${card.id} never ends`);
}

interface Turn {
  readonly card: Card;
  readonly kase: Case;
  readonly person: Driver;
  readonly spoken: Speaker;
  readonly asked: string[];
}

async function answer({ card, kase, person, spoken, asked }: Turn): Promise<void> {
  const position = positionOf(kase);
  if (position.awaiting !== 'answer') {
    await person.tap(0);
    return;
  }
  const { check } = position;
  const time = asked.filter((one) => one === check).length;
  asked.push(check);
  const said = [card.answers[check]].flat()[time];
  const ask = repeat(chart, kase).find((message): message is AskMessage => message.kind === 'ask');
  const meant = said === undefined || ask === undefined ? undefined : meaningOf(said, ask, kase);
  if (ask === undefined || meant === undefined) {
    await person.tap(spoken.key('cannot'));
  } else if (!Array.isArray(meant)) {
    await person.say(spoken.formatQuantity(meant as { value: number; unit: string }));
  } else {
    const keys = ask.lamp.length > 0 ? ask.lamp : ask.options;
    for (const option of meant) await person.tap(keys.indexOf(String(option)));
    const isOpen = ask.form === 'choices' && !meant.includes('none');
    if (isOpen) await person.tap(spoken.key('take'));
  }
}

/** Choice ids, or a figure, as the card's words mean it; undefined where they are not understood. */
function meaningOf(said: string, ask: AskMessage, kase: Case): unknown {
  const parts = said.split(',').map((part) => part.trim());
  if (parts.every((part) => ask.options.includes(part))) return parts;
  const understood = speaker.understand(said, expected(chart, kase));
  const [input] = understood.type === 'input' ? understood.inputs : [];
  const [given] = input?.type === 'answers' ? input.answers : [];
  return given?.check === ask.check ? given.value : undefined;
}

/** Checks that fill the context, but for those that the card answers: nobody is there to say it. */
function unaskedChecks(card: Card): readonly string[] {
  return Object.values(chart.flow.checks)
    .filter(({ sets, writes }) => writes !== undefined || Object.keys(sets).length > 0)
    .map(({ id }) => id)
    .filter((id) => card.answers[id] === undefined);
}
