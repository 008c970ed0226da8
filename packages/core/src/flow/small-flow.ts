/**
 * The smallest flow that has everything a flow can have, as the texts of its files.
 */
import type { FileText } from './source-file.ts';

const order = `flow: small
version: '1'
stages:
  make-safe: [scene]
  what-happens: [complaint, history, transmission]
  look: [kit, battery-look, clutch]
  measure: [battery-rest, battery-crank, drop-ground, feed, battery-recharged]
  put-right: [repair]
  prove-it: [start-after, drop-ground-after]
verdict-after: measure
turning: { complaint: slow-crank }
interrupts:
  smoke: { word: danger, then: return }
  starts-now: { word: notice, then: prove, prove: { start-after: starts } }
measured: { restVoltage: battery-rest, crankVoltage: battery-crank, groundDrop: drop-ground }
`;

const checks = `checks:
  scene: { choice: [safe, unsafe], at: memory, minutes: 0.2, again: [unsafe] }
  complaint: { choice: [silent, slow-crank], at: memory, minutes: 0.3 }
  history:
    { choices: [lights-left-on, water, none], at: memory, minutes: 0.3 }
  transmission:
    choice: [manual, automatic]
    at: memory
    minutes: 0.1
    when: { vehicle.transmission: unknown }
    sets:
      manual: { vehicle.transmission: manual }
      automatic: { vehicle.transmission: automatic }
  kit:
    choices: [voltmeter, test-lamp, helper, charger, none]
    at: memory
    minutes: 0.2
    when: { kit: unknown }
    writes: kit
  battery-look: { choice: [sound, leaking], at: bonnet, minutes: 0.5 }
  clutch:
    choice: [down, up]
    at: seat
    minutes: 0.3
    when: { vehicle.transmission: manual }
    again: [up]
    lapses: true
  battery-rest:
    reading: V
    bands: { flat: battery.rest.flat, discharged: battery.rest.full, ready: above }
    range: battery-voltage
    expect: battery.rest
    settled-by: [battery-crank]
    at: bonnet
    needs: [voltmeter]
    minutes: 1.5
    probes: { red: battery-positive-post, black: battery-negative-post }
  battery-crank:
    reading: V
    bands: { low: 9.6, good: above }
    range: battery-voltage
    at: bonnet
    needs: [voltmeter, helper]
    minutes: 1.5
    does: [held-start]
  drop-ground:
    reading: V
    bands: { good: 0.3, high: above }
    range: drop
    expect: drop.ground
    at: below
    needs: [voltmeter, helper]
    minutes: 3
    does: [held-start]
  feed:
    reading: V
    bands: { absent: 2, low: 8, present: above }
    lamp: { dark: absent, dim: low, bright: present }
    range: signal-voltage
    at: bonnet
    needs: [voltmeter or test-lamp]
    minutes: 2
    when: { complaint: silent }
  battery-recharged:
    reading: V
    bands: { low: 12.5, full: above }
    range: battery-voltage
    settled-in-time: [full]
    at: bonnet
    needs: [charger, voltmeter]
    minutes: 150
    does: [charge]
    wait: { minutes: 120 }
    when: { battery-rest: [flat, discharged] }
    requires: { battery-rest: answered }
  repair: { work: done, at: bonnet, minutes: 0 }
  start-after: { choice: [starts, no-change], at: seat, minutes: 0.5, does: [held-start] }
  drop-ground-after: { like: drop-ground }
`;

const faults = `faults:
  battery-discharged:
    best: proved
    proof: { was: { battery-rest: [flat, discharged] }, battery-recharged: full }
    remedy: recharge-then-prove
    send: boost-van
    cautions: [battery-gas]
    prove: { start-after: starts }
  ground-cable:
    best: proved
    proof: { drop-ground: high }
    remedy: replace-cable
    send: technician-van
    prove: { start-after: starts, drop-ground-after: good }
  unlisted:
    best: open
    remedy: technician-visit
    send: technician-van
roots:
  left-on-load: { faults: [battery-discharged], when: { history: lights-left-on } }
groups:
  electrical: [battery-discharged, ground-cable]
priors:
  battery-discharged:
    weight: 60
    source: made up for this flow
    times: [{ by: 2, when: { history: lights-left-on } }]
  ground-cable: { weight: 30, source: made up for this flow }
  unlisted: { weight: 10, source: made up for this flow }
likelihoods:
  complaint:
    - of-100:
        electrical: { silent: 20, slow-crank: 80 }
        otherwise: { silent: 70, slow-crank: 30 }
  history:
    - of-100:
        battery-discharged: { lights-left-on: 40, water: 2 }
        otherwise: { lights-left-on: 5, water: 4 }
  battery-rest:
    - of-100:
        battery-discharged: { flat: 60, discharged: 35, ready: 5 }
        otherwise: { flat: 2, discharged: 8, ready: 90 }
  drop-ground:
    - mistaken: 1
      of-100:
        ground-cable: { good: 4, high: 96 }
        otherwise: { good: 95, high: 5 }
  battery-recharged:
    - of-100:
        battery-discharged: { low: 10, full: 90 }
        otherwise: { low: 60, full: 40 }
common-causes:
  - { checks: [battery-rest, battery-recharged], correlation: 0.2 }
cautions:
  vehicle-moves: { word: warning, confirm: true, before: { does: held-start } }
  battery-gas: { word: warning, confirm: true, before: { does: charge } }
  short-circuit: { word: warning, before: { checks: [drop-ground] } }
  traffic: { word: danger, confirm: true, before: everything, when: { place: shoulder } }
stops:
  unsafe: { when: { scene: unsafe }, forbids: everything, except: [scene] }
  battery-unfit: { when: { battery-look: leaking }, forbids: { does: [held-start, charge] } }
  shoulder:
    when: { place: shoulder }
    forbids: { at: [seat, bonnet, below] }
    remembered: [battery-look]
    instead: { remedy: call-emergency, send: police }
`;

const costs = `by-worth: [look, measure]
costs:
  source: made up for this flow
  setups: { voltmeter: 4, bonnet: 1 }
  remedies:
    recharge-then-prove: { cost: 45, wrong: 60 }
    replace-cable: { cost: 90, wrong: 120 }
    technician-visit: { cost: 90, wrong: 0, always: true }
    call-emergency: { cost: 60, wrong: 0 }
  sends:
    boost-van: { cost: 40, wrong: 60 }
    technician-van: { cost: 75, wrong: 0, always: true }
    police: { cost: 30, wrong: 0 }
  wrong-times: { driver: 1.5 }
`;

/** The files of the small flow. */
export const smallFlow: readonly FileText[] = [
  { path: 'flow.yaml', text: order },
  { path: 'checks.yaml', text: checks },
  { path: 'faults.yaml', text: faults },
];

/** What acting on the small flow's verdicts costs, and what of it is asked by its worth. */
export const smallCosts: FileText = { path: 'costs.yaml', text: costs };
