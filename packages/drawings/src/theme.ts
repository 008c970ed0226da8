/**
 * The ways in which pictures are drawn: by day, by night with warm text on dark, and printed, on
 * paper that is white already.
 */
export type Theme = 'light' | 'dark' | 'print';

/**
 * Colours by what they are for. The coloured ones are those of Okabe and Ito (Color Universal
 * Design, 2008), which the colour-blind tell apart; none of them is ever the only sign. Text is
 * only ever set in `ink` or `soft` on `paper`, `tint`, `deep` or `here`, and `onBlack` on `black`.
 */
export interface Palette {
  readonly paper: string;
  /** Two shades that bands and parts are filled with. */
  readonly tint: string;
  readonly deep: string;
  /** The band in which a reading lies, the bar of a share. */
  readonly here: string;
  readonly ink: string;
  /** Text that comes second. */
  readonly soft: string;
  /** Wires, outlines, ticks. */
  readonly line: string;
  /** The rim of the red lead's tag; the black lead's tag, its rim, and the text on it. */
  readonly red: string;
  readonly black: string;
  readonly blackRim: string;
  readonly onBlack: string;
  /** Round what is under suspicion. */
  readonly suspect: string;
  /** What a sound vehicle would show. */
  readonly sound: string;
}

/** The colours of each theme. */
export const palettes: Readonly<Record<Theme, Palette>> = {
  light: {
    paper: '#fbf6ea',
    tint: '#f3ead6',
    deep: '#e8dcc2',
    here: '#c9e2f3',
    ink: '#241e17',
    soft: '#574d40',
    line: '#574d40',
    red: '#d55e00',
    black: '#241e17',
    blackRim: '#241e17',
    onBlack: '#fbf6ea',
    suspect: '#0072b2',
    sound: '#00805d',
  },
  dark: {
    paper: '#1b1713',
    tint: '#28221b',
    deep: '#362e24',
    here: '#173f58',
    ink: '#f6e9d2',
    soft: '#cdbda2',
    line: '#b3a488',
    red: '#e8711a',
    black: '#000000',
    blackRim: '#cdbda2',
    onBlack: '#f6e9d2',
    suspect: '#56b4e9',
    sound: '#2cbb90',
  },
  print: {
    paper: '#ffffff',
    tint: '#f4f2ee',
    deep: '#e3dfd7',
    here: '#c9e2f3',
    ink: '#000000',
    soft: '#3f3a33',
    line: '#3f3a33',
    red: '#d55e00',
    black: '#000000',
    blackRim: '#000000',
    onBlack: '#ffffff',
    suspect: '#0072b2',
    sound: '#00805d',
  },
};
