/**
 * What every channel holds to, whatever it looks like: one case, told in the trade's words.
 */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';

/** Somebody on a channel. */
export interface ChannelSession {
  /** Writes a text; all that is said to it, as text. */
  readonly say: (text: string) => Promise<string>;
  /** What was said at the beginning, or what is said to the first words. */
  readonly begin: () => Promise<string>;
  /** Taps the key that begins so on the message that had it; all that is said to it. */
  readonly tap?: (label: string) => Promise<string>;
  /** Taps the same key again as `tap` did last. */
  readonly tapAgain?: () => Promise<string>;
  /** Puts the last text into other words. */
  readonly edit?: (text: string) => Promise<string>;
  /** Delivers the last text once more. */
  readonly again?: () => Promise<string>;
  /** Two write at the same moment. */
  readonly both?: (one: string, other: string) => Promise<string>;
  /** Lets so many minutes pass; what is said meanwhile. */
  readonly wait?: (minutes: number) => Promise<string>;
  readonly isOfOneLanguage?: true;
  readonly end: () => Promise<void>;
}

/** A channel to be tested. */
export interface TestedChannel {
  readonly name: string;
  readonly open: (language: string) => Promise<ChannelSession>;
}

/** From the beginning to the question what happens at start: at home, all safe, a petrol engine. */
const toComplaint = ['4', 'yes', 'petrol'];

/** What is answered on the way to a battery that is to rest after it was charged. */
const restAnswers: readonly (readonly [asked: string, answer: string])[] = [
  ['is it safe to go on', 'yes'],
  ['What is the voltage across', '11.6 V'],
  ['What does the battery look like', 'whole and dry'],
  ['How cold or warm', '15'],
];

/** At home, with a voltmeter, a load tester and a charger. */
const withCharger = [
  'home',
  'safe',
  'petrol',
  'it turns slowly',
  '3 years',
  'voltmeter, charger, load tester',
];

/** Runs the contract on a channel. */
export function holdChannel({ name, open }: TestedChannel): void {
  let session: ChannelSession;

  const through = async (lines: readonly string[]): Promise<string> => {
    let said = await session.begin();
    for (const line of lines) said = await session.say(line);
    return said;
  };

  describe(`a case on ${name}`, () => {
    beforeEach(async () => {
      session = await open('en');
    });

    afterEach(async () => {
      await session.end();
    });

    test('begins with a word of safety and the first question', async () => {
      const said = await session.begin();
      expect(said).toContain('Your safety comes first');
      expect(said).toContain('Where is the vehicle standing now?');
      expect(said).toContain('in a parking place');
    });

    test('takes an answer by its number', async () => {
      expect(await through(['4'])).toMatch(/at home.*is everyone safe/s);
    });

    test('takes an answer in words', async () => {
      expect(await through([...toComplaint, 'it just clicks fast'])).toContain(
        'What happens at start: fast clicking.',
      );
    });

    test('takes several answers at once', async () => {
      const said = await through([
        ...toComplaint,
        'it turns slowly, and the battery is 6 years old',
      ]);
      expect(said).toContain('it turns slowly');
      expect(said).toContain('6');
      expect(said).not.toContain('how many years old is the battery?');
    });

    test('answers a wrong answer with what is possible, and changes nothing', async () => {
      const said = await through(['4', 'yes', 'lemonade']);
      expect(said).toMatch(/.lemonade. is not one of the answers/);
      expect(said).toContain('petrol');
      expect(await session.say('petrol')).toContain('When you try to start it');
    });

    test('says a caution before what it is for, and goes on once it is confirmed', async () => {
      const said = await through(['1']);
      expect(said).toMatch(/(?:DANGER|WARNING).*Stay away from traffic.*is it safe to go on/s);
      expect(said).not.toContain('is everyone safe where you are?');
      expect(await session.say('maybe')).not.toContain('is everyone safe where you are?');
      expect(await session.say('yes')).toContain('is everyone safe where you are?');
    });

    test('never shows how to boost to whoever may not work where the vehicle stands', async () => {
      let said = await through(['2', 'yes', 'yes', 'petrol', 'it clicks fast']);
      const heard = [said];
      for (let turns = 0; !/at fault:|Not settled yet:/i.test(said) && turns < 30; turns += 1) {
        said = await session.say(
          said.includes('Did any of these happen') ? 'the lights were left on' : 'don’t know',
        );
        heard.push(said);
      }
      const all = heard.join('\n');
      expect(all).toMatch(/at fault: Discharged battery/i);
      expect(all).toContain('Wait where you are safe');
      expect(all).toContain('the work is for those who come');
      expect(all).not.toMatch(
        /boost it|empty battery’s plus|bare metal|battery gas|the work is done/i,
      );
    });

    test('says what can hurt before it says what to do', async () => {
      let said = await through(['3', 'yes', 'petrol', 'it clicks fast']);
      for (let turns = 0; !/at fault:|Not settled yet:/i.test(said) && turns < 30; turns += 1) {
        said = await session.say(
          said.includes('is it safe to go on')
            ? 'yes'
            : said.includes('Did any of these happen')
              ? 'the lights were left on'
              : 'don’t know',
        );
      }
      expect(said).toMatch(/bare metal of the stranded engine.*What to do/s);
      expect(said).not.toMatch(/What to do.*bare metal of the stranded engine/s);
    });

    test('stops for a danger at any moment, and comes back', async () => {
      const said = await through([...toComplaint, 'there is smoke']);
      expect(said).toContain('Smoke or fire');
      expect(said).toContain('Get everyone out');
      expect(await session.say('it clicks')).not.toContain('fast clicking');
      const back = await session.say('it is over');
      expect(back).toContain('is everyone safe');
      expect(await session.say('yes')).toContain('When you try to start it, what happens?');
    });

    test('says why it asks, and asks again', async () => {
      const said = await through([...toComplaint, 'why']);
      expect(said).toMatch(/If the answer is .nothing at all, or a quiet tick/);
      expect(await session.say('silent')).toContain('What happens at start');
    });

    test('goes back one answer', async () => {
      const said = await through([...toComplaint, 'back']);
      expect(said).toContain('What does the vehicle run on?');
      expect(await session.say('diesel')).toContain('What drives it: diesel.');
    });

    test('corrects an earlier answer', async () => {
      const said = await through([...toComplaint, 'correction: diesel']);
      expect(said).toContain('What drives it: diesel.');
      expect(said).toContain('When you try to start it');
    });

    test('goes on after it does not know, or cannot', async () => {
      const said = await through([...toComplaint, 'silent', 'don’t know']);
      expect(said).toContain('Age of the battery: not known.');
      expect(await session.say('can’t')).toContain('?');
    });

    test('takes several choices of one question', async () => {
      const said = await through([...toComplaint, 'silent', '4 years', 'voltmeter, hand tools']);
      expect(said).toMatch(/voltmeter.*hand tools/s);
    });

    test('questions a figure that cannot be right', async () => {
      const said = await through([...toComplaint, 'silent', '400 years']);
      expect(said).toMatch(/400.*(?:cannot be right|lies between)/s);
      expect(await session.say('4')).toContain('4');
    });

    test('refuses a text that is too long, and changes nothing', async () => {
      const said = await through([...toComplaint, 'clicks '.repeat(400)]);
      expect(said).toContain('too long');
      expect(await session.say('silent')).toContain('What happens at start');
    });

    test('takes signs that would move a cursor or turn a line for what they are: nothing', async () => {
      const said = await through([...toComplaint, '\u202Esi\u0007lent\u001b[2J <b>x</b>']);
      for (const sign of ['\u202E', '\u0007', '\u001b']) expect(said).not.toContain(sign);
    });

    test('hands over to a person, and keeps every answer', async () => {
      expect(await through([...toComplaint, 'person'])).toContain('A person takes over from here');
    });

    test('is put aside', async () => {
      expect(await through([...toComplaint, 'stop'])).toContain('Stopped here. Nothing is lost');
    });
  });

  describe(`what a messenger may do to a case on ${name}`, () => {
    beforeEach(async () => {
      session = await open('en');
    });

    afterEach(async () => {
      await session.end();
    });

    test('a text that comes twice is taken once', async ({ skip }) => {
      const { again } = session;
      if (again === undefined) return skip('nothing is delivered twice here');
      await through(['4', 'yes']);
      expect(await again()).toBe('');
      expect(await session.say('petrol')).toContain('What drives it: petrol.');
    });

    test('two who answer at once are both heard, one after the other', async ({ skip }) => {
      const { both } = session;
      if (both === undefined) return skip('only one can write here');
      await through(['4']);
      const said = await both('yes', 'petrol');
      expect(said).toContain('Safety where you are: yes, safe.');
      expect(said).toContain('What drives it: petrol.');
    });

    test('a text that is edited corrects what it answered', async ({ skip }) => {
      const { edit } = session;
      if (edit === undefined) return skip('what was sent stays as it is here');
      await through([...toComplaint]);
      const said = await edit('diesel');
      expect(said).toContain('What drives it: diesel.');
      expect(said).toContain('When you try to start it');
    });

    test('an edit of what was not understood is heard for the first time', async ({ skip }) => {
      const { edit } = session;
      if (edit === undefined) return skip('what was sent stays as it is here');
      await through(['4', 'yes', 'petorl and lemonade']);
      expect(await edit('petrol')).toContain('What drives it: petrol.');
    });

    test('whoever comes back after a pause is asked where they were', async ({ skip }) => {
      if (session.again === undefined) return skip('the program ends with the pause');
      await through([...toComplaint, 'stop']);
      const said = await session.say('good evening');
      expect(said).toContain('We go on where we were');
      expect(said).toContain('When you try to start it');
    });

    test('a wait that is over is told', async ({ skip }) => {
      const { wait } = session;
      if (wait === undefined) return skip('nobody is there to be told');
      let said = await through(withCharger);
      for (let turns = 0; !said.includes('Wait ') && turns < 30; turns += 1) {
        const asked = restAnswers.find(([words]) => said.includes(words));
        said = await session.say(asked?.[1] ?? 'can’t');
      }
      expect(said).toContain('Wait ');
      expect(await wait(1)).toBe('');
      expect(await wait(150)).toContain('The time is up.');
    });

    test('a closed case is begun anew', async ({ skip }) => {
      if (session.again === undefined) return skip('the program ends with the case');
      const said = await through(['1', 'yes', '1']);
      expect(said).toMatch(/closed|person takes over/);
      expect(said).toContain('Summary, to be passed on');
      const anew = await session.say('1');
      expect(anew).toContain('Where is the vehicle standing now?');
    });

    test('a key of an earlier question answers none', async ({ skip }) => {
      const { tap, tapAgain } = session;
      if (tap === undefined || tapAgain === undefined) return skip('there are no keys here');
      await through(['4']);
      expect(await tap('yes, safe')).toContain('What does the vehicle run on?');
      // The same finger, twice.
      expect(await tapAgain()).toBe('');
      expect(await session.say('petrol')).toContain('What drives it: petrol.');
      const said = await tapAgain();
      expect(said).toContain('That key belongs to an earlier question');
      expect(said).toContain('When you try to start it');
    });

    test('the language of the profile is spoken', async () => {
      const german = await open('de-AT');
      expect(await german.begin()).toContain('Wo steht das Fahrzeug');
      await german.end();
    });

    test('the language is changed by its name', async ({ skip }) => {
      if (session.isOfOneLanguage === true) return skip('the language is chosen at the start here');
      await through(['4']);
      expect(await session.say('Français')).toContain('sécurité');
      expect(await session.say('English')).toContain('is everyone safe');
    });
  });
}
