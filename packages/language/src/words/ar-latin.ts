import { list } from './list.ts';
import type { LatinLetters } from './words.ts';

/** Words of a list with what each is, or nothing: `b ب`. */
function pairs(text: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    list(text).map((pair): [string, string] => {
      const [one = '', other = ''] = pair.split(' ');
      return [one, other];
    }),
  );
}

/** Arabic as it is typed in Latin letters, with digits for those that have none: `3andi mofta7`. */
export const arLatin: LatinLetters = {
  digits: { 2: 'ء', 3: 'ع', 5: 'خ', 6: 'ط', 7: 'ح', 9: 'ق' },
  reads: pairs(`
        ء قايو-, ع ع, خ خ, ط ط, ح ح, ق قص, a اهيع-, e يها-ع, i ي-ع, o و-ع, u و-ع, ou و-, y ي, w و, b ب, p ب, t تطه, d دض,
        s سص, z زدض, j ج, g جقكغ, k كق, c ك, q ق, h هح, f ف, v ف, l ل, m م, n ن, r ر, x خ, sh ش, ch ش, kh خ, gh غ,
        th تد, dh دض
      `),
  silent: 'اويه',
  little: pairs(`
        w و, wa و, ou و, f في, fi في, fe في, fel في, b ب, bi ب, be ب, bel ب, lel ل, le ل, el , al , l , il , as , es ,
        ma ما, 3al علي, عal علي
      `),
};
