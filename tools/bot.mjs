import { runBuilt } from './run-built.mjs';

await runBuilt('adapters/telegram/dist/main.js');
