/**
 * Rendered messages as the parts that go out on a channel.
 */
import type { Rendered, Speaker } from '@keyturn/language';
import type { ChannelLimits, Key, Line, Part, PartKind } from './channel.ts';
import type { Picture, Pictured } from './picture.ts';
import { splitLines } from './split-lines.ts';
import type { Tap } from './tap.ts';

/** A part before it is cut to size: its keys with what tapping them does. */
export interface Draft {
  readonly kind: PartKind;
  readonly lines: readonly Line[];
  readonly taps: readonly (readonly DraftKey[])[];
  readonly picture?: Picture;
}

/** A key, and what tapping it does. */
export interface DraftKey {
  readonly label: string;
  readonly tap: Tap;
}

/** What the drafts are made for. */
export interface Writing {
  readonly speaker: Speaker;
  readonly limits: ChannelLimits;
  /** True where there is an answer to go back to. */
  readonly canGoBack: boolean;
}

/** What must not get lost among other lines, or is to be passed on alone. */
const standsAlone: ReadonlySet<PartKind> = new Set(['caution', 'verdict', 'summary', 'picture']);

/** The drafts of what is said: as few as can be, since each one rings a telephone. */
export function draftParts(rendered: readonly Rendered[], writing: Writing): readonly Draft[] {
  return joinDrafts(rendered.map((one) => draftOne(one, writing)));
}

/** Drafts put together where neither stands alone. */
export function joinDrafts(all: readonly Draft[]): readonly Draft[] {
  const drafts: Draft[] = [];
  for (const draft of all) {
    const last = drafts.at(-1);
    if (last === undefined || standsAlone.has(last.kind) || standsAlone.has(draft.kind)) {
      drafts.push(draft);
    } else {
      const isList = last.kind === 'said' && draft.kind === 'said';
      drafts[drafts.length - 1] = {
        kind: draft.kind,
        lines: [...last.lines, ...(isList ? [] : [gap]), ...draft.lines],
        taps: draft.taps.length > 0 ? draft.taps : last.taps,
      };
    }
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
  const groups = splitLines(draft.lines, limits.textLength);
  return groups.map((lines, index) => ({
    kind: draft.kind,
    lines,
    keys: index === groups.length - 1 ? keys : [],
    locale,
    ...(draft.picture === undefined ? {} : { picture: draft.picture }),
  }));
}

const gap: Line = { text: '' };

/** Lines of text, the first of them a title. */
export function titled(title: string, lines: readonly string[] = []): readonly Line[] {
  return [{ text: title, isTitle: true }, ...plain(lines)];
}

const plain = (lines: readonly string[]): readonly Line[] => lines.map((text): Line => ({ text }));

/** A picture with the line under it. */
export function pictureDraft({ picture, title }: Pictured): Draft {
  return { kind: 'picture', lines: plain([title]), taps: [], picture };
}

const bare = (kind: PartKind, lines: readonly Line[]): Draft => ({ kind, lines, taps: [] });

function draftOne(one: Rendered, writing: Writing): Draft {
  switch (one.kind) {
    case 'text':
      return bare('said', plain([one.text]));
    case 'caution':
      return bare('caution', titled(one.word, [one.text]));
    case 'confirm':
      return draftConfirm(one.text, writing);
    case 'question':
      return draftQuestion(one, writing);
    case 'scale':
      return bare('finding', plain([one.text]));
    case 'numbers':
      return bare('said', sectionLines(one.sections));
    case 'ranking': {
      const shares = one.faults.map(({ name, share }) => writing.speaker.formatShare(name, share));
      return bare('said', [gap, ...titled(one.heading, shares)]);
    }
    case 'verdict':
      return bare('verdict', [
        ...titled(one.title, [one.strength]),
        gap,
        ...sectionLines(one.sections),
      ]);
    case 'refused':
      return bare('refused', plain([one.text]));
    case 'done':
      return bare('done', titled(one.text));
  }
}

function sectionLines(
  sections: readonly { readonly heading: string; readonly lines: readonly string[] }[],
): readonly Line[] {
  return sections.flatMap(({ heading, lines }, index) => [
    ...(index === 0 ? [] : [gap]),
    ...titled(heading, lines.map(listed)),
  ]);
}

/** A line of a list. */
export const listed = (line: string): string => `– ${line}`;

function draftConfirm(text: string, { speaker, limits }: Writing): Draft {
  const keys: readonly DraftKey[] = [
    { label: speaker.key('confirm'), tap: inputTap({ type: 'confirm' }) },
    { label: speaker.key('cannot'), tap: inputTap(talk('cannot')) },
  ];
  const hasKeys = limits.keyLength > 0;
  const numbered = keys.map(({ label }, index) => `${String(index + 1)}  ${label}`);
  return {
    kind: 'question',
    lines: titled(text, hasKeys ? [] : numbered),
    taps: hasKeys ? keys.map((key) => [key]) : [],
  };
}

type Question = Extract<Rendered, { kind: 'question' }>;

function draftQuestion(question: Question, writing: Writing): Draft {
  const { speaker, limits } = writing;
  const { options, entry, check } = question;
  const hasKeys = limits.keyLength > 0 && options.length > 0 && options.length <= limits.keys;
  const fits = options.every(({ label }) => label.length <= limits.keyLength);
  const numbered = hasKeys && fits ? [] : options.map(({ key, label }) => `${key}  ${label}`);
  const picked = options.map(({ id, key, label }): DraftKey => {
    const shown = fits ? label : key;
    return entry === 'choices' && id !== 'none'
      ? { label: shown, tap: { type: 'pick', option: id } }
      : {
          label: shown,
          tap: inputTap({ type: 'answers', answers: [{ check, value: [id] }] }),
        };
  });
  const take: readonly DraftKey[] =
    entry === 'choices' ? [{ label: speaker.key('take'), tap: { type: 'take', check } }] : [];
  const always: readonly DraftKey[] = [
    { label: speaker.key('dontKnow'), tap: inputTap(talk('dont-know')) },
    { label: speaker.key('cannot'), tap: inputTap(talk('cannot')) },
    { label: speaker.key('why'), tap: inputTap(talk('why')) },
    ...(writing.canGoBack ? [{ label: speaker.key('back'), tap: inputTap(talk('back')) }] : []),
  ];
  const rows = hasKeys ? chunked(picked, fits ? 1 : 4) : [];
  const others = [...chunked(take, 1), ...chunked(always, 2)];
  return {
    kind: 'question',
    lines: titled(question.text, [...question.how.map(listed), ...numbered]),
    taps: limits.keyLength === 0 ? [] : [...rows, ...others],
  };
}

function chunked<Item>(items: readonly Item[], size: number): readonly (readonly Item[])[] {
  return items.length === 0 ? [] : [items.slice(0, size), ...chunked(items.slice(size), size)];
}

function talk(word: 'dont-know' | 'cannot' | 'why' | 'back') {
  return { type: 'talk', talk: word } as const;
}

function inputTap(input: Extract<Tap, { type: 'input' }>['input']): Tap {
  return { type: 'input', input };
}
