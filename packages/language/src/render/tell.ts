import type { DoneMessage, SetAsideMessage, TellMessage } from '@keyturn/core';
import type { Rendered } from '../rendered.ts';
import type { Voice } from '../voice.ts';

/** What needs only an id to be said. */
export function renderTell(message: TellMessage, voice: Voice): Rendered[] {
  return [{ kind: 'text', text: wording(message, voice) }];
}

function wording({ tell, about }: TellMessage, voice: Voice): string {
  const { say, flow } = voice;
  switch (tell) {
    case 'opening':
      return flow.texts.opening;
    case 'check-again':
      return about === undefined
        ? say('tell.checkAgainAny')
        : say('tell.checkAgain', { name: flow.checkName(about) });
    case 'doubt':
      return say('tell.doubt', { name: flow.checkName(about ?? '') });
    case 'person':
    case 'stopped':
    case 'resumed':
    case 'withdrawn':
    case 'returned':
    case 'restored':
    case 'learned':
      return say(`tell.${tell}`);
  }
}

/** The answers that a correction set aside, by the names of their checks. */
export function renderSetAside({ checks }: SetAsideMessage, voice: Voice): Rendered[] {
  const { say, flow, figures } = voice;
  const names = figures.listAll(checks.map((id) => flow.checkName(id)));
  return [{ kind: 'text', text: say('setAside.checks', { count: checks.length, names }) }];
}

/** How the case ended, and what is missing where the repair is not proved. */
export function renderDone({ outcome, lacks }: DoneMessage, voice: Voice): Rendered[] {
  const { say, flow, figures } = voice;
  const end = say(`done.${outcome}`);
  if (lacks === undefined) return [{ kind: 'done', text: end }];
  const checks = figures.listAll(lacks.map((id) => flow.checkName(id)));
  return [{ kind: 'done', text: say('done.lacks', { end, checks }) }];
}
