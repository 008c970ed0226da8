import path from 'node:path';
import { built, bundle, parsed, readFlows, root, textsIn } from './page-parts.mjs';

// The counter beside the desk: its script, the worker that takes returns further, a script for each
// language. The page itself, the no-start flow and the typeface are laid there with the desk.
const site = path.join(root, 'adapters/desk/dist/site');
const { localeTags, textsByHand } = await built('packages/language/dist/index.js');
const { flowByHand } = await built('packages/core/dist/index.js');
const { packFlow } = await built('adapters/element/dist/sittings.js');
const all = await readFlows();
const names = ['starter-return', 'battery-return'];
const flows = Object.fromEntries(names.map((name) => [name, packFlow(all[name])]));

// Of the no-start flow the page needs what asks for readings by hand.
const vehicle = flowByHand(all['no-start']);

await bundle(
  path.join(site, 'return-flows.js'),
  `export const packed = ${parsed(flows)}; export const vehicle = ${parsed(vehicle)};`,
);
for (const tag of localeTags) {
  await bundle(
    path.join(site, `counter-texts/${tag}.js`),
    `
import { ${tag} as language } from '@keyturn/language/locales/${tag}';
import { ${tag} as counter } from './adapters/desk/dist/counter/words/${tag}.js';
export const pack = { tag: '${tag}', language, counter, ...${parsed(wordsIn(tag))} };`,
  );
}

const loading = `
const here = (file) => import(new URL(file, import.meta.url).href);
const loadPack = async (tag) => (await here(\`counter-texts/\${tag}.js\`)).pack;
const unpackAll = (packed) =>
  Object.fromEntries(Object.entries(packed).map(([id, flow]) => [id, unpackFlow(flow)]));`;

await bundle(
  path.join(site, 'counter.js'),
  `
import { defineKeyturnCounter } from './adapters/desk/dist/counter/keyturn-counter.js';
import { counterCalls } from './adapters/desk/dist/counter/engine/counter-engine.js';
import { callsAt } from './adapters/desk/dist/engine/link.js';
import { unpackFlow } from './adapters/element/dist/case/packed-flow.js';
${loading}
const worker = new Worker(new URL('counter-worker.js', import.meta.url), { type: 'module' });
const { packed, vehicle } = await here('return-flows.js');
defineKeyturnCounter({
  flows: unpackAll(packed),
  vehicle,
  engine: callsAt(worker, counterCalls),
  loadPack,
  tags: ${JSON.stringify(localeTags)},
  base: import.meta.url,
});`,
);
await bundle(
  path.join(site, 'counter-worker.js'),
  `
import { compileFlow } from '@keyturn/core';
import { createCounterEngine } from './adapters/desk/dist/counter/engine/counter-engine.js';
import { counterSpeaker } from './adapters/desk/dist/counter/counter-pack.js';
import { serveEngine } from './adapters/desk/dist/engine/link.js';
import { unpackFlow } from './adapters/element/dist/case/packed-flow.js';
${loading}
const speakers = new Map();
const calls = [];
self.onmessage = (event) => calls.push(event);
const { packed, vehicle } = await here('return-flows.js');
const charts = Object.fromEntries(
  Object.entries(unpackAll(packed)).map(([id, flow]) => [id, compileFlow(flow)]));
let noStart;
serveEngine(self, createCounterEngine({
  charts,
  vehicle,
  noStart: async () => {
    noStart ??= compileFlow(unpackFlow((await here('flow.js')).packed));
    return noStart;
  },
  speakerFor: async (flow, tag) => {
    const key = flow + ' ' + tag;
    const speaker = speakers.get(key) ?? counterSpeaker(await loadPack(tag), charts[flow]?.flow ?? vehicle);
    speakers.set(key, speaker);
    return speaker;
  },
}));
// What was asked while the flows were being loaded.
for (const event of calls) self.onmessage(event);`,
);

/** The texts of the flows of returns, and the names of what a no-start case speaks of. */
function wordsIn(tag) {
  const texts = textsIn(tag);
  const { faults, checks } = texts['no-start'];
  const labels = ({ answers }) =>
    Object.fromEntries(Object.entries(answers).map(([id, { label }]) => [id, label]));
  return {
    texts: {
      ...Object.fromEntries(names.map((name) => [name, texts[name] ?? textsIn('en')[name]])),
      [vehicle.id]: textsByHand(vehicle, texts[vehicle.id]),
    },
    vehicle: {
      faults: Object.fromEntries(Object.entries(faults).map(([id, { name }]) => [id, name])),
      complaints: labels(checks.complaint),
      fuels: labels(checks.drive),
    },
  };
}
