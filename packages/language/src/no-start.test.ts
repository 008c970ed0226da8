import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import type { AskMessage, Check, Flow } from '@keyturn/core';
import { loadFlow } from '@keyturn/core/load';
import { describe, expect, test } from 'vitest';
import type { FlowTexts } from './flow-texts.ts';
import { createSpeaker } from './create-speaker.ts';
import type { Speaker } from './speaker.ts';
import type { Hearing } from './understand/understood.ts';
import { enWords } from './words/en.ts';

const folder = path.join(import.meta.dirname, '../../../flows/no-start');
const textsFile = path.join(folder, 'texts/en.json');

function readFlow(): Flow {
  const files = readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => ({ path: name, text: readFileSync(path.join(folder, name), 'utf8') }));
  const loaded = loadFlow(files);
  if (loaded.type !== 'flow') throw new Error(JSON.stringify(loaded.issues[0]));
  return loaded.flow;
}

describe('the English texts of the flow no-start', () => {
  const texts = JSON.parse(readFileSync(textsFile, 'utf8')) as FlowTexts;
  const flow = readFlow();
  const { checks } = flow;
  const speaker: Speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks });
  const hearing = (check: string | null): Hearing => ({
    awaiting: 'answer',
    check,
    checks,
    interrupts: Object.keys(flow.interrupts),
    kit: [],
    answered: [],
    nominal: 12,
    lamp: false,
  });

  test.each(Object.values(checks).map((check): [string, Check] => [check.id, check]))(
    '%s is asked and answered in words',
    (id, { form, probes }) => {
      const isChoice = form.kind === 'choice';
      const ask: AskMessage = {
        kind: 'ask',
        check: id,
        form: isChoice ? (form.several ? 'choices' : 'choice') : form.kind,
        options: isChoice ? form.choices : [],
        lamp: form.kind === 'reading' ? Object.keys(form.lamp) : [],
        minutes: 1,
        time: 1,
        remembered: false,
        ...(probes === undefined ? {} : { probes }),
      };
      expect(speaker.render([ask])).toMatchObject([{ kind: 'question', check: id }]);
      const answers = isChoice
        ? form.choices
        : form.kind === 'reading'
          ? form.bands.map((b) => b.id)
          : [];
      for (const answer of answers) {
        expect(speaker.render([{ kind: 'noted', check: id, answer: [answer] }])).toHaveLength(1);
      }
    },
  );

  test.each(Object.keys(checks))('every way to answer %s is that answer', (id) => {
    const check = checks[id]!;
    if (check.form.kind !== 'choice') return;
    const words = texts.checks[check.like ?? id] ?? texts.checks[id];
    for (const answer of check.form.choices) {
      const { label = answer, said = [] } = words?.answers?.[answer] ?? {};
      for (const phrase of [answer, label, ...said]) {
        expect(speaker.understand(phrase, hearing(id)), phrase).toMatchObject({
          type: 'input',
          inputs: [{ type: 'answers', answers: [{ check: id, value: [answer] }] }],
        });
      }
    }
  });

  // Talk that is an answer where it is asked for: somebody to help, enough fuel.
  const meant: Readonly<Record<string, readonly string[]>> = {
    someone: ['kit'],
    enough: ['fuel-level', 'fuel-after'],
  };

  test.each(Object.keys(checks))(
    'nothing that is plain talk is taken for an answer to %s',
    (id) => {
      const plain = [
        'dont-know',
        'cannot',
        'why',
        'numbers',
        'back',
        'repeat',
        'person',
        'stop',
      ] as const;
      for (const talk of plain) {
        for (const phrase of enWords.talk[talk].filter(
          (one) => meant[one]?.includes(id) !== true,
        )) {
          expect(speaker.understand(phrase, hearing(id)), phrase).toMatchObject({
            type: 'input',
            inputs: [{ type: 'talk', talk }],
          });
        }
      }
    },
  );

  test.each(Object.keys(texts.interrupts))('%s is raised however it is said', (interrupt) => {
    for (const phrase of texts.interrupts[interrupt]?.said ?? []) {
      for (const text of [phrase, `help, ${phrase}!`, `12.4 V, ${phrase}`]) {
        for (const check of [null, 'complaint', 'battery-rest']) {
          const understood = speaker.understand(text, hearing(check));
          expect(understood, text).toMatchObject({ type: 'input' });
          expect(understood.type === 'input' && understood.inputs, text).toContainEqual({
            type: 'interrupt',
            interrupt,
          });
        }
      }
    }
  });

  test.each([
    {
      check: 'battery-rest',
      text: '12.5 rest, 9.8 crank, 170 A',
      names: ['battery-rest', 'battery-crank', 'crank-current'],
    },
    {
      check: null,
      text: '12.5 rest, 9.8 crank, 170 A',
      names: ['battery-rest', 'battery-crank', 'crank-current'],
    },
    { check: 'control-signal', text: '9.5 at terminal 50', names: ['control-signal'] },
    { check: 'charging-later', text: '14.1 after 20 minutes', names: ['charging-later'] },
    { check: 'battery-tester', text: '520 CCA', names: ['battery-tester'] },
  ])('"$text" is bound to $names', ({ check, text, names }) => {
    const understood = speaker.understand(text, hearing(check));
    expect(understood).toMatchObject({
      type: 'input',
      inputs: [{ type: 'answers', answers: names.map((name) => ({ check: name })) }],
    });
  });
});
