/**
 * The bot beside its usual questions: a starter is fitted step by step in the chat, begun by its
 * own command.
 */
import type { OfferedFlow } from '@keyturn/conversation/kept';
import { shippedFlow, shippedLocales, shippedTexts } from '@keyturn/flows';
import { expect, onTestFinished, test } from 'vitest';
import { driver, startBot, type Driver } from './support/bot-driver.ts';

const offered: readonly OfferedFlow[] = ['starter-fitting', 'battery-fitting'].map((name) => ({
  chart: shippedFlow(name, 'en').chart,
  texts: (locale) => shippedTexts(name, locale),
  locales: shippedLocales(name),
}));

/** What is answered to what is asked, until the fitting has come to its end. */
const answers: readonly (readonly [asked: string, answer: string])[] = [
  ['is it safe to go on', 'yes'],
  ['Where is the vehicle standing', 'at home'],
  ['What does the vehicle run on', 'petrol'],
  ['proved by measurement that', 'yes, it was measured'],
  ['when the vehicle is secured', 'done, wheels are blocked'],
  ['codes and settings are noted', 'written down'],
  ['ground lead is off', 'minus is off'],
  ['held up while you work', 'axle stands'],
  ['12 V or 24 V', '12 volts'],
  ['main stud and the engine', '0.02'],
  ['leads are off the starter', 'done'],
  ['old starter is out', 'got it out'],
  ['ring gear’s teeth look', 'all good'],
  ['old and the new starter the same', 'identical'],
  ['face look', 'clean'],
  ['bolts start by hand', 'all in by hand'],
  ['bolts that hold the starter', 'M10'],
  ['Which class is stamped', '8.8'],
  ['screwed into', 'cast iron'],
  ['are the bolts tightened', '30 ft lb'],
  ['starter’s main stud?', 'M8'],
  ['nut on the main stud', '10 Nm'],
  ['clear of everything hot', 'yes, nothing touches'],
  ['the ground lead is on', 'battery connected'],
  ['How cold or warm', '18 degrees'],
  ['everything off?', '12.7'],
  ['How does the starter turn', 'evenly'],
  ['posts while start is held', '10.5'],
  ['starter’s main stud?', '0.15'],
  ['starter’s body', '0.12'],
  ['engine running, what is the voltage', '14.2'],
  ['Started three more times', 'every time'],
  ['all warning lamps out', 'all clear'],
];

async function playOn(person: Driver): Promise<string> {
  const left = [...answers];
  for (let turns = 0; turns < 80; turns += 1) {
    const said = person.all().map(({ text }) => text);
    if (said.some((text) => text.includes('What this rests on'))) break;
    const question = said.at(-1) ?? '';
    const at = left.findIndex(([asked]) => question.includes(asked));
    const [, answer] = left[at] ?? [];
    if (answer === undefined) throw new Error(`nothing to answer to: ${question}`);
    // A caution may come again; every other question comes once.
    if (at > 0) left.splice(at, 1);
    await person.say(answer);
  }
  return person
    .all()
    .map(({ text }) => text)
    .join('\n\n');
}

test('a starter is fitted in the chat, with its cautions, and proved by readings', async () => {
  const running = await startBot({ offered });
  onTestFinished(running.stop);
  const person = driver(running, { person: 7, language: 'en' });
  await person.say('/starter_fitting');
  const said = await playOn(person);
  expect(said).toContain('Fitted, and proved by readings');
  for (const word of ['never under', 'Copper', 'soft', 'Ground lead off first']) {
    expect(said.toLowerCase()).toContain(word.toLowerCase());
  }
  expect(running.errors).toEqual([]);
  // Afterwards the usual questions are there again.
  const [first] = await person.say('/new');
  expect(first?.text).toContain('will not start');
});

test('where it has no words in somebody’s language it speaks English', async () => {
  const running = await startBot({ offered });
  onTestFinished(running.stop);
  const person = driver(running, { person: 8, language: 'pl' });
  const sent = await person.say('/battery_fitting');
  const isPolish = shippedLocales('battery-fitting').includes('pl');
  expect(
    sent
      .map(({ text }) => text)
      .join('\n')
      .includes('Let us change the battery'),
  ).toBe(!isPolish);
  expect(running.errors).toEqual([]);
});
