import {
  attemptStart,
  expectedReading,
  solveCircuit,
  soundCircuit,
  spreadOver,
  type ExpectedReading,
  type LimitContext,
  type SourcedInterval,
  type StartAttempt,
} from '@keyturn/electrics';
import { intervalText } from './figure-text.ts';
import { problem, type Kind } from './kind.ts';
import { takeVehicle, unsaidText } from './vehicle.ts';

const probes: readonly (readonly [ExpectedReading, string])[] = [
  ['crank-current', 'current'],
  ['battery.crank', 'at the battery’s posts'],
  ['drop.positive', 'lost on the positive side'],
  ['drop.contacts', 'lost across the contacts'],
  ['drop.ground', 'lost on the ground side'],
  ['control.signal', 'at the start terminal'],
];

const outcomes: Readonly<Record<StartAttempt['outcome'], string>> = {
  silent: 'Nothing is heard at the starter: its solenoid does not pull in.',
  'rapid-clicking': 'It clicks rapidly: the solenoid pulls in, and lets go as the voltage falls.',
  'single-click': 'One click: the solenoid pulls in, and the engine does not turn.',
  turning: 'It turns.',
};

/** How fast the engine is turned, in /min, where it is. */
function speedOf(context: LimitContext): SourcedInterval | undefined {
  const current = expectedReading('crank-current', context);
  if (current === undefined) return undefined;
  const speed = spreadOver(context, (circuit) => solveCircuit(circuit).speed);
  return { ...speed, unit: '/min', source: current.source };
}

/** What the model of the starting circuit says that happens while start is held. */
export const startAttempt: Kind = {
  group: 'The engine and its starter',
  examples: ['start attempt petrol 1.6 L 20 °C rest 11.9 V'],
  read: (question) => {
    if (!question.says('start attempt', 'attempt', 'try to start')) return undefined;
    question.says('start');
    const vehicle = takeVehicle(question);
    if (vehicle.type === 'problem') return vehicle;
    const { fuel, displacement, cylinders, nominal } = vehicle.context;
    const missing = [
      ...(fuel === undefined && nominal !== 24 ? ['the fuel (petrol or diesel)'] : []),
      ...(displacement === undefined && cylinders === undefined
        ? ['a displacement (as in 1.6 L)']
        : []),
    ];
    if (missing.length > 0) {
      return { ...problem(''), reasons: missing.map((each) => `${each} is missing`) };
    }
    const found = probes.flatMap(([name, words]): (readonly [string, SourcedInterval])[] => {
      const reading = expectedReading(name, vehicle.context);
      return reading === undefined ? [] : [[words, reading]];
    });
    const { outcome } = attemptStart(soundCircuit(vehicle.context, fuel ?? 'diesel'));
    const speed = speedOf(vehicle.context);
    return {
      type: 'answer',
      lines: [
        outcomes[outcome],
        // Without steady cranking there are no steady figures.
        ...(outcome === 'turning'
          ? [
              ...(speed === undefined ? [] : [`speed: ${intervalText(speed)}`]),
              ...found.map(([words, reading]) => `${words}: ${intervalText(reading)}`),
            ]
          : []),
      ],
      assumed: [
        ...unsaidText(vehicle, (context) =>
          JSON.stringify(expectedReading('crank-current', context)),
        ),
        'no fault',
        '5W-30 oil',
      ],
      sources: found.slice(0, 1).map(([, { source }]) => source),
    };
  },
};
