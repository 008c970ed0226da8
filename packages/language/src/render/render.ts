import type { Message } from '@keyturn/core';
import type { Rendered } from '../rendered.ts';
import type { Voice } from '../voice.ts';
import { renderAsk } from './ask.ts';
import { renderDecision } from './decision.ts';
import { renderCaution, renderConfirm, renderInterrupt, renderWait } from './caution.ts';
import { renderRanking, renderWhy } from './ranking.ts';
import { renderWeights } from './weights.ts';
import { renderNumbers } from './numbers.ts';
import { renderNoted, renderReading } from './reading.ts';
import { renderRefused } from './refused.ts';
import { renderDone, renderSetAside, renderTell } from './tell.ts';
import { renderVerdict } from './verdict.ts';

/** Puts one message into words. */
export function renderMessage(message: Message, voice: Voice): Rendered[] {
  switch (message.kind) {
    case 'reading':
      return renderReading(message, voice);
    case 'numbers':
      return renderNumbers(message, voice);
    case 'noted':
      return renderNoted(message, voice);
    case 'caution':
      return renderCaution(message, voice);
    case 'confirm':
      return renderConfirm(message, voice);
    case 'ask':
      return renderAsk(message, voice);
    case 'wait':
      return renderWait(message, voice);
    case 'ranking':
      return renderRanking(message, voice);
    case 'why':
      return renderWhy(message, voice);
    case 'weights':
      return renderWeights(message, voice);
    case 'verdict':
      return renderVerdict(message, voice);
    case 'decision':
      return renderDecision(message, voice);
    case 'interrupt':
      return renderInterrupt(message, voice);
    case 'refused':
      return renderRefused(message, voice);
    case 'set-aside':
      return renderSetAside(message, voice);
    case 'tell':
      return renderTell(message, voice);
    case 'done':
      return renderDone(message, voice);
  }
}
