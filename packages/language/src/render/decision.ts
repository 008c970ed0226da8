import type { DecisionMessage, RefundLine } from '@keyturn/core';
import type { Rendered, RenderedSection } from '../rendered.ts';
import type { Voice } from '../voice.ts';
import { knowingLines } from './knowing.ts';

/**
 * A decision as it is read out to a customer: what must not be done, why, what it rests on, what is to be done, what is
 * paid back and how that was reckoned, what would have changed it, what to measure on the vehicle.
 */
export function renderDecision(message: DecisionMessage, voice: Voice): Rendered[] {
  const { say, flow } = voice;
  const { decide, called, measure, besides = [] } = message;
  const sections = [
    { id: 'stops', heading: say('verdict.stops'), lines: message.stops.map((id) => flow.stop(id)) },
    { id: 'do', heading: say('decision.do'), lines: doLines(message, voice) },
    { id: 'rests', heading: say('decision.rests'), lines: restLines(message, voice) },
    refundSection(message, voice),
    { id: 'measure', heading: say('decision.measure'), lines: measure.map(flow.measure) },
    { id: 'change', heading: say('decision.change'), lines: changeLines(message, voice) },
    {
      id: 'rights',
      heading: say('decision.rights'),
      lines: called === 'decision' ? [say('decision.law')] : [],
    },
  ].filter(({ lines }) => lines.length > 0);
  return [
    {
      kind: 'verdict',
      title: flow.decision(decide).title,
      strength: [...reasonLines(message, voice), ...besides.map(flow.beside)].join(' '),
      sections,
    },
  ];
}

/** Why, in sentences; of a figure that is too close to call which one it is. */
function reasonLines(
  { decide, reason, says = reason, rests }: DecisionMessage,
  { flow, figures }: Voice,
): readonly string[] {
  const close = rests.filter(([, found]) => found === 'borderline');
  const names = figures.listAll(close.map(([check]) => flow.checkName(check)));
  return flow.reasonSaid(says, decide).map((line) => line.replaceAll('{{figures}}', names));
}

/** A decision and its reason, in short. */
export function sayDecision(
  { decide, reason }: Pick<DecisionMessage, 'decide' | 'reason'>,
  { say, flow }: Voice,
): string {
  return say('decision.short', {
    decision: flow.decision(decide).name,
    reason: flow.reason(reason).name,
  });
}

function doLines(
  { reason, says = reason, again, voids = [], known }: DecisionMessage,
  { say, flow, figures }: Voice,
): string[] {
  const names = [...again, ...voids].map(flow.checkName);
  return [
    ...knowingLines(flow.reason(says).do ?? [], known, figures),
    ...(names.length === 0 ? [] : [say('decision.again', { names: figures.listAll(names) })]),
  ];
}

function restLines({ rests }: DecisionMessage, { say, flow }: Voice): string[] {
  return rests.map(([check, found]) => {
    const isAnswer = found !== 'borderline' && found !== 'unanswered';
    return say('verdict.finding', {
      name: flow.checkName(check),
      answer: isAnswer ? flow.answerMeaning(check, found) : say(`decision.${found}`),
    });
  });
}

function changeLines({ changes }: DecisionMessage, voice: Voice): string[] {
  const { say, flow, figures } = voice;
  return changes.map(({ check, answers, decide, reason }) =>
    say('decision.changed', {
      name: flow.checkName(check),
      answers: figures.listAny(answers.map((answer) => flow.answerLabel(check, answer))),
      decision: sayDecision({ decide, reason }, voice),
    }),
  );
}

function refundSection(
  { refund, lacking, isDepositOpen }: DecisionMessage,
  voice: Voice,
): RenderedSection {
  const { say, figures } = voice;
  const [id, heading] = ['refund', say('refund.heading')];
  const open = isDepositOpen === true ? [say('refund.depositOpen')] : [];
  if (refund === undefined) {
    if (lacking === undefined) return { id, heading, lines: open };
    const what = figures.listAll(lacking.map((one) => say(`lacking.${one}`)));
    return { id, heading, lines: [...open, say('refund.lacks', { what })] };
  }
  const { currency, lines, total } = refund;
  const money = (amount: number): string => figures.formatMoney(amount, currency);
  return {
    id,
    heading,
    lines: [
      // What is kept back is called so, and needs no sign.
      ...lines.map((line) => refundLine(line, money(Math.abs(line.amount)), voice)),
      ...open,
      say('refund.total', { amount: money(total) }),
    ],
  };
}

function refundLine(line: RefundLine, amount: string, { say, figures }: Voice): string {
  const share = (percent: number): string => figures.formatQuantity({ value: percent, unit: '%' });
  switch (line.line) {
    case 'price':
    case 'deposit':
      return say(`refund.${line.line}`, { amount });
    case 'restocking':
      return line.percent === undefined
        ? say('refund.restocking', { amount })
        : say('refund.restockingShare', { amount, share: share(line.percent) });
    case 'used': {
      const months = String(line.months);
      return line.percent === undefined
        ? say('refund.usedMonths', {
            amount,
            months,
            left: String(line.left ?? 0),
            of: String(line.of ?? 0),
          })
        : say('refund.usedShare', { amount, months, share: share(line.percent) });
    }
  }
}
