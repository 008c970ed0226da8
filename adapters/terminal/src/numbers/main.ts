#!/usr/bin/env node
/**
 * `npm run -s numbers -- QUESTION…`: answers one question with a figure, its spread and its source.
 * Exits 0 with an answer or the help, 2 where there is no answer.
 */
import process, { argv, stderr, stdout } from 'node:process';
import { answerQuestion } from './answer-question.ts';
import { layOutHelp, layOutReply } from './lay-out.ts';

// A reader that has seen enough, as `head` does, is no failure.
stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

process.exitCode = runNumbers(argv.slice(2).join(' ').trim());

function runNumbers(text: string): 0 | 2 {
  if (/^(?:--help|-h|help)?$/.test(text)) {
    stdout.write(`${layOutHelp().join('\n')}\n`);
    return 0;
  }
  let reply;
  try {
    reply = answerQuestion(text);
  } catch (error) {
    stderr.write(`numbers: this program failed on the question: ${(error as Error).message}\n`);
    return 2;
  }
  const lines = `${layOutReply(text, reply).join('\n')}\n`;
  if (reply.type === 'answered') {
    stdout.write(lines);
    return 0;
  }
  stderr.write(lines);
  return 2;
}
