/**
 * Pictures in a chat: where the leads go before a measurement is asked for, the circuit beside the
 * verdict.
 */
import { expect, onTestFinished, test, vi } from 'vitest';
import type { Sent, Writer } from './support/bot-api.ts';
import { driver, startBot, type Driver, type RunningBot } from './support/bot-driver.ts';

vi.setConfig({ testTimeout: 60_000 });

async function started(): Promise<RunningBot> {
  const running = await startBot();
  onTestFinished(running.stop);
  return running;
}

/** Answers of somebody with a voltmeter and a weak battery; what is not here is not known. */
const answers: readonly (readonly [asked: string, answer: string])[] = [
  ['Which of these do you have', 'voltmeter'],
  ['with everything off', '11.9 V'],
];

/** Goes on until something is sent that the person has been waiting for. */
async function until(person: Driver, isWanted: (sent: Sent) => boolean): Promise<Sent> {
  await person.say('my car does not start');
  for (const label of ['at home', 'yes, safe', 'petrol']) await person.tap(label);
  await person.say('it just clicks fast');
  for (let turns = 0; turns < 60; turns += 1) {
    const wanted = person.all().find(isWanted);
    if (wanted !== undefined) return wanted;
    const { text, keys } = person.keyboard();
    const [, answer] = answers.find(([asked]) => text.includes(asked)) ?? [];
    if (text.includes('is it safe to go on')) await person.tap(0);
    else if (answer !== undefined) await person.say(answer);
    else if (keys.some((key) => key.text === 'I don’t know')) await person.tap('I don’t know');
    else await person.tap(0);
  }
  throw new Error('it was never sent');
}

const isPicture = ({ photo }: Sent): boolean => photo !== undefined;

test('where the leads go is shown before the reading is asked for, once', async () => {
  const running = await started();
  const person = driver(running, { person: 42, language: 'en' });
  const picture = await until(person, isPicture);
  expect(picture.text).toBe('Where the leads of the meter go');
  const following = person.all()[person.all().indexOf(picture) + 1];
  expect(following?.keys.length).toBeGreaterThan(0);
  expect(following?.text).toContain('volt');
  const sent = await person.say('what is that?');
  expect(sent.filter(isPicture)).toEqual([]);
  expect(running.api.refused).toEqual([]);
  expect(running.errors).toEqual([]);
});

test('a picture that was sent before is not uploaded again', async () => {
  const running = await started();
  const pictures: Sent[] = [];
  for (const person of [42, 43]) {
    const writer: Writer = { person, language: 'en' };
    pictures.push(await until(driver(running, writer), isPicture));
  }
  const [first, second] = pictures;
  expect(first?.photo?.isUploaded).toBe(true);
  expect(second?.photo?.isUploaded).toBe(false);
  expect(second?.photo?.png.equals(first?.photo?.png ?? Buffer.alloc(0))).toBe(true);
});

test('the verdict on measurements comes with the circuit', async () => {
  const running = await started();
  const circuit = await until(
    driver(running, { person: 43, language: 'en' }),
    ({ text, photo }) => photo !== undefined && text === 'The start circuit',
  );
  const sent = running.api.messagesTo(43);
  expect(sent[sent.indexOf(circuit) - 1]?.text).toContain('Most likely at fault');
});
