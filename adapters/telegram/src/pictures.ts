/**
 * Pictures for messages: drawn and turned into PNG when they are first wanted, and named by what
 * the server gave them once they have been sent.
 */
import type { Picture } from '@keyturn/conversation';
import { drawCircuit, drawClamp, drawProbes } from '@keyturn/drawings';
import { toPng } from '@keyturn/drawings/png';
import type { Speaker } from '@keyturn/language';
import { InputFile } from 'grammy';

/** What pictures are drawn with. */
export type SpeakerOf = (locale: string) => Speaker;

/** Gives pictures as they are sent. */
export interface Pictures {
  /** A file to be sent, or the name of one that the server has. */
  readonly take: (picture: Picture, locale: string) => Promise<InputFile | string>;
  /** Notes the name under which the server keeps a picture. */
  readonly keep: (picture: Picture, locale: string, fileId: string) => void;
}

/** So wide is a picture, pixels: two to the unit are sharp on a telephone, and load quickly. */
const width = 780;

/** So many names are known at a time; a circuit with its figures hardly comes twice. */
const mostKept = 500;

/** Makes pictures. */
export function createPictures(speakerOf: SpeakerOf): Pictures {
  const fileIds = new Map<string, string>();
  const nameOf = (picture: Picture, locale: string): string => locale + JSON.stringify(picture);
  return {
    take: async (picture, locale) => {
      const known = fileIds.get(nameOf(picture, locale));
      if (known !== undefined) return known;
      return new InputFile(await toPng(draw(picture, speakerOf(locale)), { width }), 'picture.png');
    },
    keep: (picture, locale, fileId) => {
      const [oldest] = fileIds.keys();
      if (oldest !== undefined && fileIds.size >= mostKept) fileIds.delete(oldest);
      fileIds.set(nameOf(picture, locale), fileId);
    },
  };
}

function draw(picture: Picture, speaker: Speaker): string {
  switch (picture.type) {
    case 'probes':
      return drawProbes(picture.probes, { speaker });
    case 'clamp':
      return drawClamp({ speaker });
    case 'circuit':
      return drawCircuit(picture.view, { speaker });
  }
}
