/**
 * Which remedy and which help are right for each fault, and what a wrong one costs.
 *
 * Costs are in minutes of the person whose vehicle it is; money is counted at one minute for each
 * unit of it. Common practice, no source.
 */
import type { Role } from './setting.ts';

type Right = { readonly remedy: readonly string[]; readonly send: readonly string[] };

const workshop: readonly string[] = ['technician-visit', 'recover-vehicle'];
const technician: readonly string[] = ['technician-van', 'flatbed'];
const batteryHelp: readonly string[] = ['battery-van', 'technician-van'];

const right: Readonly<Record<string, Right>> = {
  'battery-discharged': {
    remedy: ['recharge-then-prove', 'boost'],
    send: ['boost-van', ...batteryHelp],
  },
  'battery-worn': {
    remedy: ['fit-battery', 'recharge-then-prove', 'boost'],
    send: ['boost-van', ...batteryHelp],
  },
  'battery-connection': { remedy: ['clean-connection'], send: ['boost-van', ...batteryHelp] },
  'positive-cable': { remedy: ['replace-cable', 'clean-connection'], send: technician },
  'ground-cable': { remedy: ['replace-cable', 'clean-connection'], send: technician },
  'main-fuse': { remedy: ['replace-fuse'], send: technician },
  'starter-fuse': { remedy: ['replace-fuse'], send: technician },
  'starter-relay': { remedy: ['replace-relay'], send: technician },
  'ignition-switch': { remedy: ['repair-switch'], send: technician },
  'selector-switch': { remedy: ['repair-switch'], send: technician },
  'clutch-switch': { remedy: ['repair-switch'], send: technician },
  'brake-switch': { remedy: ['repair-switch', 'replace-fuse'], send: technician },
  'steering-lock': {
    remedy: ['drive', 'key-specialist'],
    send: ['nothing', 'locksmith', 'technician-van', 'flatbed'],
  },
  'key-fob': {
    remedy: ['replace-fob-cell', 'key-specialist'],
    send: ['nothing', 'locksmith', 'technician-van'],
  },
  immobiliser: { remedy: ['key-specialist'], send: ['locksmith', ...technician] },
  'control-wiring': { remedy: ['repair-wiring'], send: technician },
  solenoid: { remedy: ['replace-starter'], send: technician },
  'starter-motor': { remedy: ['replace-starter'], send: technician },
  'starter-drive': { remedy: ['replace-starter'], send: technician },
  'ring-gear': { remedy: ['replace-starter'], send: technician },
  'engine-locked': { remedy: ['recover-vehicle'], send: ['flatbed'] },
  'engine-drag': { remedy: ['recover-vehicle'], send: technician },
  'fuel-empty': { remedy: ['bring-fuel'], send: ['fuel-van', 'technician-van'] },
  'fuel-wrong': { remedy: ['drain-fuel', 'recover-vehicle'], send: ['fuel-van', 'flatbed'] },
  'fuel-delivery': { remedy: workshop, send: technician },
  'ignition-spark': { remedy: workshop, send: technician },
  'position-sensor': { remedy: workshop, send: technician },
  'glow-plugs': { remedy: workshop, send: technician },
  'flooded-engine': { remedy: ['clear-flood'], send: ['nothing', ...technician] },
  'timing-lost': { remedy: ['recover-vehicle'], send: technician },
  'hybrid-not-ready': { remedy: workshop, send: technician },
  operator: { remedy: ['drive'], send: ['nothing', ...technician] },
  unlisted: { remedy: workshop, send: technician },
};

/** Minutes and money of doing a remedy. */
const remedyMinutes: Readonly<Record<string, number>> = {
  drive: 1,
  boost: 15,
  'recharge-then-prove': 45,
  'fit-battery': 130,
  'clean-connection': 20,
  'replace-cable': 90,
  'replace-fuse': 15,
  'replace-relay': 25,
  'replace-fob-cell': 10,
  'key-specialist': 150,
  'repair-switch': 110,
  'repair-wiring': 100,
  'replace-starter': 330,
  'clear-flood': 10,
  'bring-fuel': 40,
  'drain-fuel': 200,
  'recover-vehicle': 160,
  'technician-visit': 90,
  'call-emergency': 60,
};

/** Remedies that put something new into the vehicle. */
const parts: readonly string[] = [
  'fit-battery',
  'replace-cable',
  'replace-fuse',
  'replace-relay',
  'replace-fob-cell',
  'repair-switch',
  'repair-wiring',
  'replace-starter',
];

/** Finding out that it was something else, and coming back: by who is concerned. */
const againMinutes: Readonly<Record<Role, number>> = { driver: 90, dispatcher: 60, mechanic: 45 };

/** Minutes until help of each kind has come and done its work. */
const sendMinutes: Readonly<Record<string, number>> = {
  nothing: 0,
  'boost-van': 40,
  'battery-van': 60,
  'technician-van': 75,
  flatbed: 120,
  locksmith: 100,
  'fuel-van': 50,
  police: 30,
};

/** A person's waiting is worth so much beside the minutes of answering. */
const minuteOfAsking = 1;

/** Remedies that are right, that of any of the faults. */
export function rightRemedies(faults: readonly string[]): readonly string[] {
  return [...new Set(faults.flatMap((fault) => right[fault]?.remedy ?? []))];
}

/** Help that is right. */
export function rightSends(faults: readonly string[]): readonly string[] {
  return [...new Set(faults.flatMap((fault) => right[fault]?.send ?? []))];
}

/** A remedy that hands the vehicle on is never wrong, only dear. */
function handsOn(remedy: string): boolean {
  return workshop.includes(remedy);
}

/** What a verdict leads to. */
export type Outcome = {
  readonly isWrongPart: boolean;
  readonly isWrongHelp: boolean;
  /** Minutes, with the asking. */
  readonly cost: number;
  /** The least that anything right costs, or handing on: no way of asking costs less. */
  readonly least: number;
};

/** What following a verdict costs on a vehicle with these faults. */
export function outcomeOf(
  said: { readonly remedy: string; readonly send: string; readonly minutes: number },
  truth: { readonly faults: readonly string[]; readonly role: Role },
): Outcome {
  const { faults, role } = truth;
  const { remedy, send, minutes } = said;
  const cures = rightRemedies(faults);
  const cheapest = Math.min(
    ...faults.map((fault) =>
      Math.min(...(right[fault]?.remedy ?? []).map((one) => remedyMinutes[one] ?? 90)),
    ),
  );
  const asking = minuteOfAsking * minutes;
  const isRightHelp = rightSends(faults).includes(send);
  if (role === 'dispatcher') {
    const help = sendMinutes[send] ?? 75;
    const least = Math.min(...rightSends(faults).map((one) => sendMinutes[one] ?? 75));
    const again = isRightHelp ? 0 : againMinutes.dispatcher + (sendMinutes['technician-van'] ?? 75);
    return { isWrongPart: false, isWrongHelp: !isRightHelp, cost: asking + help + again, least };
  }
  const isRight = cures.includes(remedy);
  const done = remedyMinutes[remedy] ?? 90;
  const again = isRight || handsOn(remedy) ? 0 : againMinutes[role] + cheapest;
  return {
    isWrongPart: parts.includes(remedy) && !isRight,
    isWrongHelp: false,
    cost: asking + done + again,
    least: Math.min(cheapest, ...workshop.map((one) => remedyMinutes[one] ?? 90)),
  };
}

/** "Replace the usual part first": what is fitted or sent on the complaint alone. */
export function usualPart(complaint: string): {
  readonly fault: string;
  readonly remedy: string;
  readonly send: string;
} {
  const battery = { fault: 'battery-worn', remedy: 'fit-battery', send: 'battery-van' };
  const usual: Readonly<Record<string, typeof battery>> = {
    'single-click': { fault: 'starter-motor', remedy: 'replace-starter', send: 'technician-van' },
    grinding: { fault: 'starter-drive', remedy: 'replace-starter', send: 'technician-van' },
    'free-spin': { fault: 'starter-drive', remedy: 'replace-starter', send: 'technician-van' },
    'normal-crank': { fault: 'fuel-delivery', remedy: 'technician-visit', send: 'technician-van' },
    'starts-then-stops': {
      fault: 'fuel-delivery',
      remedy: 'technician-visit',
      send: 'technician-van',
    },
    'key-stuck': { fault: 'steering-lock', remedy: 'key-specialist', send: 'locksmith' },
  };
  return usual[complaint] ?? battery;
}
