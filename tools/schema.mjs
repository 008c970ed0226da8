import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import prettier from 'prettier';
import { prepare, root } from './prepare.mjs';

// The JSON Schemas of a flow file and of a sheet are generated from zod schemas and committed, so
// that an editor or another program can use them from the checkout; tests hold them to each other.
const schemas = [
  ['packages/core/schema/flow.schema.json', 'packages/core/dist/load.js', 'flowSchema'],
  ['packages/sheets/schema/sheet.schema.json', 'packages/sheets/dist/schema.js', 'sheetSchema'],
];

await prepare();
for (const [place, module, name] of schemas) {
  const file = path.join(root, place);
  const { [name]: schema } = await import(pathToFileURL(path.join(root, module)).href);
  const options = (await prettier.resolveConfig(file)) ?? {};
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(
    file,
    await prettier.format(JSON.stringify(schema), { ...options, parser: 'json' }),
  );
}
