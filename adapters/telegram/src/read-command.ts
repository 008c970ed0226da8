/**
 * The commands of the bot: few, since everything can be said in words as well. Pure.
 */
import type { Content } from '@keyturn/conversation';
import type { KeyName } from '@keyturn/language';
import type { Message, UserFromGetMe } from 'grammy/types';

interface Command {
  readonly content: Content;
  /** What it is for. */
  readonly text: KeyName;
}

/** Command to what it does. */
export const commands: Readonly<Record<string, Command>> = {
  start: { content: { type: 'repeat' }, text: 'commandStart' },
  again: { content: { type: 'repeat' }, text: 'commandAgain' },
  new: { content: { type: 'begin' }, text: 'commandNew' },
  stop: { content: { type: 'stop' }, text: 'commandStop' },
  help: { content: { type: 'help' }, text: 'commandHelp' },
};

/** The command that begins a case of a flow: `starter-fitting` has `/starter_fitting`. */
export function flowCommand(flow: string): string {
  return flow.replaceAll('-', '_');
}

/**
 * The command that a message begins with, those among them that begin a case of one of the flows,
 * the price that was paid behind them; one that is not ours asks for help.
 */
export function readCommand(
  { text = '', entities = [] }: Message,
  me: UserFromGetMe,
  flows: readonly string[] = [],
): { readonly content: Content; readonly isForeign: boolean } | undefined {
  const entity = entities.find(({ type, offset }) => type === 'bot_command' && offset === 0);
  if (entity === undefined) return undefined;
  const [name = '', of] = text.slice(1, entity.length).toLowerCase().split('@');
  if (of !== undefined && of !== me.username.toLowerCase()) return undefined;
  const flow = flows.find((id) => flowCommand(id) === name);
  if (flow !== undefined) {
    const price = text.slice(entity.length).trim();
    const paid = price === '' ? {} : { price };
    return { content: { type: 'begin', flow, ...paid }, isForeign: false };
  }
  const ours = Object.hasOwn(commands, name) ? commands[name] : undefined;
  return { content: ours?.content ?? { type: 'help' }, isForeign: ours === undefined };
}
