/**
 * A flow of your own, checked: everything that is wrong comes back at once, with its place.
 *
 * Run with `npx tsx examples/check-a-flow.ts` after the packages have been built.
 */
import { loadFlow, prettifyIssues } from '@keyturn/core/load';

const text = `
flow: lamp
version: '1'
stages: { look: [lamp, switch] }
verdict-after: look
checks:
  lamp:
    choice: [lights, dark]
    at: seat
    minutes: 1
    when: { place: nowhere }
  switch:
    choice: [clicks, silent]
    at: seat
    minutes: -1
faults:
  bulb: { best: proved, proof: { lamp: dim }, remedy: new-bulb, send: nothing }
`;

const result = loadFlow([{ path: 'lamp.yaml', text }]);
console.log(result.type === 'flow' ? 'a good flow' : prettifyIssues(result.issues));
