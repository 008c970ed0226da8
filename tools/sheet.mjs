import { runBuilt } from './run-built.mjs';

await runBuilt('adapters/terminal/dist/sheet/main.js');
