/**
 * The flows of this checkout, read from disk.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compileFlow, type Chart } from '@keyturn/core';
import { loadFlow, prettifyIssues } from '@keyturn/core/load';
import type { FlowTexts, HeardTexts } from '@keyturn/language';

const flowsFolder = new URL('../../../flows/', import.meta.url);

// A chart, and the words of a language, are the same objects to everyone in a program, so that what
// is made of them, and learned from them, is made and learned once.
const charts = new Map<string, Chart>();
const texts = new Map<string, FlowTexts>();

/** A flow ready for use, and its words in one language. */
export interface ShippedFlow {
  readonly chart: Chart;
  readonly texts: FlowTexts;
}

/** The flow, or its texts, cannot be used; the message says where and why. */
export class FlowError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'FlowError';
  }
}

/** The flows of this checkout, by name. */
export function shippedFlowNames(): readonly string[] {
  return namesIn(flowsFolder);
}

/**
 * The languages in which a flow of this checkout has words.
 *
 * @throws FlowError when there is no such flow.
 */
export function shippedLocales(name: string): readonly string[] {
  return namesIn(new URL(`${name}/texts/`, flowsFolder))
    .filter((file) => /^[\w-]+\.json$/u.test(file))
    .map((file) => file.replace(/\.json$/u, ''));
}

/**
 * Reads, checks and compiles a flow of this checkout, the first time that it is asked for.
 *
 * @throws FlowError when there is no such flow or no such language, or its files have issues.
 */
export function shippedFlow(name: string, locale: string): ShippedFlow {
  const chart = charts.get(name) ?? readChart(name);
  charts.set(name, chart);
  return { chart, texts: shippedTexts(name, locale) };
}

function readChart(name: string): Chart {
  const folder = new URL(`${name}/`, flowsFolder);
  const result = loadFlow(
    namesIn(folder)
      .filter((file) => file.endsWith('.yaml'))
      .map((file) => ({
        path: `flows/${name}/${file}`,
        text: readFileSync(new URL(file, folder), 'utf8'),
      })),
  );
  if (result.type === 'issues') throw new FlowError(prettifyIssues(result.issues));
  return compileFlow(result.flow);
}

function namesIn(folder: URL): readonly string[] {
  try {
    return readdirSync(folder).sort();
  } catch {
    throw new FlowError(`there is no flow in ${fileURLToPath(folder)}`);
  }
}

/**
 * The words of a flow of this checkout: those of the locale, or else of its language. They are read
 * the first time that they are asked for.
 *
 * @throws FlowError when there are none, or they are no JSON.
 */
export function shippedTexts(name: string, locale: string): FlowTexts {
  const known = shippedLocales(name);
  const tag = [locale, locale.split('-', 1)[0]].find((one) => known.includes(one ?? ''));
  if (tag === undefined) {
    throw new FlowError(
      `the flow ${name} has no words in “${locale}”; it has: ${known.join(', ')}`,
    );
  }
  const file = `${name}/texts/${tag}.json`;
  const words = texts.get(file) ?? readTexts(file, `${name}/heard/${tag}.json`);
  texts.set(file, words);
  return words;
}

function readTexts(file: string, heard: string): FlowTexts {
  const words = readJson(file) as FlowTexts;
  return existsSync(new URL(heard, flowsFolder))
    ? { ...words, heard: readJson(heard) as HeardTexts }
    : words;
}

function readJson(path: string): unknown {
  const file = new URL(path, flowsFolder);
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch (cause) {
    throw new FlowError(`the texts ${fileURLToPath(file)} cannot be read: ${String(cause)}`);
  }
}
