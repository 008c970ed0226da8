import type { TerminalTexts } from './terminal-words.ts';

/** The terminal's words in English. */
export const en: TerminalTexts = {
  title: (flow) => `KEYTURN: ${flow}`,
  goingOn: (at, answers) => `Going on with the case of ${at}. Answers so far: ${String(answers)}.`,
  soFar: 'What is known so far',
  torn: 'The last line of the file was cut off while it was written, so that one answer is asked again.',
  demo: 'DEMONSTRATION. Nobody is answering, so an invented case is played: the vehicle, its fault and every figure are made up. Call it from a terminal, or give it lines to read, to have your own case.',
  demoEnd: 'That was the demonstration, with an invented vehicle and invented figures.',
  kept: (file, command) => `The case is kept in ${file}. Go on with it by:\n${command}`,
  closedKept: (file) => `The case is kept in ${file}.`,
  notKept: (reason) =>
    `The case cannot be written to its file just now (${reason}). You can go on; it is tried again with every answer.`,
  until: (time) => `The wait is over at ${time}.`,
  notYet: (time, minutes) =>
    `Not yet: ${String(minutes)} min to go, until ${time}. Say “ready” if the time is up already.`,
  offer: (letters) => `(${letters} to pick one, or say it another way; ? for help)`,
  prompt: {
    choice: (count) =>
      `(1${['', '', ' or 2'][count] ?? ` to ${String(count)}`}, or a word; ? for help)`,
    choices: (count) => `(one or more of 1 to ${String(count)}, as in 1 3, or words; ? for help)`,
    date: (count) => `(a day, as in 2026-01-31, or 1 to ${String(count)}; ? for help)`,
    reading: (unit) => `(the figure in ${unit}, or several readings by name; ? for help)`,
    lamp: '(what the lamp shows; ? for help)',
    work: '(1 or done when it is done; ? for help)',
    confirm: '(1 yes, or 2 can’t; ? for help)',
    wait: '(1 or ready when the time is up, Enter to look at the clock; ? for help)',
    closed: '(Enter to leave, or back, or correct with the answer that was wrong)',
    resume: '(1 or over when it is safe to go on; ? for help)',
  },
  expected: 'expected',
  dontKnow: 'don’t know',
  helpNow: 'You can always type',
  help: [
    ['why', 'what the question is for, and what each answer would mean'],
    ['numbers', 'every reading with its spread, what to expect, and the sources'],
    ['back', 'take the last answer back and be asked again'],
    ['correct rest 12.1', 'put an earlier answer right'],
    ['don’t know', 'it stays open, and the case goes on'],
    ['can’t', 'it is not possible or not safe; another way is looked for'],
    ['12.5 rest, 170 A', 'several readings on one line, by name or unit'],
    ['I have a clamp meter', 'your kit has changed'],
    ['repeat', 'the question once more'],
    ['person', 'hand the case over'],
    ['Deutsch, español, …', 'go on in another language'],
    ['stop', 'put the case aside; it is kept and can be gone on with'],
    ['smoke, fuel smell, hurt', 'any danger, in your own words, at any time'],
  ],
};
