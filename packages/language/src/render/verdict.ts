import type { VerdictMessage } from '@keyturn/core';
import type { Rendered, RenderedSection } from '../rendered.ts';
import { driverLines } from '../driver-lines.ts';
import type { Voice } from '../voice.ts';
import { sayFaults } from './ranking.ts';

/** A verdict: the fault, how surely, what it rests on, what to do and what would change it. */
export function renderVerdict(message: VerdictMessage, voice: Voice): Rendered[] {
  const { say, flow } = voice;
  const name = flow.fault(message.fault);
  const title = {
    proved: () => say('verdict.title', { name }),
    likely: () => say('verdict.titleLikely', { name }),
    open: () => say('verdict.titleOpen', { name }),
  }[message.strength]();
  const sections = [
    rests(message, voice),
    { id: 'do', heading: say('verdict.do'), lines: doLines(message, voice) },
    ...also(message, voice),
    { id: 'stops', heading: say('verdict.stops'), lines: message.stops.map((id) => flow.stop(id)) },
    { id: 'send', heading: say('verdict.send'), lines: sendLines(message, voice) },
    {
      id: 'roots',
      heading: say(message.strength === 'proved' ? 'verdict.roots' : 'verdict.rootsLikely'),
      lines: message.roots.map((id) => flow.root(id)),
    },
    {
      id: 'licensed',
      heading: say('verdict.licensed'),
      lines: message.licensed ? [say('verdict.licensedText')] : [],
    },
    { id: 'change', heading: say('verdict.change'), lines: changeLines(message, voice) },
  ].filter(({ lines }) => lines.length > 0);
  return [{ kind: 'verdict', title, strength: strength(message, voice), sections }];
}

function strength(message: VerdictMessage, voice: Voice): string {
  const { say, flow, figures } = voice;
  if (message.strength === 'proved') return say('verdict.proved');
  if (message.strength === 'open') {
    return say('verdict.open', { ranking: sayFaults(message.ranking, voice) });
  }
  const share = figures.formatShare(message.probability);
  const checks = message.settle.map(({ check }) => flow.checkName(check));
  return checks.length === 0
    ? say('verdict.likely', { share })
    : say('verdict.likelySettle', { share, checks: figures.listAny(checks) });
}

function rests(message: VerdictMessage, voice: Voice): RenderedSection {
  const { say, flow } = voice;
  const heading = say('verdict.rests');
  if (message.proof.length === 0) {
    return {
      id: 'rests',
      heading,
      lines: [say('verdict.restsOnShares', { ranking: sayFaults(message.ranking, voice) })],
    };
  }
  const lines = message.proof.map(([check, answer]) =>
    say('verdict.finding', {
      name: flow.checkName(check),
      answer: flow.answerMeaning(check, answer),
    }),
  );
  return { id: 'rests', heading, lines };
}

/**
 * What to do. Whoever may not work on the vehicle is never shown how: it is left to those who come.
 */
function doLines({ remedy, waits }: VerdictMessage, voice: Voice): readonly string[] {
  const { say, flow, role } = voice;
  if (!isForOthers(waits, voice)) return remedyLines(remedy, voice);
  return [
    say('verdict.waitSafe'),
    say('verdict.waitWork'),
    ...driverLines(flow.remedy(remedy).waiting ?? [], { isSentHelp: role === 'dispatcher' }),
    say(role === 'dispatcher' ? 'verdict.waitSent' : 'verdict.waitCall'),
  ];
}

/** True where the reader waits for help; the technician is the help that has come. */
function isForOthers(waits: boolean, { role }: Voice): boolean {
  return waits && role !== 'technician';
}

/** What to do, in the driver's words where the reader is one and the remedy has them. */
function remedyLines(remedy: string, { flow, role }: Voice): readonly string[] {
  const { do: anyone, driver } = flow.remedy(remedy);
  return role === 'driver' && driver ? driverLines(driver, { isSentHelp: false }) : anyone;
}

/** The second fault, where two are there at once, and what to do about it after the first. */
function also({ also: other, waits }: VerdictMessage, voice: Voice): readonly RenderedSection[] {
  if (other === undefined) return [];
  const { say, flow, figures } = voice;
  const share = figures.formatShare(other.probability);
  const both = say('verdict.alsoText', { name: flow.fault(other.fault), share });
  return [
    {
      id: 'also',
      heading: say('verdict.also'),
      lines: [both, ...(isForOthers(waits, voice) ? [] : remedyLines(other.remedy, voice))],
    },
  ];
}

function sendLines({ send }: VerdictMessage, { flow }: Voice): string[] {
  return send === 'nothing' ? [] : [flow.send(send)];
}

function changeLines({ settle, strength: how }: VerdictMessage, voice: Voice): string[] {
  const { say, flow, figures } = voice;
  if (settle.length === 0) return how === 'proved' ? [say('verdict.nothingSettles')] : [];
  return settle.map(({ check, lacks }) => {
    const name = flow.checkName(check);
    if (lacks.length === 0) return say('verdict.settle', { name });
    return say('verdict.settleLacks', {
      name,
      kit: figures.listAll(lacks.map((id) => flow.kit(id))),
    });
  });
}
