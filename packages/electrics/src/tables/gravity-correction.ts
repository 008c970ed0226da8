import type { Source } from '../source.ts';
import { fromMemory, published } from '../source.ts';

/** A rule that brings a hydrometer's reading to one temperature: `step` for every `stepF` degF. */
export type GravityCorrection = {
  readonly baseF: number;
  readonly stepF: number;
  readonly step: number;
  readonly source: Source;
};

/** The hydrometer's correction that is used. */
export const gravityCorrection: GravityCorrection = {
  baseF: 80,
  stepF: 10,
  step: 0.004,
  source: published('TM 5-4210-230-14&P-1, hydrometer temperature correction'),
};

/** Other rules that are printed; within 20 degF of 80 degF they differ by 0.005 at most. */
export const rivalGravityCorrections: readonly GravityCorrection[] = [
  {
    baseF: 70,
    stepF: 10,
    step: 0.003,
    source: published('a general encyclopedia, article on the storage battery'),
  },
  {
    baseF: 77,
    stepF: 3,
    step: 0.001,
    source: fromMemory('practice with stationary batteries'),
  },
];
