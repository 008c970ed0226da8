import { remembered } from '../once.ts';
import type { Words } from '../words/words.ts';
import { collapseRepeats } from './normalise.ts';

/** The shortest that a word may become when its ending goes. */
const shortestStem = 3;

/** Words without their endings; number words in figures. Repeated letters are made one. */
export function createStemmer({ cardinals, endings }: Words): (word: string) => string {
  return remembered((word) => {
    const number = Object.hasOwn(cardinals, word) ? cardinals[word] : undefined;
    if (number !== undefined) return String(number);
    const short = collapseRepeats(word);
    const ending = endings.find(
      (end) => short.endsWith(end) && short.length - end.length >= shortestStem,
    );
    return ending === undefined ? short : collapseRepeats(short.slice(0, -ending.length));
  });
}
