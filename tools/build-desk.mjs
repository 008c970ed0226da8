import { cpSync, rmSync } from 'node:fs';
import path from 'node:path';
import { built, bundle, copyTypeface, parsed, readFlows, root, textsIn } from './page-parts.mjs';

// The desk as a folder to be served: the page, its script, the worker that takes cases further, a
// script for each language, the typeface.
const site = path.join(root, 'adapters/desk/dist/site');
const { localeTags } = await built('packages/language/dist/index.js');
const { packFlow } = await built('adapters/element/dist/sittings.js');
const { 'no-start': flow } = await readFlows();

rmSync(site, { recursive: true, force: true });
cpSync(path.join(root, 'adapters/desk/pages/desk'), site, { recursive: true });
copyTypeface(path.join(site, 'fonts'));

// Both scripts read these: what stands in a file of its own is loaded once.
await bundle(path.join(site, 'flow.js'), `export const packed = ${parsed(packFlow(flow))};`);
for (const tag of localeTags) {
  await bundle(
    path.join(site, `texts/${tag}.js`),
    `
import { ${tag} as language } from '@keyturn/language/locales/${tag}';
import { ${tag} as desk } from './adapters/desk/dist/words/${tag}.js';
export const pack = { tag: '${tag}', language, desk, texts: ${parsed(textsIn(tag)['no-start'])} };`,
  );
}

const loading = `
const here = (file) => import(new URL(file, import.meta.url).href);
const loadPack = async (tag) => (await here(\`texts/\${tag}.js\`)).pack;`;

await bundle(
  path.join(site, 'desk.js'),
  `
import { defineKeyturnDesk } from './adapters/desk/dist/keyturn-desk.js';
import { engineAt } from './adapters/desk/dist/engine/link.js';
import { unpackFlow } from './adapters/element/dist/case/packed-flow.js';
${loading}
const worker = new Worker(new URL('desk-worker.js', import.meta.url), { type: 'module' });
const { packed } = await here('flow.js');
defineKeyturnDesk({
  flow: unpackFlow(packed),
  engine: engineAt(worker),
  loadPack,
  tags: ${JSON.stringify(localeTags)},
  base: import.meta.url,
});`,
);
await bundle(
  path.join(site, 'desk-worker.js'),
  `
import { compileFlow } from '@keyturn/core';
import { createEngine } from './adapters/desk/dist/engine/engine.js';
import { serveEngine } from './adapters/desk/dist/engine/link.js';
import { deskSpeaker } from './adapters/desk/dist/desk-pack.js';
import { unpackFlow } from './adapters/element/dist/case/packed-flow.js';
${loading}
const speakers = new Map();
const calls = [];
self.onmessage = (event) => calls.push(event);
const { packed } = await here('flow.js');
const chart = compileFlow(unpackFlow(packed));
serveEngine(self, createEngine(chart, async (tag) => {
  const speaker = speakers.get(tag) ?? deskSpeaker(await loadPack(tag), chart.flow);
  speakers.set(tag, speaker);
  return speaker;
}));
// What was asked while the flow was being loaded.
for (const event of calls) self.onmessage(event);`,
);
