/**
 * A flow that weighs by confirmed outcomes as well: those kept in a file.
 */
import { compileFlow, learnedFlow, type Chart, type LearningWeights } from '@keyturn/core';
import { EvidenceError } from '@keyturn/evidence';
import { countsOf, readKeptOutcomes } from './kept-outcomes.ts';
import { OutcomesError } from './outcomes-error.ts';
import { readIfThere } from './write-whole.ts';

/** How many cases what is written is worth beside what was counted: common practice, no source. */
const learningWeights: LearningWeights = { publishedCases: 100, rowCases: 20 };

/**
 * The chart after the outcomes kept in a file.
 *
 * @throws OutcomesError where the file is not there, cannot be read, or is of another flow or version
 */
export function learnedChart(chart: Chart, file: string): Chart {
  const text = readIfThere(file);
  if (text === undefined) {
    throw new OutcomesError(`${file} is not there: no outcome has been entered yet`);
  }
  const counted = countsOf(readKeptOutcomes(file, text));
  if (counted.type === 'refused') throw new OutcomesError(`${file}: ${counted.message}`);
  const learned = learnedOrRefused(chart, file, counted.counts);
  if (learned.type === 'refused') throw new OutcomesError(`${file}: ${learned.message}`);
  return compileFlow(learned.flow);
}

function learnedOrRefused(
  { flow }: Chart,
  file: string,
  counts: Parameters<typeof learnedFlow>[1],
): ReturnType<typeof learnedFlow> {
  try {
    return learnedFlow(flow, counts, learningWeights);
  } catch (error) {
    // A cause that is none of the flow's faults, in counts that came from elsewhere.
    if (error instanceof EvidenceError) throw new OutcomesError(`${file}: ${error.message}`);
    throw error;
  }
}
