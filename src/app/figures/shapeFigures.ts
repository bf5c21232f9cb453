import { enclosedArea } from '../../../models/curves/chain.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { Design } from '../../design/design.ts';
import { bevelWidth } from '../../report/bevelWidth.ts';
import { fixed } from '../../report/said.ts';
import { woodRoundSlot } from '../../report/woodRoundSlot.ts';
import { woodUnderSlot } from '../../report/woodUnderSlot.ts';
import type { Figure } from './figure.ts';

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
      ...(conical && { source: 'The crown is copied from the fretboard as a curve, not as a height.' }),
      path: 'top.crown',
    },
    {
      label: 'Top at the tips',
      value: fixed(topHeight(profile, half), 2),
      unit: 'mm',
      formula: `over the glue plane: wing tip ${fixed(design.top.tip, 2)} less the fall of the glue face there`,
      path: 'top.tip',
    },
    {
      label: 'Glue face falls',
      value: fixed(fall, 2),
      unit: 'mm',
      formula: 'R − √(R² − x²) from the middle to the tips, R the radius of the underside',
      source: 'The sagitta of a circle.',
      path: 'underside.shape',
    },
    {
      label: 'Footprint’s area',
      value: fixed(enclosedArea(outline) / 100, 2),
      unit: 'cm²',
      formula: 'area inside the outline, holes not taken off',
      source: 'Green’s theorem, exact for lines and arcs.',
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
      source: `The set-back is ${saddle.setbackBy === 'set' ? 'set by hand' : 'solved from the strings'}.`,
      path: 'saddle.setback',
    },
    {
      label: 'Saddle height',
      value: fixed(saddle.showing + saddle.depth, 2),
      unit: 'mm',
      formula: `showing ${fixed(saddle.showing, 2)} + in the slot ${fixed(saddle.depth, 2)}, at the middle`,
      source: `The depth is ${saddle.depthBy === 'set' ? 'set by hand' : 'solved so that enough of the saddle stands in the wood'}.`,
      path: 'saddle.showing',
    },
    {
      label: 'Wood under the slot',
      value: fixed(woodUnderSlot(curves), 2),
      unit: 'mm',
      formula: 'least height of the slot’s floor over the glue face',
      source: 'Taken every ½ mm along both walls.',
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
            source: 'Taken every ½ mm round the slot.',
            path: 'footprint.slotBehindFront',
          },
        ]),
  ];
}

function pinFigures({ pins: p }: Design, { pins, underside }: Curves): readonly Figure[] {
  const [pin] = pins;
  if (!pin) return [];
  const atGlue = pins.map(
    ({ at: [x, y], outline }) => 2 * holeRadius(outline.reamed, undersideHeight(underside, x, y)),
  );
  const tapered: readonly Figure[] =
    p.taper === 0
      ? []
      : [
          {
            label: 'Reamed, at the glue face',
            value: span(atGlue),
            unit: 'mm',
            formula: `mouth ${fixed(p.mouth, 2)} − 2·tan(${p.taper}°/2)·the wood’s height at each pin, never less than the drill`,
            path: 'pins.taper',
          },
        ];
  if (p.bevel === 'none') return tapered;
  return [
    ...tapered,
    {
      label: 'Countersink to',
      value: `Ø ${fixed(p.bevelDiameter, 2)}`,
      unit: 'mm',
      formula: 'diameter at the surface, before reaming as after: the reamer takes the inside of it away',
      path: 'pins.bevelDiameter',
    },
    {
      label: 'Bevel’s width',
      value: `${fixed(bevelWidth(pin, 'drilled'), 2)}, reamed ${fixed(bevelWidth(pin, 'reamed'), 2)}`,
      unit: 'mm',
      formula:
        'width in plan, from the bevel’s outside to where it meets the hole; reaming takes the inside of it away',
      path: 'pins.bevelDiameter',
    },
  ];
}

/** Least to greatest, mm: one number where they are read alike. */
function span(values: readonly number[]): string {
  const [least, most] = [fixed(Math.min(...values), 2), fixed(Math.max(...values), 2)];
  return least === most ? least : `${least} to ${most}`;
}
