import type { Block } from '../sheet.ts';
import type { ToldCase } from './told-case.ts';

/** The sections of the verdict or the decision, each under its own heading: all, or those named. */
export function sectionBlocks({ verdict }: ToldCase, ids?: readonly string[]): readonly Block[] {
  const sections = verdict?.sections ?? [];
  const named = ids?.flatMap((id) => sections.filter((section) => section.id === id));
  return (named ?? sections).map(({ id, heading, lines }) => ({
    kind: 'lines',
    id,
    heading,
    lines,
  }));
}
