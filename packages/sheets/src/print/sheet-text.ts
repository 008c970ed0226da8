/**
 * A sheet as plain text, to be sent or read aloud. Pictures are left out: what they show is said.
 */
import type { Block, Finding, Sheet } from '../sheet.ts';
import { isolated } from '../words/sheet-words-in.ts';

/** The sheet as plain text: lines of whatever length, for the reader's own program to break. */
export function sheetText(sheet: Sheet): string {
  const { title, subject, head, lead, blocks, foot, code, direction } = sheet;
  const parts = [
    [title, subject, ...head.map(({ label, text }) => `${label}: ${isolated(text, direction)}`)],
    [lead.title, lead.text],
    ...blocks.map((one) => [one.heading, ...lines(one, direction)]),
    [`${code.caption}:`, code.text],
    foot,
  ];
  return `${parts.map((part) => part.filter((line) => line !== '').join('\n')).join('\n\n')}\n`;
}

function lines(one: Block, direction: Sheet['direction']): readonly string[] {
  switch (one.kind) {
    case 'facts':
      return one.facts.map(({ label, text }) => `${label}: ${isolated(text, direction)}`);
    case 'lines':
      return one.lines.map(listed);
    case 'rows':
      return one.rows.flatMap((row) => [`${row.label}:`, ...row.lines.map(listed)]);
    case 'strip':
      return one.findings.flatMap((finding) => printed(finding, direction));
    case 'ranking':
      return one.faults.map(({ said }) => listed(said));
    case 'cautions':
      return one.cautions.map(({ said, text }) => `${said}: ${text}`);
    case 'picture':
      return [one.picture.description];
    case 'fields':
      return one.fields.map(({ label }) => `${label} ____________________`);
  }
}

function listed(line: string): string {
  return `- ${line}`;
}

function printed(
  { number, name, said, means, notes }: Finding,
  direction: Sheet['direction'],
): readonly string[] {
  const figure = isolated(said, direction);
  return [
    `${String(number).padStart(2, '0')}  ${name}: ${figure}${means === '' ? '' : `. ${means}`}`,
    ...notes.map((note) => `    ${note}`),
  ];
}
