import { runBuilt } from './run-built.mjs';

await runBuilt('adapters/terminal/dist/understand.js');
