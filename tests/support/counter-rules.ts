/**
 * How a returned part is judged and a fitting proved, written out a second time and apart from the
 * flows: the decision tables for starter and battery line by line, and the steps of a fitting. So a
 * flow can be held against them over any number of combinations. Common practice, no source.
 *
 * Answers are the ids of choices and bands, and three words beside them: `low~normal` is a reading
 * too near the bound between two bands to be told, `unanswered` a check that could not be done,
 * `no-bound` a reading for which there is no figure to hold it to. *Not* this band therefore takes
 * in borderline and unanswered; *not* this choice means that another one was answered.
 */

/** A check that could not be done. */
type Unanswered = 'unanswered';

/** The answers to every check of a table: one of those listed, or none. */
type Answers<Listed extends Record<string, readonly string[]>> = {
  readonly [Check in keyof Listed]: Listed[Check][number] | Unanswered;
};

/** What is decided at the counter. */
export interface Decision {
  readonly decision: 'accept' | 'decline' | 'test-further';
  /** More than one only where the last line of the table leaves it open. */
  readonly reason: readonly string[];
}

const decided =
  (decision: Decision['decision']) =>
  (...reason: readonly string[]): Decision => ({ decision, reason });
const accept = decided('accept');
const decline = decided('decline');
const testFurther = decided('test-further');

const borderline = (answer: string): boolean => answer.includes('~');

/** The last line: too close where a reading is borderline, not testable where one is missing. */
function otherwise(answers: readonly string[]): Decision {
  const reason = [
    ...(answers.some(borderline) ? ['too-close-to-call'] : []),
    ...(answers.includes('unanswered') ? ['not-testable-here'] : []),
  ];
  return testFurther(...(reason.length > 0 ? reason : ['too-close-to-call', 'not-testable-here']));
}

/** A rule for a part; undefined where it leaves it to the next. */
type RuleFor<Part> = (part: Part) => Decision | undefined;

function firstOf<Part>(rules: readonly RuleFor<Part>[], part: Part): Decision {
  for (const rule of rules) {
    const said = rule(part);
    if (said) return said;
  }
  throw new Error('no rule decides');
}

/** The paper of any part: what was sold, to whom and when. */
const paper = {
  'part-number': ['matches-sale', 'old-unit', 'other-part', 'unreadable'],
  'sale-proof': ['shown', 'on-record', 'none'],
  'sale-date': ['return-window', 'warranty', 'expired'],
} as const;

/** Every check of a returned starter, with the answers that it may come to. */
export const starterReturnAnswers = {
  ...paper,
  claim: ['no-crank', 'slow-crank', 'noise', 'keeps-running', 'does-not-fit', 'unwanted'],
  handling: ['unused', 'fitted', 'opened'],
  stud: ['sound', 'stripped', 'turns', 'burnt'],
  housing: ['sound', 'cracked', 'nose-broken'],
  pinion: ['clean', 'milled', 'chipped'],
  soiling: ['dry', 'soaked-oil', 'soaked-water'],
  'suits-vehicle': ['suits', 'unsuited', 'unsuited-advised'],
  'heat-marks': ['none', 'burnt'],
  'cranked-for': ['short', 'long'],
  'ring-teeth': ['sound', 'worn-spot', 'missing'],
  'drive-turn': ['one-way', 'slips-both', 'stuck'],
  plunger: ['throws-and-holds', 'drops-out', 'no-throw'],
  'bench-run': ['even', 'slow', 'scraping', 'silent'],
  'bench-supply': ['low', 'low~ready', 'ready'],
  'no-load-current': ['none', 'none~low', 'low', 'low~normal', 'normal', 'normal~high', 'high'],
  'no-load-speed': ['low', 'low~normal', 'normal'],
  'warm-repeat': ['same', 'fails'],
  'vehicle-proof': ['against-part', 'points-elsewhere', 'incomplete'],
} as const;

/** A returned starter. */
export type StarterReturn = Answers<typeof starterReturnAnswers>;

/** What both tables begin with. `undefined`: the paper is in order. */
function byPaper(
  part: Pick<StarterReturn, 'part-number' | 'sale-proof' | 'sale-date'>,
): Decision | undefined {
  const number = part['part-number'];
  if (number === 'old-unit' || number === 'other-part') return decline('not-the-part-sold');
  if (number === 'unreadable') return testFurther('part-unidentified');
  if (part['sale-proof'] === 'none') return decline('no-proof-of-sale');
  if (part['sale-date'] === 'unanswered') return testFurther('not-testable-here');
  if (part['sale-date'] === 'expired') return decline('out-of-term');
  return undefined;
}

/** A part that nobody wants or that does not fit, once it can no longer be taken back unused. */
function byClaim(
  part: Pick<StarterReturn, 'handling' | 'sale-date'> & { readonly claim: string },
): Decision | undefined {
  if (part.claim !== 'unwanted' && part.claim !== 'does-not-fit') return undefined;
  return part.handling === 'unused' && part['sale-date'] === 'warranty'
    ? decline('out-of-term')
    : decline('already-fitted');
}

/** Judges a returned starter. */
export function judgeStarter(part: StarterReturn, { benchTester = true } = {}): Decision {
  return firstOf(
    starterRules(() => benchTester),
    part,
  );
}

/**
 * The rules for a starter; the first that says anything decides. The look (handling, stud, housing,
 * pinion, soiling) is asked for where the table first goes by it: after the paper and the shop's
 * own wrong advice.
 */
export function starterRules(
  hasBench: (part: StarterReturn) => boolean,
): readonly RuleFor<StarterReturn>[] {
  return [
    byPaper,
    starterByLook,
    starterByDamage,
    starterByDrive,
    (part) => (hasBench(part) ? undefined : starterWithoutBench(part)),
    starterByBench,
    starterByVehicle,
  ];
}

function starterByLook(part: StarterReturn): Decision | undefined {
  const { handling, stud, housing, pinion, soiling } = part;
  if (part['suits-vehicle'] === 'unsuited-advised') return accept('wrong-advice');
  if ([handling, stud, housing, pinion, soiling].includes('unanswered')) {
    return testFurther('not-testable-here');
  }
  if (handling === 'unused') {
    if (housing !== 'sound') return accept('damaged-on-delivery');
    const asSold = pinion === 'clean' && stud === 'sound' && soiling === 'dry';
    if (asSold && part['sale-date'] === 'return-window') return accept('unused-return');
  }
  if (handling === 'opened') return decline('opened-by-others');
  return byClaim(part);
}

function starterByDamage(part: StarterReturn): Decision | undefined {
  if (part['suits-vehicle'] === 'unsuited') return decline('wrong-type');
  if (part.stud !== 'sound' || part.housing !== 'sound') return decline('fitting-damage');
  if (part.soiling !== 'dry') return decline('fluid-damage');
  if (part.pinion !== 'clean') {
    if (part['ring-teeth'] === 'unanswered') return testFurther('mesh-damage');
    return part['ring-teeth'] === 'sound' ? accept('mesh-damage') : decline('mesh-damage');
  }
  if (part['heat-marks'] === 'burnt') {
    if (part['cranked-for'] === 'long') return decline('overheated');
    if (part['cranked-for'] === 'unanswered') return testFurther('overheated');
  }
  return undefined;
}

function starterByDrive(part: StarterReturn): Decision | undefined {
  const drive = part['drive-turn'];
  return drive === 'slips-both' || drive === 'stuck' ? accept('drive-fault') : undefined;
}

function starterWithoutBench(part: StarterReturn): Decision {
  return part['vehicle-proof'] === 'against-part'
    ? accept('vehicle-evidence')
    : testFurther('not-testable-here');
}

function starterByBench(part: StarterReturn): Decision | undefined {
  const { plunger } = part;
  const run = part['bench-run'];
  const current = part['no-load-current'];
  if (part['bench-supply'] !== 'ready') return testFurther('bench-not-valid');
  if (plunger === 'no-throw' || plunger === 'drops-out') return accept('solenoid-fault');
  if (run === 'even' && current === 'none') return testFurther('bench-not-valid');
  if (current === 'high' || run === 'scraping') return accept('motor-drag');
  if (current === 'none' || run === 'silent') return accept('motor-open');
  const bothLow = current === 'low' && part['no-load-speed'] === 'low';
  if (run === 'slow' || bothLow) return accept('motor-resistance');
  if (part['warm-repeat'] === 'fails') return accept('fails-warm');
  return undefined;
}

function starterByVehicle(part: StarterReturn): Decision {
  const proof = part['vehicle-proof'];
  const current = part['no-load-current'];
  const speed = part['no-load-speed'];
  if (proof === 'against-part') {
    return part['warm-repeat'] === 'unanswered'
      ? testFurther('fails-on-vehicle-only')
      : accept('vehicle-evidence');
  }
  const apart =
    (current === 'low' && speed === 'normal') || (current === 'normal' && speed === 'low');
  if (apart) return testFurther('too-close-to-call');
  const good =
    part.plunger === 'throws-and-holds' &&
    part['drive-turn'] === 'one-way' &&
    part['bench-run'] === 'even' &&
    current === 'normal' &&
    (speed === 'normal' || speed === 'unanswered');
  if (good) return decline(proof === 'points-elsewhere' ? 'cause-elsewhere' : 'no-fault-found');
  return otherwise([part.plunger, part['drive-turn'], part['bench-run'], current, speed]);
}

/** Every check of a returned battery that is answered once, with the answers it may come to. */
export const batteryReturnAnswers = {
  ...paper,
  'part-number': ['matches-sale', 'other-part', 'unreadable'],
  claim: ['goes-flat', 'slow-crank', 'leaks', 'unwanted', 'does-not-fit'],
  handling: ['unused', 'fitted'],
  'battery-look': ['sound', 'frozen', 'swollen', 'cracked', 'leaking'],
  posts: ['sound', 'hammered', 'melted'],
  electrolyte: ['covered', 'low', 'discoloured'],
  'suits-vehicle': ['suits', 'unsuited', 'unsuited-advised'],
  'case-temperature': ['too-cold', 'too-cold~usable', 'usable', 'usable~too-hot', 'too-hot'],
  'received-volts': [
    'reversed',
    'reversed~deep',
    'deep',
    'deep~discharged',
    'discharged',
    'discharged~charged',
    'charged',
  ],
  'charge-take': ['takes', 'refuses', 'heats'],
  'stand-loss': ['normal', 'normal~high', 'high'],
  'vehicle-proof': ['against-part', 'points-elsewhere', 'incomplete'],
} as const;

/** The checks of a returned battery that are answered again after a second charge. */
export const batteryRepeatedAnswers = {
  'battery-recharged': ['cell-down', 'cell-down~low', 'low', 'low~full', 'full'],
  'battery-load-test': ['failed', 'failed~passed', 'passed'],
  'battery-tester': ['poor', 'poor~middle', 'middle', 'middle~strong', 'strong'],
  'cell-spread': ['even', 'even~recheck', 'recheck', 'recheck~uneven', 'uneven'],
} as const;

type Repeated = typeof batteryRepeatedAnswers;

/**
 * A returned battery. Of a repeated check every answer in order, the latest last; none: unanswered.
 * Of `charge-take` the latest.
 */
export type BatteryReturn = Answers<typeof batteryReturnAnswers> & {
  readonly [Check in keyof Repeated]: readonly Repeated[Check][number][];
};

/** Judges a returned battery. */
export function judgeBattery(part: BatteryReturn): Decision {
  return firstOf(batteryRules, part);
}

/**
 * The rules for a battery; the first that says anything decides. The look (handling, battery,
 * posts) is asked for where the starter's is; a frozen battery is thawed before anything else
 * about it counts.
 */
export const batteryRules: readonly RuleFor<BatteryReturn>[] = [
  byPaper,
  batteryByLook,
  batteryByDamage,
  batteryAsReceived,
  batteryByCharge,
  batteryByLoad,
];

function batteryByLook(part: BatteryReturn): Decision | undefined {
  const { handling, posts } = part;
  const look = part['battery-look'];
  if (look === 'frozen') return testFurther('thaw-first');
  if (part['suits-vehicle'] === 'unsuited-advised') return accept('wrong-advice');
  if ([handling, look, posts].includes('unanswered')) return testFurther('not-testable-here');
  if (handling === 'unused') {
    const harmed = look !== 'sound' || posts !== 'sound' || part['received-volts'] === 'reversed';
    if (harmed) return accept('damaged-on-delivery');
    if (part['sale-date'] === 'return-window') return accept('unused-return');
  }
  return byClaim(part);
}

function batteryByDamage(part: BatteryReturn): Decision | undefined {
  const look = part['battery-look'];
  if (look === 'cracked' || part.posts !== 'sound') return decline('outside-damage');
  if (look === 'leaking' || look === 'swollen') {
    const proof = part['vehicle-proof'];
    const ofItself = look === 'leaking' ? proof !== 'points-elsewhere' : proof === 'against-part';
    return ofItself ? accept('case-defect') : decline('overcharged-or-frozen');
  }
  if (part['suits-vehicle'] === 'unsuited') return decline('wrong-type');
  if (part.electrolyte === 'low' || part.electrolyte === 'discoloured') {
    return decline('overcharged-or-neglected');
  }
  return undefined;
}

function batteryAsReceived(part: BatteryReturn): Decision | undefined {
  const received = part['received-volts'];
  const take = part['charge-take'];
  if (received === 'reversed') return decline('reverse-charged');
  if (take === 'heats') return accept('cell-fault');
  if (part['case-temperature'] !== 'usable') return testFurther('wrong-temperature');
  if (received !== 'charged' && take === 'unanswered') return testFurther('charge-first');
  return undefined;
}

function batteryByCharge(part: BatteryReturn): Decision | undefined {
  const spread = part['cell-spread'];
  const even = spread.at(-1) ?? 'unanswered';
  const take = part['charge-take'];
  if (even === 'uneven') return accept('cell-fault');
  if (take === 'takes') {
    const recharged = part['battery-recharged'];
    const rested = recharged.at(-1) ?? 'unanswered';
    if (rested === 'cell-down') return accept('cell-fault');
    if (rested !== 'full' && recharged.length < 2) return testFurther('charge-again');
    if (rested === 'low' || rested === 'cell-down~low') return accept('capacity-lost');
  }
  if (take === 'refuses') {
    return part['received-volts'] === 'deep'
      ? decline('deep-discharge-damage')
      : accept('capacity-lost');
  }
  const doubtful = even === 'recheck' || even === 'recheck~uneven';
  if (doubtful && spread.length < 2) return testFurther('charge-again');
  return undefined;
}

function batteryByLoad(part: BatteryReturn): Decision {
  const loads = part['battery-load-test'];
  const testers = part['battery-tester'];
  const load = loads.at(-1) ?? 'unanswered';
  const tester = testers.at(-1) ?? 'unanswered';
  const proof = part['vehicle-proof'];
  const loss = part['stand-loss'];
  const disagree =
    (load === 'passed' && tester === 'poor') || (load === 'failed' && tester === 'strong');
  if (disagree && Math.max(loads.length, testers.length) < 2) {
    return testFurther('results-disagree');
  }
  if (load === 'failed' || (tester === 'poor' && load !== 'passed')) return accept('capacity-lost');
  if (loss === 'high') return accept('self-discharge');
  if (part.claim === 'goes-flat' && proof === 'against-part' && loss === 'unanswered') {
    return testFurther('stand-and-see');
  }
  if (load === 'passed' || (tester === 'strong' && load === 'unanswered')) {
    return decline(proof === 'points-elsewhere' ? 'cause-elsewhere' : 'no-fault-found');
  }
  return otherwise([load, tester]);
}

/** Every step of a fitting that is answered once, with the answers that it may come to. */
export const starterFittingAnswers = {
  'fault-proved': ['proved', 'not-proved'],
  secured: ['done'],
  'settings-kept': ['done'],
  'ground-lead-off': ['done'],
  support: ['not-needed', 'stands', 'ramps', 'lift', 'jack-only'],
  'stud-dead': ['dead', 'dead~live', 'live'],
  'leads-off': ['done'],
  'starter-out': ['done'],
  'ring-teeth': ['sound', 'worn-spot', 'missing'],
  'part-compare': ['same', 'different'],
  'mating-face': ['clean', 'damaged'],
  'bolts-by-hand': ['all-start', 'binds'],
  'leads-clear': ['clear', 'touching'],
  'ground-lead-on': ['done'],
  'first-crank': ['even', 'grinds', 'whines', 'clicks', 'silent', 'keeps-running'],
  'battery-crank': ['collapsed', 'collapsed~low', 'low', 'low~good', 'good'],
  'drop-positive': ['good', 'good~high', 'high', 'no-bound'],
  'drop-ground': ['good', 'good~high', 'high', 'no-bound'],
  charging: ['none', 'none~low', 'low', 'low~right', 'right', 'right~high', 'high', 'no-bound'],
  'repeat-starts': ['all-good', 'one-failed'],
  'lamps-clear': ['clear', 'warning-remains'],
} as const;

const tightness = ['under', 'under~right', 'right', 'right~over', 'over', 'no-bound'] as const;

/** The steps of a fitting that are answered again: tightened again, or charged first. */
export const fittingRepeatedAnswers = {
  'bolts-tight': tightness,
  'stud-nuts': tightness,
  'battery-rest': [
    'flat',
    'flat~discharged',
    'discharged',
    'discharged~ready',
    'ready',
    'ready~surface-charged',
    'surface-charged',
    'surface-charged~over',
    'over',
  ],
} as const;

type RepeatedSteps = typeof fittingRepeatedAnswers;

/** A fitting. Of a repeated step every answer in order, the latest last; none: unanswered. */
export type StarterFitting = Answers<typeof starterFittingAnswers> & {
  readonly [Step in keyof RepeatedSteps]: readonly RepeatedSteps[Step][number][];
};

/** What a fitting comes to; `reason` is the step that stopped it. */
export type FittingOutcome =
  | { readonly outcome: 'proved' | 'unproved' }
  | { readonly outcome: 'stopped'; readonly reason: string };

/** What each step must come to where anything else, undone and unmeasured included, stops. */
const safetySteps = {
  'fault-proved': ['proved'],
  secured: ['done'],
  'ground-lead-off': ['done'],
  support: ['not-needed', 'stands', 'ramps', 'lift'],
  'stud-dead': ['dead'],
} as const;

/** The answers that stop, of steps that may be left out. */
const stopping = {
  'ring-teeth': ['worn-spot', 'missing'],
  'part-compare': ['different'],
  'mating-face': ['damaged'],
  'bolts-by-hand': ['binds'],
  'leads-clear': ['touching'],
  'first-crank': ['grinds', 'whines', 'clicks', 'silent', 'keeps-running'],
} as const;

/** Too tight at any reading, or still loose at the last. */
const stopsTightening = (read: readonly string[]): boolean =>
  read.includes('over') || read.at(-1) === 'under';

/** Steps that stop, in their order, up to where the battery is read; `undefined`: none did. */
function stoppedBeforeCrank(fitting: StarterFitting): string | undefined {
  const one = (step: keyof typeof stopping): boolean =>
    (stopping[step] as readonly string[]).includes(fitting[step]);
  const undone = Object.entries(safetySteps).find(
    ([step, right]) =>
      !(right as readonly string[]).includes(fitting[step as keyof typeof safetySteps]),
  );
  if (undone) return undone[0];
  const first = (['ring-teeth', 'part-compare', 'mating-face', 'bolts-by-hand'] as const).find(one);
  if (first) return first;
  const loose = (['bolts-tight', 'stud-nuts'] as const).find((step) =>
    stopsTightening(fitting[step]),
  );
  return loose ?? (one('leads-clear') ? 'leads-clear' : undefined);
}

/**
 * Judges a fitting. A battery that is still not ready after its charge ends it unproved, since
 * cranking on it would prove nothing. A reading without a bound counts as good, one that was not
 * taken does not.
 */
export function judgeFitting(fitting: StarterFitting): FittingOutcome {
  const before = stoppedBeforeCrank(fitting);
  if (before) return { outcome: 'stopped', reason: before };
  const rest = fitting['battery-rest'].at(-1) ?? 'unanswered';
  const rested = !rest.includes('discharged') && rest !== 'flat' && rest !== 'unanswered';
  if (!rested) return { outcome: 'unproved' };
  const crank: string = fitting['first-crank'];
  if ((stopping['first-crank'] as readonly string[]).includes(crank)) {
    return { outcome: 'stopped', reason: 'first-crank' };
  }
  const good: readonly string[] = ['good', 'right', 'no-bound'];
  const proved =
    crank === 'even' &&
    good.includes(fitting['battery-crank']) &&
    good.includes(fitting['drop-positive']) &&
    good.includes(fitting['drop-ground']) &&
    good.includes(fitting.charging) &&
    fitting['repeat-starts'] === 'all-good' &&
    fitting['lamps-clear'] === 'clear';
  return { outcome: proved ? 'proved' : 'unproved' };
}
