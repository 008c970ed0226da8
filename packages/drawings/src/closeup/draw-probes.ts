import type { Probes } from '../circuit/draw-circuit.ts';
import { drawLegend, type LegendRow } from '../svg/legend.ts';
import { element } from '../svg/element.ts';
import type { Teller } from '@keyturn/language';
import { frame, margin, penFor, pictureWidth, type DrawingOptions } from '../svg/picture.ts';
import {
  heldLead,
  leadTag,
  leadTagWidth,
  ordinalTag,
  ordinalTagWidth,
  type Drawn,
  type Lead,
} from '../svg/tags.ts';
import { batteryScene, pairScene } from './battery-scene.ts';
import { relayScene } from './relay-scene.ts';
import type { Hold, HoldBoth, Scene } from './scene.ts';
import { starterScene } from './starter-scene.ts';

const scenes: readonly Scene[] = [batteryScene, pairScene, starterScene, relayScene];
const leads: readonly Lead[] = ['red', 'black'];

/** Between one scene and the next. */
const sceneGap = 14;

/**
 * The places of the present check's two leads, close to: the parts that they belong to, large, with
 * each lead held to its place. What to send a phone together with the question.
 *
 * Throws `RangeError` for a place that no scene has. Pure; deterministic.
 */
export function drawProbes(probes: Probes, options: DrawingOptions): string {
  const pen = penFor(options);
  const { speaker } = options;
  const drawn = { pen, speaker };
  const shown = [...new Set(leads.map((lead) => sceneOf(probes[lead])))];
  const shapes: string[] = [];
  let top = 0;
  for (const scene of shown) {
    const held = leads.filter((lead) => sceneOf(probes[lead]) === scene);
    shapes.push(
      element('g', { transform: `translate(0 ${top})` }, [
        ...scene.draw(pen, speaker),
        ...held.flatMap((lead) => drawHold(lead, scene.places[probes[lead]], drawn)),
      ]),
    );
    top += scene.height + sceneGap;
    shapes.push(
      pen.line(
        [
          [margin, top - sceneGap / 2],
          [pictureWidth - margin, top - sceneGap / 2],
        ],
        {
          'stroke-dasharray': '1 6',
        },
      ),
    );
  }
  const rows = leads.map((lead) => legendRow(lead, probes[lead], drawn));
  const legend = drawLegend(rows, top + 2, pen);
  return frame(
    {
      title: speaker.drawing('probes'),
      description: leads
        .map(
          (lead) => `${signText(lead, probes[lead], speaker)}: ${speaker.probePlace(probes[lead])}`,
        )
        .join('\n'),
      height: legend.end + 6,
      shapes: [...shapes, ...legend.shapes],
    },
    pen,
    options,
  );
}

function sceneOf(place: string): Scene {
  const scene = scenes.find(({ places }) => Object.hasOwn(places, place));
  if (scene !== undefined) return scene;
  const known = scenes.flatMap(({ places }) => Object.keys(places)).join(', ');
  throw new RangeError(`no scene has a place "${place}"; there are ${known}`);
}

function isBoth(hold: Hold | HoldBoth): hold is HoldBoth {
  return 'says' in hold;
}

function drawHold(lead: Lead, hold: Hold | HoldBoth | undefined, drawn: Drawn): string[] {
  if (hold === undefined) return [];
  if (!isBoth(hold)) return heldLead(lead, hold, drawn);
  return [
    ...leads.flatMap((each) => heldLead(each, hold[each], drawn)),
    ...ordinalTag(hold.says, hold.sign, drawn),
  ];
}

/** What the sign of a place says: the colour of its lead, or which of two batteries it is. */
function signText(lead: Lead, place: string, speaker: Teller): string {
  const hold = sceneOf(place).places[place];
  return speaker.drawing(hold !== undefined && isBoth(hold) ? hold.says : lead);
}

function legendRow(lead: Lead, place: string, drawn: Drawn): LegendRow {
  const { speaker } = drawn;
  const hold = sceneOf(place).places[place];
  return {
    text: speaker.probePlace(place),
    sign:
      hold !== undefined && isBoth(hold)
        ? {
            width: ordinalTagWidth(hold.says, speaker),
            draw: (middle) => ordinalTag(hold.says, middle, drawn),
          }
        : {
            width: leadTagWidth(lead, speaker),
            draw: (middle) => leadTag(lead, middle, drawn),
          },
  };
}
