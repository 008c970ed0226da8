/**
 * The smallest flow that ends in decisions and has everything that such a flow can have.
 */
import type { FileText } from './source-file.ts';

const order = `flow: small-return
version: '1'
part: starter
stages:
  identity: [part-number, sale-date]
  look: [stud, look, wear]
  bench: [kit, nominal, run, amperes, recharged]
  vehicle: [proof]
interrupts:
  injury: { word: danger, then: return }
cautions:
  bench-jump: { word: warning, confirm: true, before: { does: run } }
stops:
  not-run:
    when: { any: [{ stud: unanswered }, { stud: turns }] }
    forbids: { does: run }
`;

const checks = `checks:
  part-number: { choice: [ours, other], at: memory, minutes: 0.2 }
  sale-date:
    date: { return-window: policy.return-window, warranty: policy.warranty, expired: above }
    at: memory
    minutes: 0.2
  stud: { choice: [sound, turns], at: bench, minutes: 0.2 }
  look: { choice: [sound, cracked], at: bench, minutes: 0.2 }
  wear:
    { choice: [even, uneven], at: bench, minutes: 0.2, requires: { look: cracked } }
  kit: { choices: [bench-tester, none], at: memory, minutes: 0.1, when: { kit: unknown }, writes: kit }
  nominal:
    choice: [low, high]
    at: bench
    minutes: 0.1
    when: { part.nominal: unknown }
    sets: { low: { part.nominal: 12 }, high: { part.nominal: 24 } }
  run: { choice: [even, silent], at: bench, needs: [bench-tester], minutes: 1, does: [run] }
  amperes:
    reading: A
    bands: { low: 30, normal: starter.bench.high, high: above }
    good: normal
    upper-spread: 10
    range: current
    at: bench
    needs: [bench-tester]
    minutes: 1
    does: [run]
    after: [nominal]
  recharged:
    reading: V
    bands: { low: 12.5, full: above }
    range: battery-voltage
    at: bench
    minutes: 2
  proof: { choice: [against-part, elsewhere], at: memory, minutes: 0.5 }
`;

const table = `decisions:
  - { when: { part-number: other }, decide: decline, reason: not-ours, pays: deposit }
  - { when: { sale-date: unanswered }, decide: test-further, reason: no-date, again: [sale-date] }
  - { when: { sale-date: expired }, decide: decline, reason: too-late }
  - { when: { any: [{ stud: unanswered }, { look: unanswered }] }, decide: test-further, reason: not-seen }
  - { when: { not: { stud: sound } }, decide: decline, reason: misfitted }
  - { when: { look: cracked, wear: uneven }, decide: accept, reason: cracked, pays: price }
  - { when: { not: { kit: bench-tester } }, decide: test-further, reason: no-bench }
  - { when: { run: silent }, decide: accept, reason: silent, pays: warranty, measure: [battery] }
  - { when: { amperes: high }, decide: accept, reason: drags }
  - when: { not: { recharged: full }, all: [{ not: { recharged: twice } }] }
    decide: test-further
    reason: charge-again
    again: [recharged]
    voids: [proof]
  - { when: { recharged: low }, decide: accept, reason: worn }
  - { when: { not: { amperes: normal } }, decide: test-further, reason: too-close }
  - { when: { proof: against-part }, decide: accept, reason: vehicle }
  - { decide: decline, reason: good }
`;

/** Its files, in this order. */
export const smallTable: readonly FileText[] = [
  { path: 'flow.yaml', text: order },
  { path: 'checks.yaml', text: checks },
  { path: 'decisions.yaml', text: table },
];
