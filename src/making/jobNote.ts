import { curvesBox } from '../../models/curves/curvesBox.ts';
import { massG, surfaceFigures } from '../../models/surface/figures.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { fixed } from '../report/said.ts';
import { type CautionId, cautionFor } from '../trade/cautions.ts';
import { TOLERANCES } from '../trade/tolerances.ts';
import { toleranceText } from '../trade/toleranceText.ts';
import { allowanceText } from './allowanceText.ts';
import { holeCuts } from './holes.ts';
import type { Order } from './order.ts';
import { orderFor } from './orderFor.ts';

/** One part of a page. */
export interface NoteSection {
  readonly title: string;
  readonly lines: readonly string[];
  /** Set apart from the others: what can hurt. */
  readonly standsOut?: true;
}

/** The job note for a CNC shop: plain words, one page. Sizes in mm. */
export interface JobNote {
  readonly title: string;
  readonly sections: readonly NoteSection[];
}

/** Everything that a shop would else have to ask back about a design and an order. */
export function jobNote(accepted: AcceptedDesign, asked: Order): JobNote {
  const order = orderFor(accepted.design, asked);
  return {
    title: accepted.design.guitar.name,
    sections: [
      { title: 'Order', lines: orderLines(accepted, order) },
      { title: 'Material', lines: materialLines(accepted, order) },
      { title: 'The solid', lines: solidLines(accepted, order) },
      { title: 'Which face first', lines: faceLines(accepted, order) },
      { title: 'Tolerances that matter, and why', lines: toleranceLines(accepted, order) },
      { title: 'Please don’t', lines: dontLines(accepted, order) },
      { title: 'Remarks', lines: remarkLines(order) },
      { title: 'Care', lines: careLines(accepted), standsOut: true },
    ],
  };
}

function orderLines({ design }: AcceptedDesign, { quantity, deadline }: Order): readonly string[] {
  const hand = design.guitar.hand === 'left' ? 'left-handed' : 'right-handed';
  return [
    `Bridge for a ${hand} steel-string guitar: ${quantity} ${quantity === 1 ? 'piece' : 'pieces'}.`,
    `Wanted by: ${deadline === '' ? 'no day given' : deadline}.`,
  ];
}

function materialLines({ design, curves }: AcceptedDesign, order: Order): readonly string[] {
  const { timber } = design;
  const { holes } = order;
  const [x0, y0, z0, x1, y1, z1] = curvesBox(curves);
  const { volumeMm3 } = surfaceFigures(curves, holes);
  const size = [x1 - x0, y1 - y0, z1 - z0].map((one) => fixed(one, 2)).join(' × ');
  return [
    `${timber.name}, about ${fixed(timber.density, 0)} kg/m³, dry, straight-grained, without knots. Grain along X, the length.`,
    `Finished size ${size}; finished mass about ${fixed(massG(volumeMm3, timber.density), 1)} g with holes as ${holes}.`,
  ];
}

function solidLines({ design, curves: { edge } }: AcceptedDesign, order: Order): readonly string[] {
  const { sandingAllowance } = order;
  const { pins } = design;
  const again = [
    ...(edge.kind === 'none' ? [] : ['the edge']),
    ...(pins.bevel === 'cut' ? ['the holes’ bevels'] : []),
  ].join(' and ');
  const drilled = `pin holes are parallel, ${fixed(pins.drill, 2)} across${holeCuts(design).travel > 0 ? '' : ', left as drilled; not reamed'}`;
  return [
    `Millimetres. X along the bridge to the ${design.guitar.hand === 'left' ? 'bass' : 'treble'} side, Y toward the nut, Z out of the soundboard; z\u00a0=\u00a00 where the glue face stands under the middle of the slot.`,
    order.holes === 'reamed'
      ? `As reamed: pin holes taper by ${pins.taper}° in all, ${fixed(pins.mouth, 2)} across at the surface, drilled ${fixed(pins.drill, 2)} before.`
      : `As drilled: ${drilled}.`,
    ...(sandingAllowance > 0
      ? [
          `With ${allowanceText(sandingAllowance)} for sanding on the top: crown, blends and wings stand that much higher, upright. No other face has any: sides, glue face, slot and holes are to size.`,
          `The slot’s floor and the holes stand where the finished bridge has them, so that sanding the top down brings their sizes out.${again === '' ? '' : ` Cut ${again} again after sanding.`}`,
          'Drawing, dimension table, design file and sizes in this note are of the finished bridge, unless said otherwise.',
        ]
      : ['Without an allowance for sanding: faces are as finished.']),
  ];
}

function faceLines({ design, curves }: AcceptedDesign, { holes }: Order): readonly string[] {
  const after = [
    ...(holes === 'reamed' ? ['taper'] : []),
    ...(design.pins.bevel === 'cut' ? ['bevel'] : []),
  ].join(' and ');
  const face =
    curves.underside.shape === 'flat'
      ? 'First the glue face, flat'
      : `First the glue face, hollow to R ${fixed(curves.underside.radius, 0)} (${curves.underside.shape === 'sphere' ? 'a sphere' : 'a cylinder along Y'}), with a flat rim of waste round it`;
  return [
    `${face}, and in the same clamping the first and the last pin hole drilled right through.`,
    `Turn it over onto pegs in these two holes, pegs shorter than the holes. Then, in one clamping: slot, the other holes, top${after === '' ? '' : `, ${after} of all the holes from the top, these two too`}, edge, and the outline last.`,
    'The slot’s depth is from the finished crown, in the middle of the slot.',
  ];
}

function toleranceLines({ design, curves }: AcceptedDesign, order: Order): readonly string[] {
  const { saddle, top, pins } = design;
  const off = (of: keyof typeof TOLERANCES) => toleranceText(TOLERANCES[of]);
  const a = order.sandingAllowance;
  const unsanded = (size: number) => (a > 0 ? ` finished, ${fixed(size, 2)} before sanding,` : '');
  return [
    'All others: ISO 2768-m.',
    `Slot’s width ${fixed(saddle.slotWidth, 2)} ${off('slot-width')}, by a gauge: a saddle must slide in by hand and not lean. Ends ${curves.slot.roundEnds ? `round, R ${fixed(saddle.slotWidth / 2, 2)}` : 'open'}.`,
    `Slot’s depth ${fixed(saddle.depth, 2)}${unsanded(saddle.depth + a / Math.cos(curves.slot.tilt))} ${off('slot-depth')} along its walls, in the middle, from the crown: half of an error is in the action.`,
    `Slot’s place ${off('slot-place')} and angle ${fixed(saddle.angle, 2)}° ${off('slot-angle')}°${saddle.tilt > 0 ? `, its lean toward the pins ${fixed(saddle.tilt, 1)}°` : ''}, to the holes and the outline: the guitar’s intonation.`,
    `Thickness in the middle ${fixed(top.thickness, 2)}${unsanded(top.thickness + a)} ${off('crown')}: the height of the strings.`,
    order.holes === 'reamed'
      ? `Pin holes ${mouthText(design, a > 0)}, their places ${off('pin-place')}: pins must sit alike, and are seen at a glance.`
      : `Pin holes ${fixed(pins.drill, 2)} ${off('pin-hole')}, their places ${off('pin-place')}: seen at a glance, and ${holeCuts(design).travel > 0 ? 'reamed later' : 'left as drilled'}.`,
  ];
}

/** What a reamed hole measures where it can be measured: at the surface, or inside the ring that a bevel leaves. */
function mouthText({ pins }: AcceptedDesign['design'], sanded: boolean): string {
  const { inside } = holeCuts({ pins });
  const off = toleranceText(TOLERANCES.mouth);
  const surface = `the${sanded ? ' finished' : ''} surface`;
  return inside === undefined
    ? `${fixed(pins.mouth, 2)} ${off} at ${surface}`
    : `${fixed(inside, 2)} ${off} across inside the bevel’s ring (the taper carried up to ${surface} has ${fixed(pins.mouth, 2)})`;
}

function dontLines({ design }: AcceptedDesign, order: Order): readonly string[] {
  return [
    order.holes === 'reamed'
      ? 'Don’t ream deeper than drawn: the holes are fitted to their pins at set-up.'
      : `Don’t ream or taper the pin holes: ${holeCuts(design).travel > 0 ? 'they are fitted to their pins at set-up' : 'they stay parallel, as drilled'}.`,
    'Don’t take the slot’s width from the cutter: leave it to the gauge.',
    'Don’t round the slot’s floor, nor its upper edges: a flat-ended cutter, and the edges left sharp.',
    'Don’t sand, seal, oil or wax the glue face, and don’t break its edge.',
    'Don’t turn the grain, and don’t put in another timber without asking.',
  ];
}

function remarkLines({ remarks }: Order): readonly string[] {
  const lines = remarks.split('\n').map((line) => line.trimEnd());
  return remarks.trim() === '' ? ['None.'] : lines;
}

/** What can hurt where wood is milled. */
const CARE: readonly CautionId[] = ['dust', 'allergy', 'listed', 'machines', 'strength', 'first'];

function careLines({ design }: AcceptedDesign): readonly string[] {
  return CARE.map((id) => {
    const { title, text } = cautionFor(id, design.timber.name);
    return `${title}: ${text}`;
  });
}
