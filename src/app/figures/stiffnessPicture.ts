import type { Curves } from '../../../models/curves/curves.ts';
import type { Point } from '../../../models/curves/segment.ts';
import type { StiffnessAt } from '../../report/bendingFigures.ts';
import { plain } from '../../report/said.ts';
import { type Drawn, type Mark, stroke, WIDTH, word } from '../picture/mark.ts';
import type { Weighed } from './figuresOf.ts';
import { ticks } from './ticks.ts';

const HEIGHT = 206;
/** The plot's own box, px. */
const BOX = { left: 30, right: WIDTH - 6, top: 20, bottom: HEIGHT - 62 } as const;
/** Levels under the axis, px: its numbers, and what stands where along the bridge. */
const [NUMBERS, STRIP] = [BOX.bottom + 14, BOX.bottom + 36] as const;
/** Half the height of the block in the strip, px. */
const BLOCK = 9;
const MOST_STEPS = 5;
/** Between the places that are written along the bridge, mm. */
const EVERY = 25;

/**
 * Bending stiffness E·I along the bridge, the reference's dashed behind it; under the axis, to the same x, the middle
 * block, the slot from end to end, and the pin holes.
 */
export function stiffnessPicture(bench: Weighed, reference: Weighed): Drawn {
  const [mine, theirs] = [bench.figures.bending.along, reference.figures.bending.along];
  const half = Math.max(...[...mine, ...theirs].map(({ x }) => Math.abs(x)));
  const levels = ticks(Math.max(...[...mine, ...theirs].map((one) => one.stiffnessNm2)), MOST_STEPS);
  const most = levels[levels.length - 1] as number;
  const across = (x: number) => (BOX.left + BOX.right) / 2 + (x * (BOX.right - BOX.left)) / (2 * half);
  const up = (value: number) => BOX.bottom - (value * (BOX.bottom - BOX.top)) / most;
  const curve = (along: readonly StiffnessAt[]) =>
    along.map(({ x, stiffnessNm2 }): Point => [across(x), up(stiffnessNm2)]);
  const reach = EVERY * Math.floor(half / EVERY);
  const places = Array.from({ length: (2 * reach) / EVERY + 1 }, (_, i) => -reach + i * EVERY);
  return {
    height: HEIGHT,
    marks: [
      word('unit', 'N·m²', [0, 10], 'start', 'soft'),
      ...levels.flatMap((level): readonly Mark[] => [
        stroke(
          `level ${level}`,
          level === 0 ? 'detail' : 'faint',
          [BOX.left, up(level)],
          [BOX.right, up(level)],
        ),
        word(`stiffness ${level}`, plain(level, 3), [BOX.left - 5, up(level) + 4], 'end', 'soft'),
      ]),
      ...places.flatMap((x): readonly Mark[] => [
        stroke(`place ${x}`, 'detail', [across(x), BOX.bottom], [across(x), BOX.bottom + 3]),
        ...(x % (2 * EVERY) === 0 ? [word(`x ${x}`, plain(x), [across(x), NUMBERS], 'middle', 'soft')] : []),
      ]),
      word('x unit', 'mm', [0, NUMBERS], 'start', 'soft'),
      stroke('reference', 'hidden', ...curve(theirs)),
      stroke('stiffness', 'strong', ...curve(mine)),
      ...strip(bench, across),
    ],
  };
}

/** Block, slot and pins where they lie along the bridge. */
function strip({ accepted: { curves, design } }: Weighed, across: (x: number) => number): readonly Mark[] {
  const half = design.top.block / 2;
  const slot = slotReach(curves);
  return [
    {
      kind: 'line',
      name: 'block',
      pen: 'detail',
      fill: 'wood',
      closed: true,
      points: [
        [across(-half), STRIP - BLOCK],
        [across(half), STRIP - BLOCK],
        [across(half), STRIP + BLOCK],
        [across(-half), STRIP + BLOCK],
      ],
    },
    stroke('slot', 'blue', [across(-slot), STRIP - 4], [across(slot), STRIP - 4]),
    ...curves.pins.map(
      (pin, i): Mark => ({
        kind: 'ring',
        name: `pin ${i + 1}`,
        pen: 'detail',
        at: [across(pin.at[0]), STRIP + 4],
        radius: 2.2,
      }),
    ),
    word(
      'block name',
      'block, slot and pins',
      [WIDTH / 2 + BOX.left / 2, STRIP + BLOCK + 14],
      'middle',
      'soft',
    ),
  ];
}

/** How far the slot reaches from the middle, mm; an open one ends where the block does. */
function slotReach({ slot, profile }: Curves): number {
  return Math.min(slot.halfLength * Math.cos(slot.angle), profile.crownEnd);
}
