import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import prettier from 'prettier';
import { prepare, root } from './prepare.mjs';

// The JSON Schema of a flow file is generated from the zod schema and committed, so that an editor
// can use it from the checkout; a test holds the two against each other.
const file = path.join(root, 'packages/core/schema/flow.schema.json');

await prepare();
const { flowSchema } = await import(
  pathToFileURL(path.join(root, 'packages/core/dist/load.js')).href
);
const options = (await prettier.resolveConfig(file)) ?? {};
writeFileSync(
  file,
  await prettier.format(JSON.stringify(flowSchema), { ...options, parser: 'json' }),
);
