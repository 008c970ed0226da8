import { spawnSync } from 'node:child_process';
import { answerQuestion, layOutHelp, layOutReply } from '@keyturn/terminal';
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { builtProgram } from './support/built-program.ts';

const program = await builtProgram('numbers/main.js');

// Each run starts the program anew, which a machine busy with other tests may take seconds over.
vi.setConfig({ testTimeout: 60_000 });

/** What is said to a question, its line breaks left out. */
function said(question: string): string {
  return layOutReply(question, answerQuestion(question))
    .join('\n')
    .replaceAll(/\n {2}/g, ' ');
}

const beginsWith = (question: string, line: string): void => {
  expect(said(question).split('\n')[0]).toBe(line);
};

describe('a question is answered with the published figure', () => {
  test.each([
    // The load-test table as two vehicle makers' service manuals print it.
    ['load-test minimum at -7 °C', '8.9 V'],
    ['load test minimum at 20 °F', '8.9 V'],
    ['minimum of a load test at 10 °C', '9.4 V'],
    ['what is the load-test minimum at 70 °F', '9.6 V'],
    ['at 0 °F the load-test minimum', '8.5 V'],
    ['load-test minimum minus 7 °C 24 V truck', '17.8 V'],
    // IEC 60228 class 5, 25 mm2: at most 0.780 mOhm/m, as four reprints of it agree.
    ['drop of 1.5 m of 25 mm² at 200 A', '0.234 V, from 0.222 to 0.234 V'],
    ['25mm2 1,5m 200A drop', '0.234 V, from 0.222 to 0.234 V'],
    ['at 200 amps what does 150 cm of 25 sq mm cable drop', '0.234 V, from 0.222 to 0.234 V'],
    [
      'how many volts do I lose in 1500 mm of 25 mm^2 at 200000 mA?',
      '0.234 V, from 0.222 to 0.234 V',
    ],
    // Class 5, tinned, 25 mm2: 0.795 mOhm/m.
    ['drop of 1.5 m of 25 mm² tinned at 200 A', '0.239 V, from 0.227 to 0.239 V'],
    // Copper has 3.93 per mille more a kelvin (International Annealed Copper Standard).
    ['drop of 1.5 m of 25 mm² at 200 A at 70 °C', '0.28 V, from 0.266 to 0.28 V'],
    // AWG after ASTM B258: 2 AWG is 33.6 mm2.
    ['2 AWG in mm²', '33.6 mm², a solid wire of 6.54 mm'],
    ['AWG 4/0 in mm²', '107 mm², a solid wire of 11.7 mm'],
    ['25 mm² in AWG', '3 AWG is nearest, with 26.7 mm²'],
    // ISO 898-1 from memory, nut factors published.
    [
      'torque of an M8 8.8 bolt',
      '25.5 N·m, from 19.1 to 31.8 N·m (18.8 lbf·ft, from 14.1 to 23.5 lbf·ft)',
    ],
    [
      'how tight is a dry 8.8 M8 bolt',
      '25.5 N·m, from 25.5 to 31.8 N·m (18.8 lbf·ft, from 18.8 to 23.5 lbf·ft)',
    ],
    // A harvester maker's manual: at most 20 N.m for M8 into cast aluminium.
    [
      'torque of an M8 8.8 bolt oiled into aluminium',
      '19.1 N·m, from 19.1 to 20 N·m (14.1 lbf·ft, from 14.1 to 14.8 lbf·ft)',
    ],
    // Common practice, no source: 8 to 12 N.m.
    [
      'torque of an M8 copper stud',
      '10 N·m, from 8 to 12 N·m (7.38 lbf·ft, from 5.9 to 8.85 lbf·ft)',
    ],
    // A battery maker's installation manual, Table 2.
    [
      'M6 battery insert torque',
      '6.2 N·m, from 4.5 to 7.9 N·m (4.57 lbf·ft, from 3.32 to 5.83 lbf·ft)',
    ],
    // TM 5-3895-382-24: 24 to 32 N.m.
    [
      'torque of the starter battery terminal',
      '28 N·m, from 24 to 32 N·m (20.7 lbf·ft, from 17.7 to 23.6 lbf·ft)',
    ],
    ['proof load of an M10 8.8 bolt', '33.6 kN'],
    // The workshop trade table's AGM column has 50 % at 12.40 V.
    ['charge at 12.4 V agm', '50%, from 40 to 65%'],
    ['how full is a battery at 12.45 V', '75%, from 65 to 85%'],
    // TM 5-1185 and a battery maker's table: 1.225 is 75 % of a battery filled to 1.265.
    ['charge at 1.225', '75%, from 54 to 85%'],
    // Army correspondence subcourse OD1002, lesson 2.
    ['freezing point at 1.150', '-15 °C (5 °F)'],
    ['when does electrolyte of 1100 freeze', '-7.2 °C (19 °F)'],
    // A vehicle maker's service manual: 1.250 at 90 degF is 1.254.
    ['gravity 1.250 at 90 °F', '1.254 at 27 °C (80 °F)'],
    // A vehicle maker's service manual rounds down to 10 A.
    ['load-test current of 680 A EN', '340 A, for 15 s'],
    ['load-test current of 625 A SAE', '310 A, for 15 s'],
    ['load-test current of 60 Ah', '180 A, for 15 s'],
    // Common practice: alike within 10 %. Marine training text: times 1.3.
    ['600 A SAE in EN', '600 A, from 540 to 660 A EN'],
    ['600 CCA to MCA', '780 A, from 702 to 858 A MCA'],
    ['600 A CCA to MCA', '780 A, from 702 to 858 A MCA'],
    // TM 9-6115-464-12, Table 4-5, halved.
    ['regulated voltage at 27 °C', '14 to 14.3 V'],
    ['regulated voltage at 27 °C 24 V system', '28 to 28.6 V'],
    ['charging voltage', '13.5 to 14.8 V'],
    // ISO 8820-3: 200 % opens within 5 s (reported), not before 0.15 s (from memory).
    [
      'fuse 10 A at 20 A opens when',
      'not before 0.15 s, and 5 s at the latest, at 200% of its rating',
    ],
    [
      'when does 20 A blow a 10 A fuse',
      'not before 0.15 s, and 5 s at the latest, at 200% of its rating',
    ],
    [
      '10 A fuse at 11 A',
      'It need not open at all: at 110% of its rating it may carry the current for ever.',
    ],
    // Trade pages of blade-fuse colours.
    ['colour of a 15 A fuse', 'blue'],
    ['10 A fuse color', 'red'],
    // DIN 72552 as reported.
    ['terminal 50', '50: starter control, straight'],
    ['terminal 87a', '87a: relay contact that opens when the relay pulls in'],
    ['terminal B+', 'B+: generator output, to the positive of the battery'],
    // Data sheet of a mini relay: 85 Ohm.
    ['coil 85 Ohm mini relay', 'A sound coil. It says nothing of the contacts.'],
    ['85 Ω mini relay coil', 'A sound coil. It says nothing of the contacts.'],
    ['relay coil mini overload', 'An open coil.'],
    ['relay contacts 0.05 V at 10 A', 'Sound contacts.'],
    ['hold-in winding 14 A at 10 V', 'A sound winding.'],
    // Trade article on ripple; common practice that 0.5 V at the battery means a diode.
    ['0.6 V ripple at the battery', 'A diode fault is likely.'],
    ['30 mV ripple at the battery', 'Fine.'],
    ['key-off drain 80 mA after 70 min', 'To be looked into: above 50 mA.'],
    [
      'key-off drain 320 mA after 10 min',
      'Wait 20 min more with the doors shut: modules may still be awake.',
    ],
    // Four strokes: 4 cylinders at 150 a minute compress 5 times a second.
    ['150 rpm 4 cylinders', '5 compressions a second'],
    ['four cylinders 150 rpm', '5 compressions a second'],
    ['6 Hz 4 cylinders', '180 rpm'],
    // NIST SP 811.
    ['12 lbf·ft in N·m', '16.3 N·m'],
    ['20 °F in °C', '-6.67 °C'],
  ])('%s: %s', (question, line) => beginsWith(question, line));
});

describe('a question is answered with what was worked out', () => {
  test.each([
    ['drop of 5 ft of 2 AWG at 200 A at 80 °C', '0.217 V, from 0.206 to 0.217 V'],
    ['drop of 5 ft of 2/0 awg at 200 a', '0.086 V, from 0.082 to 0.086 V'],
    ['drop of 1.5 m of 2 × 25 mm² at 200 A', '0.117 V, from 0.111 to 0.117 V'],
    ['cable for 4.5 m at 250 A and 0.3 V', '95 mm², or 3/0 AWG'],
    [
      'cable for 45 m at 500 A and 0.1 V',
      'No usual battery cable is enough: even 4/0 AWG drops 4.11 V.',
    ],
    [
      '0.44 V over 1.5 m of 25 mm² at 200 A',
      'A connection: the cable alone does not explain the drop.',
    ],
    ['0.20 V over 1.5 m of 25 mm² at 200 A', 'The cable: its own resistance explains the drop.'],
    ['resistance of 1.5 m of 25 mm²', '1.14 mΩ, from 1.11 to 1.17 mΩ'],
    ['is 12.45 V at least 12.4', 'Too close to call: 85% that it is at least 12.4 V'],
    ['is 12.45 V at least 12.4, meter 1% + 3', 'Too close to call: 71% that it is at least 12.4 V'],
    ['is 12.45 V ≥ 12.4 with a fine meter', 'Yes: 99% that it is at least 12.4 V'],
    ['is 0.44 V below 300 mV', 'No: 1% that it is at most 300 mV'],
    ['is 12.5 V between 12.3 and 12.7', 'Yes: 99% that it is between 12.3 V and 12.7 V'],
    ['how exact is 12.45 V', '±0.095 V, 19 times out of 20'],
    ['limit drop.positive 150 A petrol 2.0 L 20 °C', '0.247 to 0.353 V'],
    ['drop positive limit 150 A boot', '0.371 to 0.529 V'],
    ['limit battery.rest.full flooded', '12.4 V'],
    ['limit battery.tester.poor 600 A SAE', '360 A'],
    ['resistance from 10.2 V and 12.6 V at 160 A', '15 mΩ, from 13.1 to 17 mΩ'],
    ['resistance from 12.6 V and 10.2 V at 160 A', '15 mΩ, from 13.1 to 17 mΩ'],
    ['10.2 V cranking, 12.6 V rest, 160 A, resistance', '15 mΩ, from 13.1 to 17 mΩ'],
    [
      'resistance from 12.6 V and 11.9 V with headlamps (two H7) and rear heater',
      '29.7 mΩ, from 15.5 to 49.9 mΩ',
    ],
    [
      'resistance rest 12.1 V loaded 12.3 V 20 A',
      'Cannot tell: the voltage rises under load. One of both was read wrongly, or something charges.',
    ],
    ['2 x H7, rear heater, current at 12.2 V', '24 A, from 19.7 to 28.8 A'],
    ['current of two H7 and rear heater at 12.2 V', '24 A, from 19.7 to 28.8 A'],
    ['50 mA from 60 Ah at -10 °C', '20 days, from 11.6 to 31.2 days, until it no longer cranks'],
    ['50 mA from 60 Ah at -40 °C', '0 days: not even a full battery cranks at that temperature.'],
    ['fuse 15 A mini 0.4 mV', '0.088 A, from 0.029 to 0.159 A'],
    [
      'load-test minimum at -25 °C',
      'None: a battery is not load-tested below -18 °C (-0.4 °F). Warm it first.',
    ],
    ['600 A DIN in EN', 'No figure from DIN to EN: the published factors contradict each other.'],
  ])('%s: %s', (question, line) => beginsWith(question, line));

  test('what a reading should show is that of the package', () => {
    expect(said('expected crank current petrol 1.6 L -10 °C')).toMatch(
      /^\d{3} A, from \d{3} to \d{3} A\n/,
    );
    expect(said('expected battery.crank petrol 2.0 L 0 °C')).toMatch(/^[\d.]+ V, from /);
    expect(said('expected drop.positive petrol 2.0 L 150 A')).toMatch(/^0\.\d+ V, from /);
  });

  test('a colder start is expected to take more current', () => {
    const amps = (question: string): number => Number.parseFloat(said(question));
    expect(amps('expected crank current petrol 1.6 L -10 °C')).toBeGreaterThan(
      amps('expected crank current petrol 1.6 L 20 °C'),
    );
  });

  test('an attempt to start tells what happens, and with the engine turning the figures', () => {
    const answer = said('start attempt petrol 1.6 L 20 °C rest 12.6 V');
    expect(answer).toMatch(/^It turns\.$/m);
    expect(answer).toMatch(/^speed: \d+ rpm, from \d+ to \d+ rpm$/m);
    expect(answer).toMatch(/^current: \d+ A, from \d+ to \d+ A$/m);
    expect(answer).toMatch(/^at the battery’s posts: [\d.]+ V/m);
    expect(answer).toMatch(/^lost on the ground side: [\d.]+ V/m);
  });

  test.each([
    ['start attempt petrol 1.6 L 20 °C rest 11.9 V', 'It clicks rapidly'],
    ['start attempt petrol 1.6 L 20 °C rest 5 V', 'Nothing is heard at the starter'],
  ])('%s: %s, without figures of steady cranking', (question, outcome) => {
    const answer = said(question);
    expect(answer).toContain(outcome);
    expect(answer).not.toContain('speed:');
    expect(answer).not.toContain('current:');
  });
});

describe('an answer says what it rests on', () => {
  test.each([
    ['torque of an M8 8.8 bolt', 'gives way to the vehicle’s own manual'],
    ['torque of an M8 8.8 bolt', 'not known whether the thread is dry or oiled'],
    ['torque of an M8 copper stud', 'Caution: a soft stud strips'],
    ['torque of an M8 copper stud', 'source: common practice, no source (nuts on copper'],
    ['torque of the starter battery terminal', 'Caution: a soft stud strips'],
    ['torque of an M6 battery insert', 'Caution: an insert of lead or brass'],
    ['drop of 1.5 m of 25 mm² at 200 A', 'assumed: flexible (class 5) copper; the cable at 20 °C'],
    ['drop of 1.5 m of 25 mm² at 200 A', 'source: computed (IEC 60228'],
    ['load-test minimum at -7 °C', 'source: published (load-test table'],
    ['fuse 10 A at 20 A opens when', 'source: published, as another text reports it (ISO 8820-3'],
    ['fuse 10 A at 20 A opens when', 'source: from memory, not looked up (ISO 8820-3'],
    ['terminal B+', 'source: from memory, not looked up (DIN 72552)'],
    ['is 12.45 V at least 12.4', 'a meter of usual accuracy, ±(0.5% + 2 digits)'],
    ['charge at 12.45 V', 'assumed: a flooded battery; rested'],
    ['0.6 V ripple at the battery', 'Only an indication, unless the meter gives the true'],
    ['limit drop.positive 150 A', 'not said, and would change the figure: where the battery sits'],
    [
      'drop of 1.5 m of 25 mm² at 200 A, blue',
      'left out, not understood or of no effect here: blue',
    ],
    ['torque of an M8 8.8 bolt at 20 °C', 'left out, not understood or of no effect here: 20 °C'],
  ])('%s: … %s …', (question, part) => {
    expect(said(question)).toContain(part);
  });
});

describe('what cannot be answered is told with its reason', () => {
  test.each([
    ['hello', 'not understood'],
    ['12', 'not understood; 12 has no unit'],
    [
      'drop',
      'a length (as in 1.5 m or 5 ft) is missing; a cable size (as in 25 mm² or 2 AWG) is missing; a current (as in 200 A) is missing',
    ],
    [
      'drop at 200 A',
      'a length (as in 1.5 m or 5 ft) is missing; a cable size (as in 25 mm² or 2 AWG) is missing',
    ],
    [
      'drop of 1.5 m of 25 at 200 A',
      'a cable size (as in 25 mm² or 2 AWG) is missing; 25 has no unit',
    ],
    [
      'drop of 5 furlongs of 2 AWG at 200 A',
      'a length (as in 1.5 m or 5 ft) is missing; “furlongs” is no unit known here',
    ],
    ['drop of 1.5 m and 3 m of 25 mm² at 200 A', 'two lengths, 1.5 m and 3 m: give one'],
    ['drop of 1.5 m of 25 mm² 2 AWG at 200 A', 'two sizes, 25 mm² and 2 AWG: give one'],
    [
      'drop of -1.5 m of 25 mm² at 200 A',
      '-1.5 m cannot be right for a length: it goes from 0.01 to 100 m',
    ],
    [
      'drop of 1.5 m of 25 mm² at 200 A at 500 °C',
      '500 °C cannot be right for a temperature: it goes from -60 to 150 °C',
    ],
    [
      'drop of 1.5 m of 99 AWG at 200 A',
      '99 AWG cannot be right for a gauge: it goes from 4/0 to 40 AWG',
    ],
    ['drop of 1.5 m of 25 mm² at 200 A 3', '3 has no unit'],
    ['cable for 4.5 m at 250 A', 'the drop allowed (as in 0.3 V) is missing'],
    ['load-test minimum at minus twenty', '“minus”: write numbers in figures'],
    ['load-test minimum at 20 degrees', '20 degrees: °C or °F?'],
    [
      'torque of an M8 bolt',
      'the property class (8.8, 10.9 or 12.9, as the head of the bolt says) is missing',
    ],
    [
      'torque of an M10 4.8 bolt',
      '4.8 is no property class known here: 8.8, 10.9 or 12.9, as the head of the bolt says',
    ],
    [
      'torque of an M7 8.8 bolt',
      'M7: there are figures for M5, M6, M8, M10, M12, M14 and M16 only',
    ],
    ['torque of an M8 stud', 'what the stud is of (copper, brass, or a battery insert) is missing'],
    ['torque of an M12 copper stud', 'M12: there are figures for M6, M8 and M10 only'],
    ['charge at 12.4.5 V', '12.4.5 is no number'],
    [
      'charge at 124 V',
      '124 V cannot be right for a rest voltage or a specific gravity: it goes from 1 to 16 V',
    ],
    ['freezing point at 2', '2 cannot be right for a specific gravity: it goes from 1 to 1.4'],
    ['1/2 m of 25 mm² at 200 A', '1/2: write it with a decimal point, as 0.5'],
    ['is 12.45 V at least', 'what 12.45 V is held against (as in at least 12.4 V) is missing'],
    [
      'is 12.45 V at least 12.4 A',
      'what 12.45 V is held against (as in at least 12.4 V) is missing',
    ],
    [
      'is 12.45 at least 12.4',
      'the unit of the reading (as in 12.45 V) is missing; 12.45 has no unit; 12.4 has no unit',
    ],
    ['limit drop', 'which limit is meant: drop.clamp, drop.positive or drop.ground?'],
    ['limit of bananas', 'the name of the limit is missing, or there is none of that name'],
    [
      'limit battery.tester.poor',
      'battery.tester.poor needs the battery’s label (as in 600 A SAE)',
    ],
    ['expected battery.load-test', 'battery.load-test needs the battery’s label (as in 600 A SAE)'],
    [
      'resistance from 12.6 V at 160 A',
      'the second voltage is missing: at rest and under load are needed',
    ],
    [
      'resistance from 12.6 V and 10.2 V',
      'the load (as in 160 A, or headlamps (two H7) and rear heater) is missing',
    ],
    ['resistance from 12.6 V and 11.9 V with headlamps', 'which lamps (as in two H7) is missing'],
    ['600 A SAE', 'the other standard (as in 600 A SAE in EN) is missing'],
    ['load-test current', 'the label (as in 680 A EN, or 60 Ah) is missing'],
    ['fuse', 'the fuse’s rating (as in 15 A) is missing'],
    ['colour of a 13 A fuse', 'no blade fuse of 13 A is in the table: 1, 2, 3, 5, 7.5, 10 to 40 A'],
    ['85 MOhm coil', '85 MOhm: write mΩ for milliohms; megohms are not asked for here'],
    ['terminal 99', '99 is no mark known here (30, 15, 50, 85, 86, 87, 87a, 31, B+ …)'],
    ['150 rpm', 'the number of cylinders (as in 4 cylinders) is missing'],
    ['150 rpm 40 cylinders', '40 cylinders cannot be right: engines here have 1 to 16 cylinders'],
    ['start attempt petrol', 'a displacement (as in 1.6 L) is missing'],
    ['12 V in N·m', '12 V cannot be turned into N·m'],
    ['x'.repeat(301), 'the question is longer than 300 characters'],
  ])('%s: %s', (question, reason) => {
    const reply = answerQuestion(question);
    const told = reply.type === 'unanswered' ? reply : { reasons: [], examples: [] };
    expect(told.reasons.join('; ')).toBe(reason);
    expect(told.examples.length).toBeGreaterThan(1);
  });

  test('it is told what can be asked instead', () => {
    const lines = layOutReply('torque of an M8 bolt', answerQuestion('torque of an M8 bolt'));
    expect(lines.join('\n')).toMatch(/^numbers: the property class .*/);
    expect(lines).toContain('  torque of an M8 8.8 bolt');
  });

  test('the place of what is wrong is marked', () => {
    const lines = layOutReply('charge at 124 V', answerQuestion('charge at 124 V'));
    const at = lines.indexOf('  charge at 124 V');
    expect(lines[at + 1]).toBe('            ^^^^^');
  });

  test('whatever is typed is answered in lines that fit a terminal', () => {
    const words = [
      'is',
      'at',
      'drop',
      'limit',
      'torque',
      'M8',
      '8.8',
      '200 A',
      '1.5 m',
      '-7 °C',
      '25 mm²',
      '12.4 V',
      'fuse',
      'rest',
      'expected',
      '0',
      '1e9',
      'terminal',
      '/',
      '+',
    ];
    const question = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.array(fc.constantFrom(...words), { maxLength: 8 }).map((all) => all.join(' ')),
    );
    fc.assert(
      fc.property(question, (text) => {
        const lines = layOutReply(text, answerQuestion(text));
        expect(lines.length).toBeGreaterThan(0);
        expect(lines.filter((line) => /\p{Cc}/u.test(line))).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });
});

test('every example of the help is answered', () => {
  const examples = layOutHelp()
    .filter((line) => /^ {2}\S/.test(line))
    .map((line) => line.trim().replace('npm run -s numbers -- ', ''));
  expect(examples.length).toBeGreaterThan(30);
  expect(examples.filter((example) => answerQuestion(example).type !== 'answered')).toEqual([]);
});

test('every limit is listed, and answered or told what it needs', () => {
  const names = said('limits')
    .split('\n')
    .flatMap((line) => (line.includes(': ') && /^[a-z]/.test(line) ? line.split(': ', 1) : []));
  expect(names.length).toBeGreaterThan(30);
  const given = '600 A SAE petrol 2.0 L 20 °C rest 12.5 V crank 10.2 V 160 A';
  for (const name of names) {
    const reply = answerQuestion(`limit ${name} ${given}`);
    // The torque of a thread is a question of its own, which is what is offered.
    if (reply.type === 'unanswered') {
      expect(name).toMatch(/^torque\./);
      expect(reply.reasons.join(' ')).toMatch(/ask for the torque of an M\d/);
    }
  }
});

describe('the program', () => {
  function run(...args: readonly string[]) {
    return spawnSync(process.execPath, [program, ...args], { encoding: 'utf8' });
  }

  test('prints the answer and exits 0', () => {
    const { status, stdout, stderr } = run(
      'drop',
      'of',
      '1.5',
      'm',
      'of',
      '25',
      'mm²',
      'at',
      '200',
      'A',
    );
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toMatch(/^0\.234 V, from 0\.222 to 0\.234 V\n/);
  });

  test('tells on standard error what is missing and exits 2', () => {
    const { status, stdout, stderr } = run('torque of an M8 bolt');
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain('the property class');
    expect(stderr.split('\n').filter((line) => line.trim().startsWith('at '))).toEqual([]);
  });

  test.each([[[]], [['--help']]])('lists what can be asked with %j', (args) => {
    const { status, stdout } = run(...args);
    expect(status).toBe(0);
    expect(stdout).toContain('Bolts and studs\n');
    expect(stdout).toContain('  torque of an M8 8.8 bolt\n');
  });
});
