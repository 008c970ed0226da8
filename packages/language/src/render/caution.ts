import type { CautionMessage, ConfirmMessage, InterruptMessage, WaitMessage } from '@keyturn/core';
import type { Rendered } from '../rendered.ts';
import type { Voice } from '../voice.ts';

/** A caution under its signal word. */
export function renderCaution({ caution, word }: CautionMessage, voice: Voice): Rendered[] {
  const { say, flow } = voice;
  return [{ kind: 'caution', caution, word: say(`word.${word}`), text: flow.caution(caution) }];
}

/** The question whether the cautions have been read and it is safe to go on. */
export function renderConfirm({ cautions }: ConfirmMessage, { say }: Voice): Rendered[] {
  return [{ kind: 'confirm', text: say('confirm.ask', { count: Math.max(cautions.length, 1) }) }];
}

/** An interrupt: what to do at once, under its signal word, and how the case goes on. */
export function renderInterrupt(message: InterruptMessage, { say, flow }: Voice): Rendered[] {
  const { name, do: steps, over } = flow.interrupt(message.interrupt);
  const after =
    message.then === 'return' && over !== undefined ? over : say(`interrupt.${message.then}`);
  return [
    {
      kind: 'caution',
      caution: message.interrupt,
      word: say(`word.${message.word}`),
      text: [say('interrupt.heading', { name }), ...steps].join(' '),
    },
    { kind: 'text', text: after },
  ];
}

/** How long to wait, and for what. */
export function renderWait({ check, minutes }: WaitMessage, voice: Voice): Rendered[] {
  const { say, flow, figures } = voice;
  const time = figures.formatMinutes(minutes);
  return [{ kind: 'text', text: say('wait.until', { time, name: flow.checkName(check) }) }];
}
