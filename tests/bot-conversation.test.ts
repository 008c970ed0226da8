/**
 * What a driver sees, written out: `examples/bot-conversation.md` is what the bot says today.
 */
import { expect, onTestFinished, test } from 'vitest';
import type { Sent, Writer } from './support/bot-api.ts';
import { driver, startBot } from './support/bot-driver.ts';

const writer: Writer = { person: 42, language: 'en' };

/** A text, or `[a key]`. */
const acts: readonly string[] = [
  'hello, it is dark and my car does not start',
  '[in a parking place]',
  '[yes, safe]',
  '[petrol]',
  'it only clicks fast, and the battery is 6 years old',
  'jump leads and a second car, and somebody helps me',
  '[Why?]',
];

/** Answers to whatever is asked from there on; what is not here is not known. */
const answers: readonly (readonly [asked: string, answer: string])[] = [
  ['is it safe to go on', '[Yes, it is safe]'],
  ['Did any of these happen', 'the lights were left on'],
  ['clutch pedal, or is it', 'automatic'],
  ['Where is the gear lever', 'in park'],
  ['How cold or warm', '8 degrees'],
  ['What does the battery look like', 'whole and dry'],
  ['the two clamps', 'clean and tight'],
  ['dashboard as a whole', 'it goes dim'],
  ['headlamps', 'they go dim'],
  ['does the engine turn', 'it starts'],
];

const quoted = (text: string): string =>
  text
    .split('\n')
    .map((line) => `> ${line}`.trimEnd())
    .join('\n');

function shown({ text, entities, keys }: Sent): string {
  const bold = entities
    .toReversed()
    .reduce(
      (all, { offset, length }) =>
        `${all.slice(0, offset)}**${all.slice(offset, offset + length)}**${all.slice(offset + length)}`,
      text,
    );
  const labels = keys.map((key) => `\`${key.text}\``).join(' ');
  return quoted(labels === '' ? bold : `${bold}\n\n${labels}`);
}

test('the conversation in the examples is what the bot says', { timeout: 60_000 }, async () => {
  const running = await startBot();
  onTestFinished(running.stop);
  const person = driver(running, writer);
  const lines = [
    '# What a driver sees',
    '',
    'The vehicle and the driver are invented. What the driver writes stands bare, a key that is tapped in brackets; what the bot says is set in.',
  ];
  const act = async (said: string): Promise<void> => {
    const key = /^\[(.*)\]$/.exec(said)?.[1];
    const sent = await (key === undefined ? person.say(said) : person.tap(key));
    lines.push('', `**Driver:** ${said}`);
    for (const one of sent) lines.push('', shown(one));
  };
  for (const one of acts) await act(one);
  for (let turns = 0; turns < 40; turns += 1) {
    const { text, keys } = person.keyboard();
    if (keys.some((key) => key.text === 'Begin a new case')) break;
    const known = answers.find(([asked]) => text.includes(asked));
    await act(known?.[1] ?? '[I don’t know]');
  }
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot('../examples/bot-conversation.md');
});
