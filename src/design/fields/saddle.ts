import { angle, choice, type Field, length, ratio, solvable, solvedOrSet } from './kinds.ts';

export const saddle = {
  slotWidth: length('Slot width', [1.2, 8], 3.2, 0.1, 'Width of the saddle slot; the cutter is no wider.'),
  cutter: length(
    'Cutter for the slot',
    [0.5, 8],
    '1/8 in',
    0.1,
    'Diameter of the cutter that makes the slot: no wider than the slot.',
  ),
  slotLength: length('Slot length', [30, 150], 74, 0.5, 'Overall, round ends included.'),
  rule: choice(
    'In tune',
    { twelfth: 'at the 12th fret', frets: 'over frets 1 to 12' },
    'twelfth',
    'Each string’s set-back puts its 12th fret in tune, or makes the errors of frets 1 to 12 least.',
  ),
  line: choice(
    'Slot laid',
    { squares: 'by least squares', largest: 'for the smallest largest error' },
    'squares',
    'How a straight slot goes through what the strings ask for.',
  ),
  firmEnds: ratio(
    'Firmness of the ends',
    [0, 2],
    2,
    0.1,
    'How firmly nut and saddle clamp the string, α: 0 as on a knife’s edge, 2 clamped at both; 2 is fitted to common practice.',
  ),
  filed: choice(
    'Saddle’s crown',
    { straight: 'along the slot’s middle', each: 'filed for each string' },
    'each',
    'Whether the crown stays on the slot’s middle, or is filed to and fro for each string as far as the saddle’s width allows.',
  ),
  crownMargin: length(
    'Left beside the crown',
    [0, 2],
    0.4,
    0.1,
    'Least width of saddle left between a filed crown and the saddle’s face.',
  ),
  angleBy: solvedOrSet('Slot angle from', 'Solved from the strings’ set-backs, or set by hand.'),
  angle: solvable(
    'angleBy',
    angle('Slot angle', [-3, 9], 2.9, 0.1, 'Positive carries the bass end away from the nut.'),
  ),
  setbackBy: solvedOrSet('Set-back from', 'Solved from the strings’ set-backs, or set by hand.'),
  setback: solvable(
    'setbackBy',
    length(
      'Set-back at the centre',
      [-3, 15],
      3.9,
      0.1,
      'How far beyond the scale length the slot’s middle lies.',
    ),
  ),
  depthBy: solvedOrSet(
    'Slot depth from',
    'Solved so that enough of the saddle stands in the wood (see Limits), or set by hand.',
  ),
  depth: solvable(
    'depthBy',
    length('Slot depth', [1, 16], 5.5, 0.1, 'From the crown at the slot’s middle, along the slot’s walls.'),
  ),
  woodUnder: length(
    'Leave under the slot',
    [0.5, 8],
    2.5,
    0.1,
    'Least wood to leave under the slot when its depth is solved.',
  ),
  ends: choice(
    'Slot ends',
    { round: 'round, in the block', open: 'open through the block' },
    'round',
    'A slot that stops in the wood, or one that runs out at both ends of the block.',
  ),
  floor: choice(
    'Slot floor',
    { flat: 'flat', parallel: 'parallel to the crown' },
    'flat',
    'A flat floor, or one that keeps the same depth under the crown.',
  ),
  tilt: angle('Slot tilt', [0, 12], 0, 0.5, 'Leans the saddle’s top back toward the pins.'),
  showingBy: solvedOrSet(
    'Showing from',
    'Solved from the action over a thickness that is set, or set by hand: then the action follows.',
  ),
  showing: solvable(
    'showingBy',
    length('Saddle showing', [0, 10], 4, 0.1, 'Saddle standing over the crown at the middle.'),
  ),
} as const satisfies Readonly<Record<string, Field>>;
