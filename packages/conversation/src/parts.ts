/**
 * Rendered messages as the parts that go out on a channel.
 */
import type { Rendered, Speaker } from '@keyturn/language';
import type { ChannelLimits, Key, Part, PartKind } from './channel.ts';
import { splitLines } from './split-lines.ts';
import type { Tap } from './tap.ts';

/** A part before it is cut to size: its keys with what tapping them does. */
export interface Draft {
  readonly kind: PartKind;
  readonly title: string;
  readonly lines: readonly string[];
  readonly taps: readonly (readonly DraftKey[])[];
}

/** A key, and what tapping it does. */
export interface DraftKey {
  readonly label: string;
  readonly tap: Tap;
  readonly isPicked?: boolean;
}

/** What the drafts are made for. */
export interface Writing {
  readonly speaker: Speaker;
  readonly limits: ChannelLimits;
}

/** The drafts of what is said. Cautions stand each alone, and so does a question. */
export function draftParts(rendered: readonly Rendered[], writing: Writing): readonly Draft[] {
  const drafts: Draft[] = [];
  for (const one of rendered) {
    const draft = draftOne(one, writing);
    const last = drafts.at(-1);
    const isPlain = draft.kind === 'said' && draft.title === '' && last?.kind === 'said';
    if (isPlain && last.title === '') {
      drafts[drafts.length - 1] = { ...last, lines: [...last.lines, ...draft.lines] };
    } else drafts.push(draft);
  }
  return drafts;
}

/** A draft with all its keys as parts of this channel's size; the keys go with the last. */
export function cutDraft(
  draft: Draft,
  given: {
    readonly limits: ChannelLimits;
    readonly locale: string;
    readonly keys: readonly (readonly Key[])[];
  },
): readonly Part[] {
  const { limits, locale, keys } = given;
  const lines = draft.title === '' ? draft.lines : [draft.title, ...draft.lines];
  const groups = splitLines(lines, limits.textLength);
  return groups.map((group, index) => {
    const isFirst = index === 0 && draft.title !== '';
    return {
      kind: draft.kind,
      title: isFirst ? (group[0] ?? '') : '',
      lines: isFirst ? group.slice(1) : group,
      keys: index === groups.length - 1 ? keys : [],
      locale,
    };
  });
}

const bare = (kind: PartKind, title: string, lines: readonly string[] = []): Draft => ({
  kind,
  title,
  lines,
  taps: [],
});

function draftOne(one: Rendered, writing: Writing): Draft {
  switch (one.kind) {
    case 'text':
      return bare('said', '', [one.text]);
    case 'caution':
      return bare('caution', one.word, [one.text]);
    case 'confirm':
      return {
        ...bare('question', one.text),
        taps: [
          [
            { label: writing.speaker.key('confirm'), tap: inputTap({ type: 'confirm' }) },
            { label: writing.speaker.key('cannot'), tap: inputTap(talk('cannot')) },
          ],
        ],
      };
    case 'question':
      return draftQuestion(one, writing);
    case 'scale':
      return bare('finding', '', [one.text]);
    case 'numbers':
      return bare('said', '', sectionLines(one.sections));
    case 'ranking':
      return bare('said', one.heading, [
        one.faults.map(({ name, share }) => writing.speaker.formatShare(name, share)).join('\n'),
      ]);
    case 'verdict':
      return bare('verdict', one.title, [one.strength, ...sectionLines(one.sections)]);
    case 'refused':
      return bare('refused', '', [one.text]);
    case 'done':
      return bare('done', one.text);
  }
}

function sectionLines(
  sections: readonly { readonly heading: string; readonly lines: readonly string[] }[],
): readonly string[] {
  return sections.flatMap(({ heading, lines }) => [
    '',
    `${heading}:`,
    ...lines.map((line) => `– ${line}`),
  ]);
}

type Question = Extract<Rendered, { kind: 'question' }>;

function draftQuestion(question: Question, writing: Writing): Draft {
  const { speaker, limits } = writing;
  const { options, entry, check } = question;
  const hasKeys = limits.keyLength > 0 && options.length > 0 && options.length <= limits.keys;
  const fits = options.every(({ label }) => label.length <= limits.keyLength);
  const listed = hasKeys && fits ? [] : options.map(({ key, label }) => `${key}  ${label}`);
  const picked = options.map(({ id, key, label }): DraftKey => {
    const shown = fits ? label : key;
    return entry === 'choices' && id !== 'none'
      ? { label: shown, tap: { type: 'pick', option: id } }
      : {
          label: shown,
          tap: inputTap({ type: 'answers', answers: [{ check, value: [id] }] }),
        };
  });
  const others: readonly DraftKey[] = [
    ...(entry === 'choices'
      ? [{ label: speaker.key('take'), tap: { type: 'take', check } } as const]
      : []),
    { label: speaker.key('dontKnow'), tap: inputTap(talk('dont-know')) },
    { label: speaker.key('cannot'), tap: inputTap(talk('cannot')) },
    { label: speaker.key('why'), tap: inputTap(talk('why')) },
  ];
  const rows = fits ? picked.map((key) => [key]) : chunked(picked, 4);
  return {
    kind: 'question',
    title: question.text,
    lines: [...question.how.map((step) => `– ${step}`), ...listed],
    taps: limits.keyLength === 0 ? [] : [...(hasKeys ? rows : []), others],
  };
}

function chunked<Item>(items: readonly Item[], size: number): readonly (readonly Item[])[] {
  return items.length === 0 ? [] : [items.slice(0, size), ...chunked(items.slice(size), size)];
}

function talk(word: 'dont-know' | 'cannot' | 'why') {
  return { type: 'talk', talk: word } as const;
}

function inputTap(input: Extract<Tap, { type: 'input' }>['input']): Tap {
  return { type: 'input', input };
}
