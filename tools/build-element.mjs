import { createHash } from 'node:crypto';
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import {
  built,
  bundle,
  copyTypeface,
  parsed,
  readFlows,
  root,
  textsIn,
  tighten,
} from './page-parts.mjs';

// The element as a page loads it: a small script with the first question; the script that takes a
// case further by its keys, with every flow compiled ahead, and what is told in each language; then
// what is typed and drawn; the typeface. From these the pages, as a folder to be served.
const element = path.join(root, 'adapters/element');
const dist = path.join(element, 'dist');
const site = path.join(dist, 'site');
const scripts = [
  'keyturn.js',
  'keyturn-further.js',
  'keyturn-understanding.js',
  'keyturn-pictures.js',
];

const { compileFlow, openCase } = await built('packages/core/dist/index.js');
const { createSpeaker, localeTags } = await built('packages/language/dist/index.js');
const { packFlow } = await built('adapters/element/dist/case/packed-flow.js');
const { partTexts } = await built('adapters/element/dist/case/parted-texts.js');

const pageWords = Object.fromEntries(
  await Promise.all(
    localeTags.map(async (tag) => [
      tag,
      (await built(`adapters/element/dist/words/${tag}.js`))[tag],
    ]),
  ),
);
// Whoever stands at a vehicle needs no flow of the counter, and loads none.
const carried = 'no-start';
const flows = { [carried]: (await readFlows())[carried] };

const language = (tag) => {
  const { told, said } = partTexts(textsIn(tag)[carried]);
  return {
    told: `
import { texts } from '@keyturn/language/locales/${tag}';
import { ${tag} as page } from './adapters/element/dist/words/${tag}.js';
export const pack = {
  tag: '${tag}', texts, page, flows: ${parsed({ [carried]: told })},
};`,
    said: `
import { words } from '@keyturn/language/locales/${tag}';
export const pack = { words, flows: ${parsed({ [carried]: said })} };`,
  };
};

await bundle(
  path.join(dist, 'keyturn.js'),
  `
import { defineKeyturnCase } from './adapters/element/dist/define.js';
import { fittingTag, wantedLanguage } from './adapters/element/dist/host.js';
const tags = ${JSON.stringify(localeTags)};
// Begun at once, while the first question is being shown.
const further = import(new URL('keyturn-further.js', import.meta.url).href);
further.catch(() => undefined);
defineKeyturnCase({
  first: ${parsed(firstCards())},
  base: import.meta.url,
  load: async (place) => {
    const tag = fittingTag(wantedLanguage(place.host), tags) ?? 'en';
    // Only begun here: whether it comes is seen where it is used.
    import(new URL(\`texts/\${tag}.js\`, import.meta.url).href).catch(() => undefined);
    return (await further).createCasePage(place);
  },
});`,
);
await bundle(
  path.join(dist, 'keyturn-further.js'),
  `
import { CasePage } from './adapters/element/dist/case-page.js';
import { createLanguages } from './adapters/element/dist/language-pack.js';
const flows = ${parsed(Object.fromEntries(Object.entries(flows).map(([id, flow]) => [id, packFlow(flow)])))};
// A browser remembers of an address that nothing could be loaded from it.
const here = (file) => {
  const { href } = new URL(file, import.meta.url);
  return import(href).catch(() => import(href + '?' + Date.now()));
};
const languages = createLanguages(${JSON.stringify(localeTags)}, {
  pack: async (tag) => (await here(\`texts/\${tag}.js\`)).pack,
  said: async (tag) => (await here(\`said/\${tag}.js\`)).pack,
  understanding: () => here('keyturn-understanding.js'),
});
const loadPictures = () => here('keyturn-pictures.js');
export const createCasePage = (place) =>
  new CasePage({ ...place, flows, languages, loadPictures });`,
);
await bundle(
  path.join(dist, 'keyturn-understanding.js'),
  `export { understandingOf } from '@keyturn/language';`,
);
await bundle(
  path.join(dist, 'keyturn-pictures.js'),
  `export { drawCircuit, drawClamp, drawProbes } from '@keyturn/drawings';`,
);
for (const script of scripts) await tighten(path.join(dist, script));
for (const tag of localeTags) {
  const { told, said } = language(tag);
  await bundle(path.join(dist, `texts/${tag}.js`), told);
  await bundle(path.join(dist, `said/${tag}.js`), said);
}
copyTypeface(path.join(dist, 'fonts'));
buildSite();

/** The first question of the flow that an element begins with, in every language. */
function firstCards() {
  const flow = flows[carried];
  const { messages } = openCase(compileFlow(flow), { id: 'first', at: new Date().toISOString() });
  return Object.fromEntries(
    localeTags.map((tag) => {
      const flowTexts = textsIn(tag)[carried];
      const said = createSpeaker({ locale: tag, flowTexts, checks: flow.checks }).render(messages);
      const { check, text, how, options } = said.find(({ kind }) => kind === 'question');
      const opening = said.find(({ kind }) => kind === 'text').text;
      return [
        tag,
        {
          name: flowTexts.name,
          opening,
          check,
          text,
          how,
          options,
          loading: pageWords[tag].loading,
        },
      ];
    }),
  );
}

/** The pages with the element beside them, and a worker that keeps them for a place without signal. */
function buildSite() {
  rmSync(site, { recursive: true, force: true });
  cpSync(path.join(element, 'pages'), site, { recursive: true });
  for (const part of [...scripts, 'texts', 'said', 'fonts']) {
    cpSync(path.join(dist, part), path.join(site, 'element', part), { recursive: true });
  }
  const kept = ['driver', 'element'].flatMap((folder) =>
    readdirSync(path.join(site, folder), { recursive: true })
      .map((file) => path.posix.join('..', folder, file.split(path.sep).join('/')))
      .filter((file) => /\.[a-z0-9]+$/.test(file) && !file.endsWith('/sw.js')),
  );
  const hash = createHash('sha256');
  for (const file of kept) hash.update(readFileSync(path.join(site, 'driver', file)));
  const worker = path.join(site, 'driver/sw.js');
  writeFileSync(
    worker,
    readFileSync(worker, 'utf8')
      .replace("'built-version'", JSON.stringify(`keyturn-${hash.digest('hex').slice(0, 16)}`))
      .replace("['built-files']", JSON.stringify(['./', ...kept])),
  );
}
