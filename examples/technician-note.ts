/**
 * A note for the technician who takes over a case, as text to be sent along, and what a scanner
 * makes of the code on it. The driver, the vehicle and every figure are invented.
 */
import { openCase, turn } from '@keyturn/core';
import { shippedFlow } from '@keyturn/flows';
import { createSpeaker } from '@keyturn/language';
import { decodeFindings, replayFindings, sheetText, technicianNote } from '@keyturn/sheets';

const { chart, texts } = shippedFlow('no-start', 'en');
const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: chart.flow.checks });
const at = '2026-01-01T08:00:00Z';

const opened = openCase(chart, { id: 'example', at, context: { place: 'parking' } });
const { case: kase } = turn(chart, opened.case, {
  at,
  input: {
    type: 'answers',
    answers: [
      { check: 'complaint', value: ['slow-crank'] },
      { check: 'terminals', value: ['clean-tight'] },
      { check: 'battery-rest', value: { value: 12.7, unit: 'V', resolution: 0.1 } },
    ],
  },
});

const note = technicianNote({ chart, case: kase, speaker, made: at });
console.log(sheetText(note));

const again = replayFindings(chart, decodeFindings([chart.flow], note.code.text));
console.log(`From the code alone: ${JSON.stringify(again.case.state.answers)}`);
