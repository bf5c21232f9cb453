import type { Curves, Holes } from '../../models/curves/curves.ts';
import { curvesBox } from '../../models/curves/curvesBox.ts';
import { holeRadius } from '../../models/curves/holeRadius.ts';
import type { Chain, Point, Segment } from '../../models/curves/segment.ts';
import { slotToPart } from '../../models/curves/slot.ts';
import { undersideHeight } from '../../models/curves/underside.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import type { Design } from '../design/design.ts';
import { isTapered } from '../sheets/views/isTapered.ts';
import { decimal } from './decimal.ts';
import { type DxfEntity, type DxfLayer, writeDxf } from './dxf.ts';

/** How far centre lines reach beyond what they stand for, mm. */
const BEYOND = 5;

/**
 * A bridge in plan as a DXF of release 12, mm, seen from above: x to the treble side of a right-handed guitar, y
 * toward the nut, the origin where the guitar's centre line crosses the middle of the saddle slot.
 *
 * - `OUTLINE` the outer edge, one closed polyline, counter-clockwise
 * - `SLOT` the slot in its true size, as seen along its walls; of a slot that leans back, at the place where its middle
 *   meets the level of the crown's top. An open slot is drawn to where its cut ends, beyond the wood.
 * - `PINS` each hole where it is narrowest; `PIN_MOUTHS` where it meets the top over its axis, if it is wider there
 *   (bevelled or reamed); `PIN_CENTRES` a point for each
 * - `CENTRE` the guitar's centre line, the slot's, and one across each pin
 *
 * What of the holes can't be seen in plan, a remark says: taper and mouth, and that a bevel has taken the mouth away.
 *
 * @param title stands in a remark at the head
 */
export function bridgeDxf(
  { curves, design }: Pick<AcceptedDesign, 'curves' | 'design'>,
  holes: Holes,
  title: string,
): string {
  const { outline, slot, pins, underside } = curves;
  const bores = pins.map(({ at, outline: cut, top }) => {
    const narrowest = holeRadius(cut[holes], undersideHeight(underside, at[0], at[1]));
    return { at, narrowest, mouth: holeRadius(cut[holes], top) };
  });
  const circle = (centre: Point, radius: number): DxfEntity => ({ kind: 'circle', centre, radius });
  const layers: readonly DxfLayer[] = [
    solid('OUTLINE', 7, [{ kind: 'chain', chain: outline, closed: true }]),
    solid('SLOT', 1, [{ kind: 'chain', chain: slotInPlan(curves), closed: true }]),
    solid(
      'PINS',
      5,
      bores.map(({ at, narrowest }) => circle(at, narrowest)),
    ),
    solid(
      'PIN_MOUTHS',
      4,
      bores.flatMap(({ at, narrowest, mouth }) => (mouth > narrowest ? [circle(at, mouth)] : [])),
    ),
    solid(
      'PIN_CENTRES',
      5,
      pins.map(({ at }) => ({ kind: 'point', at })),
    ),
    { name: 'CENTRE', colour: 3, linetype: 'CENTER', entities: centreLines(curves) },
  ];
  const tilt = Math.round(((slot.tilt * 180) / Math.PI) * 1000) / 1000;
  return writeDxf(layers, [
    `Bridge: ${title}`,
    'Axes, seen from above: x to the treble side of a right-handed guitar, y toward the nut, origin on the centre line in the middle of the slot',
    `Pin holes as ${holes}`,
    ...holeRemarks(design, holes, curves.pins),
    tilt === 0
      ? 'SLOT: walls upright'
      : `SLOT: walls lean back by ${tilt} degrees; drawn as seen along them, at the level of the crown's top`,
  ]);
}

/** What the circles of the holes are, diameters in mm. */
function holeRemarks({ pins: p }: Design, holes: Holes, pins: Curves['pins']): readonly string[] {
  const size = (mm: number) => decimal(mm, 3);
  const tapered = pins.some((pin) => isTapered(pin, holes));
  const bored = tapered
    ? `drill ${size(p.drill)} before reaming; taper ${size(p.taper)} deg (included), mouth ${p.mouth.toFixed(2)} at the top`
    : `drill ${size(p.drill)} and left so`;
  const narrowest = tapered ? '; drawn where the reamed hole is narrowest' : '';
  const bevel = `bevel ${size(p.bevelDiameter)}${tapered ? ', which takes the mouth away' : ''}`;
  return [
    `PINS: ${bored}${narrowest}`,
    ...(p.bevel === 'cut'
      ? [`PIN_MOUTHS: ${bevel}`]
      : tapered
        ? [`PIN_MOUTHS: the taper's mouth ${p.mouth.toFixed(2)}`]
        : []),
  ];
}

function solid(name: string, colour: number, entities: readonly DxfEntity[]): DxfLayer {
  return { name, colour, linetype: 'CONTINUOUS', entities };
}

/** The slot's plan turned to where it lies. With no tilt in the frame it keeps its true size, and its arcs stay arcs. */
function slotInPlan({ slot, profile }: Curves): Chain {
  const upright = { ...slot, tilt: 0 };
  const turned = ([u, v]: Point): Point => {
    const [x, y] = slotToPart(upright, profile.thickness, u, v, 0);
    return [x, y];
  };
  return slot.plan.map((s): Segment => {
    const ends = { from: turned(s.from), to: turned(s.to) };
    return s.kind === 'line' ? { ...s, ...ends } : { ...s, ...ends, centre: turned(s.centre) };
  });
}

function centreLines(curves: Curves): readonly DxfEntity[] {
  const { slot, pins } = curves;
  const [, back, , , front] = curvesBox(curves);
  const long = slot.halfLength + BEYOND;
  const along: Point = [long * Math.cos(slot.angle), long * Math.sin(slot.angle)];
  const across = Math.max(...pins.map(({ reach }) => reach)) + BEYOND / 2;
  return [
    { kind: 'line', from: [0, back - BEYOND], to: [0, front + BEYOND] },
    { kind: 'line', from: [-along[0], -along[1]], to: along },
    ...pins.flatMap(({ at: [x, y] }): DxfEntity[] => [
      { kind: 'line', from: [x - across, y], to: [x + across, y] },
      { kind: 'line', from: [x, y - across], to: [x, y + across] },
    ]),
  ];
}
