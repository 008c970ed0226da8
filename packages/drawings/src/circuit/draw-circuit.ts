import type { Quantity } from '@keyturn/electrics';
import type { Teller } from '@keyturn/language';
import { drawLegend, type LegendRow } from '../svg/legend.ts';
import { lineHeight, type Pen, type Point } from '../svg/pen.ts';
import { frame, penFor, type DrawingOptions } from '../svg/picture.ts';
import {
  figureHeight,
  figureTag,
  heldLead,
  leadTag,
  leadTagWidth,
  ordinalTag,
  ordinalTagWidth,
  suspectSign,
  type Lead,
} from '../svg/tags.ts';
import { sayFigure } from '../text/figure.ts';
import { wrap } from '../text/wrap.ts';
import {
  gridUnit,
  type CircuitPart,
  type CircuitPlace,
  type CircuitSpot,
  type CircuitVehicle,
  type CircuitWire,
} from './circuit.ts';
import { startCircuit } from './start-circuit.ts';
import { chassis, drawPart, joint, outlineOf } from './symbols.ts';

/** Where the two leads of a meter go, by the ids that a check gives for its probes. */
export interface Probes {
  readonly red: string;
  readonly black: string;
}

/** Something that was measured. */
export interface CircuitFinding {
  readonly check: string;
  readonly quantity: Quantity;
  /** Where; left out where a clamp meter round the ground cable took it. */
  readonly probes?: Probes | undefined;
}

/** What is shown in the circuit. */
export interface CircuitView {
  /** What is known of the vehicle; what is not is drawn as most have it. */
  readonly vehicle?: CircuitVehicle;
  /** The leads of the present check. */
  readonly probes?: Probes | undefined;
  /** The fault under suspicion, with its name. */
  readonly suspect?: { readonly id: string; readonly name: string } | undefined;
  /** What was measured so far, oldest first. */
  readonly found?: readonly CircuitFinding[];
}

/** All that the parts of the picture go by. */
interface Drawing extends CircuitView {
  readonly pen: Pen;
  readonly speaker: Teller;
}

/**
 * The start circuit as one drawing: where the leads of the present check go, what is under
 * suspicion (in an outline, with a question mark), and what was measured so far at its place. A
 * fault that has no place in the circuit is named below and marks nothing.
 *
 * Throws `RangeError` for probes whose place the circuit does not have. Pure; deterministic.
 */
export function drawCircuit(view: CircuitView, options: DrawingOptions): string {
  const pen = penFor(options);
  const { speaker } = options;
  const drawing = { ...view, pen, speaker };
  const { found = [], vehicle = {} } = view;
  const parts = startCircuit.parts.filter(({ on }) => on?.(vehicle) ?? true);
  // Wires run over what is only an outline, and end at what is more.
  const grounds = parts.filter(({ kind }) => kind === 'housing');
  const others = parts.filter(({ kind }) => kind !== 'housing');
  const rows = legendRows(drawing);
  const legend = drawLegend(rows, startCircuit.height * gridUnit, pen);
  return frame(
    {
      title: speaker.drawing('circuit'),
      description: [speaker.drawing('circuitShows'), ...rows.map(({ text }) => text)].join('\n'),
      height: legend.end + 6,
      shapes: [
        ...grounds.flatMap((part) => [...suspectPart(part, drawing), ...drawPart(part, pen)]),
        ...suspectWires(drawing),
        ...startCircuit.wires.map((wire) => drawWire(wire, pen)),
        ...chassis(scaled([37, 7]), pen),
        ...others.flatMap((part) => [...suspectPart(part, drawing), ...drawPart(part, pen)]),
        ...startCircuit.joints.map((at) => joint(scaled(at), pen)),
        ...[...parts, ...startCircuit.wires].flatMap((one) => drawName(one, drawing)),
        ...startCircuit.spots.flatMap((spot) => figuresAt(spot, found, drawing)),
        ...suspectAt(drawing),
        ...leads(drawing),
        ...legend.shapes,
      ],
    },
    pen,
    options,
  );
}

function scaled([x, y]: Point): Point {
  return [x * gridUnit, y * gridUnit];
}

function drawWire({ thick, through }: CircuitWire, pen: Pen): string {
  return pen.line(through.map(scaled), thick === true ? { 'stroke-width': 5 } : {});
}

function drawName(
  { name }: CircuitPart | CircuitWire,
  { pen, speaker, vehicle = {} }: Drawing,
): string[] {
  if (name === undefined) return [];
  const { says, at, width, anchor = 'middle', upwards, inside } = name;
  const size = 12;
  const text = speaker.drawing(typeof says === 'string' ? says : says(vehicle));
  const lines = wrap(text, width * gridUnit, { size, weight: 'regular' });
  const [x, y] = scaled(at);
  const raised = upwards === true ? (lines.length - 1) * size * lineHeight : 0;
  return pen.lines(lines, { x, y: y - raised, anchor, size, rim: inside !== true });
}

function suspects({ suspect }: Drawing): readonly string[] {
  return startCircuit.suspects[suspect?.id ?? '']?.of ?? [];
}

/** An outline along each wire under suspicion. */
function suspectWires(drawing: Drawing): string[] {
  const { pen } = drawing;
  return startCircuit.wires
    .filter(({ id }) => suspects(drawing).includes(id))
    .flatMap(({ through, thick }) => {
      const width = thick === true ? 18 : 14;
      return [
        pen.line(through.map(scaled), { stroke: pen.palette.suspect, 'stroke-width': width }),
        pen.line(through.map(scaled), { stroke: pen.palette.paper, 'stroke-width': width - 5 }),
      ];
    });
}

/** An outline round a part under suspicion. */
function suspectPart(part: CircuitPart, drawing: Drawing): string[] {
  if (!suspects(drawing).includes(part.id)) return [];
  const { x, y, width, height } = outlineOf(part);
  const room = 6;
  const outline = { x: x - room, y: y - room, width: width + 2 * room, height: height + 2 * room };
  const { paper, suspect } = drawing.pen.palette;
  return [
    drawing.pen.shape('rect', {
      ...outline,
      rx: 8,
      fill: paper,
      stroke: suspect,
      'stroke-width': 3,
    }),
  ];
}

function suspectAt({ suspect, pen }: Drawing): string[] {
  const sign = startCircuit.suspects[suspect?.id ?? '']?.sign;
  return sign === undefined ? [] : suspectSign(scaled(sign), pen);
}

function isAt({ between }: CircuitSpot, { probes, quantity }: CircuitFinding): boolean {
  if (between === 'clamp') return probes === undefined && quantity.unit === 'A';
  return probes !== undefined && between[0] === probes.red && between[1] === probes.black;
}

/** The latest figures at a spot, the oldest of them first. */
function figuresAt(
  spot: CircuitSpot,
  found: readonly CircuitFinding[],
  { pen, speaker }: Drawing,
): string[] {
  const here = found.filter((one) => isAt(spot, one)).slice(-spot.most);
  const [x, y] = scaled(spot.at);
  return here.flatMap(({ quantity }, index) =>
    figureTag(sayFigure(quantity, speaker), [x, y + index * (figureHeight + 3)], pen),
  );
}

function placeOf(id: string): CircuitPlace {
  const place = startCircuit.places[id];
  if (place === undefined)
    throw new RangeError(
      `the start circuit has no place "${id}"; it has ${Object.keys(startCircuit.places).join(', ')}`,
    );
  return { ...place, at: scaled(place.at), tag: scaled(place.tag) };
}

function leads({ probes, pen, speaker }: Drawing): string[] {
  if (probes === undefined) return [];
  return (['red', 'black'] as const).flatMap((lead) => {
    const { at, tag, says } = placeOf(probes[lead]);
    return says === undefined
      ? heldLead(lead, { at, tag }, { pen, speaker })
      : ordinalTag(says, tag, { pen, speaker });
  });
}

/** What stands below the circuit: where the leads go, what is suspected, what was measured. */
function legendRows(drawing: Drawing): LegendRow[] {
  const { probes, suspect, found = [], pen, speaker } = drawing;
  const lead = (colour: Lead, id: string): LegendRow => {
    const { says } = placeOf(id);
    const drawn = { pen, speaker };
    return {
      text: speaker.probePlace(id),
      sign:
        says === undefined
          ? {
              width: leadTagWidth(colour, speaker),
              draw: (middle) => leadTag(colour, middle, drawn),
            }
          : {
              width: ordinalTagWidth(says, speaker),
              draw: (middle) => ordinalTag(says, middle, drawn),
            },
    };
  };
  const shown = found.filter((one) => startCircuit.spots.some((spot) => isAt(spot, one)));
  return [
    ...(probes === undefined ? [] : [lead('red', probes.red), lead('black', probes.black)]),
    ...(suspect === undefined
      ? []
      : [
          {
            text: speaker.drawing('suspect', { name: suspect.name }),
            sign: { width: 20, draw: (middle: Point) => suspectSign(middle, pen) },
          },
        ]),
    ...(shown.length === 0 ? [] : [{ text: speaker.drawing('found'), weight: 'bold' as const }]),
    ...shown.map(({ check, quantity }) => ({
      text: speaker.drawing('reading', {
        name: speaker.checkName(check),
        figure: sayFigure(quantity, speaker),
      }),
    })),
  ];
}
