/**
 * A case from code: the flow is loaded, a case is opened, answers go in, words come out.
 *
 * Run with `npx tsx examples/one-case.ts` after `npm test` or `npm start` has built the packages.
 */
import { expected, openCase, turn, type Step } from '@keyturn/core';
import { createSpeaker } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';

const { chart, texts } = shippedFlow('no-start', 'en');
const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: chart.flow.checks });

// A clock is yours to bring: the packages never look at one.
const at = '2026-01-01T08:00:00Z';
let step: Step = openCase(chart, {
  id: 'demo',
  at,
  context: { place: 'home', kit: ['voltmeter', 'clamp-meter', 'helper'], temperature: 12 },
});

for (const typed of ['yes, safe', 'petrol', 'it turns slowly', '12.6 rest, 9.1 crank, 150 A']) {
  const understood = speaker.understand(typed, expected(chart, step.case));
  if (understood.type !== 'input') throw new Error(`not understood: ${typed}`);
  for (const input of understood.inputs) step = turn(chart, step.case, { at, input });
}

// The last step holds what was read, how the ranking moved, and what comes next.
for (const words of speaker.render(step.messages)) {
  if (words.kind === 'scale') console.log(words.text);
  if (words.kind === 'ranking') {
    for (const { name, share } of words.faults) console.log(`${Math.round(share * 100)} % ${name}`);
  }
}
