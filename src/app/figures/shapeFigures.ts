import { enclosedArea } from '../../../models/curves/chain.ts';
import type { Curves, Pin } from '../../../models/curves/curves.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { Design } from '../../design/design.ts';
import { type Figure, fixed } from './figure.ts';
import { woodRoundSlot } from './woodRoundSlot.ts';
import { woodUnderSlot } from './woodUnderSlot.ts';

const DERIVED = 'Geometry.';

/** What the curves say of a design: figures that are there at once, before any solid. */
export function shapeFigures(design: Design, curves: Curves): readonly Figure[] {
  return [...topFigures(design, curves), ...saddleFigures(design, curves), ...pinFigures(design, curves)];
}

function topFigures(design: Design, { profile, underside, outline }: Curves): readonly Figure[] {
  const half = design.footprint.length / 2;
  const fall = -undersideHeight(underside, half, 0);
  const follows = design.top.crown === 'follows';
  const conical = follows && design.guitar.fretboard === 'conical';
  return [
    {
      label: 'Crown radius',
      value: fixed(profile.crownRadius, 1),
      unit: 'mm',
      formula: conical
        ? 'R₀ + (R₁ − R₀)·y/y₁, the fretboard’s cone carried on from nut and fret to the saddle, y from the nut'
        : follows
          ? 'the fretboard’s radius'
          : 'set by hand',
      source: conical
        ? `${DERIVED} The crown is copied from the fretboard as a curve, not as a height.`
        : DERIVED,
      path: 'top.crown',
    },
    {
      label: 'Top at the tips',
      value: fixed(topHeight(profile, half), 2),
      unit: 'mm',
      formula: `over the glue plane: wing tip ${fixed(design.top.tip, 2)} less the fall of the glue face there`,
      source: DERIVED,
      path: 'top.tip',
    },
    {
      label: 'Glue face falls',
      value: fixed(fall, 2),
      unit: 'mm',
      formula: 'R − √(R² − x²) from the middle to the tips, R the radius of the underside',
      source: `${DERIVED} The sagitta of a circle.`,
      path: 'underside.shape',
    },
    {
      label: 'Footprint’s area',
      value: fixed(enclosedArea(outline) / 100, 2),
      unit: 'cm²',
      formula: '½∮(x dy − y dx) round the outline, holes not taken off',
      source: `${DERIVED} Green’s theorem, exact for lines and arcs.`,
      path: 'footprint.length',
    },
  ];
}

function saddleFigures(design: Design, curves: Curves): readonly Figure[] {
  const { saddle, guitar } = design;
  const front = woodRoundSlot(curves);
  return [
    {
      label: 'Slot, nut to middle',
      value: fixed(guitar.scale + saddle.setback, 2),
      unit: 'mm',
      formula: 'scale length + set-back at the centre',
      source: 'Set by hand.',
      path: 'saddle.setback',
    },
    {
      label: 'Saddle height',
      value: fixed(saddle.showing + saddle.depth, 2),
      unit: 'mm',
      formula: `showing ${fixed(saddle.showing, 2)} + in the slot ${fixed(saddle.depth, 2)}, at the middle`,
      source: DERIVED,
      path: 'saddle.showing',
    },
    {
      label: 'Wood under the slot',
      value: fixed(woodUnderSlot(curves), 2),
      unit: 'mm',
      formula: 'least height of the slot’s floor over the glue face',
      source: `${DERIVED} Taken every ½ mm along both walls.`,
      path: 'saddle.depth',
    },
    ...(front === undefined
      ? []
      : [
          {
            label: 'Wood round the slot',
            value: fixed(front, 2),
            unit: 'mm',
            formula: 'least distance in plan from the slot, at the top or at its floor, to the outline',
            source: `${DERIVED} Taken every ½ mm round the slot.`,
            path: 'footprint.slotBehindFront',
          },
        ]),
  ];
}

function pinFigures({ pins: p, ...design }: Design, { pins }: Curves): readonly Figure[] {
  const [pin] = pins;
  if (!pin) return [];
  const taper = Math.tan((p.taper * Math.PI) / 360);
  const tapered: readonly Figure[] =
    p.taper === 0
      ? []
      : [
          {
            label: 'Reamed, at the glue face',
            value: fixed(Math.max(p.drill, p.mouth - 2 * taper * design.top.thickness), 2),
            unit: 'mm',
            formula: `mouth ${fixed(p.mouth, 2)} − 2·tan(${p.taper}°/2)·thickness, never less than the drill`,
            source: DERIVED,
            path: 'pins.taper',
          },
        ];
  if (p.bevel === 'none') return tapered;
  return [
    ...tapered,
    {
      label: 'Bevel’s width',
      value: `${fixed(bevelWidth(pin, 'drilled'), 2)}, reamed ${fixed(bevelWidth(pin, 'reamed'), 2)}`,
      unit: 'mm',
      formula:
        'width in plan, from the bevel’s outside to where it meets the hole; reaming takes the inside of it away',
      source: DERIVED,
      path: 'pins.bevelDiameter',
    },
  ];
}

/** Width in plan of the bevel that stands round a hole, mm. */
function bevelWidth({ outline, top }: Pin, holes: 'drilled' | 'reamed'): number {
  const wall = outline[holes].slice(1, -1);
  const [inner, outer] = wall.slice(-2);
  if (!inner || !outer) return 0;
  const atTop = inner[0] + ((outer[0] - inner[0]) * (top - inner[1])) / (outer[1] - inner[1]);
  return atTop - inner[0];
}
