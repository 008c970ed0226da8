/**
 * Takes updates that the Bot API brings.
 */
import { once } from 'node:events';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { webhookCallback, type Bot } from 'grammy';

/** The largest update that is read, bytes; the Bot API sends far smaller ones. */
const mostBytes = 1 << 20;

/**
 * Serves on a port. Whatever does not come with the secret is refused, after a comparison that
 * takes as long whatever it holds. An update that cannot be kept is answered with an error, so that
 * it comes again.
 */
export async function serveWebhook(
  bot: Bot,
  given: {
    readonly port: number;
    readonly secret: string;
    readonly onError: (error: unknown) => void;
  },
): Promise<Server> {
  const handle = webhookCallback(bot, 'http', { secretToken: given.secret });
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const length = Number(request.headers['content-length']);
    const fault =
      request.method !== 'POST'
        ? 405
        : !Number.isInteger(length)
          ? 411
          : length > mostBytes
            ? 413
            : undefined;
    if (fault !== undefined) {
      refuse(response, fault);
      return;
    }
    try {
      await handle(request, response);
    } catch (error) {
      given.onError(error);
      if (!response.headersSent) refuse(response, 500);
    }
  };
  const server = createServer((request, response) => void answer(request, response));
  server.listen(given.port);
  await once(server, 'listening');
  return server;
}

function refuse(response: ServerResponse, status: number): void {
  response.writeHead(status, { connection: 'close' }).end();
}
