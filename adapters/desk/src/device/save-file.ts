import type { SavedFile } from '../case/saved.ts';

/** Gives the person a file. */
export function saveFile({ name, type, text }: SavedFile): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}
