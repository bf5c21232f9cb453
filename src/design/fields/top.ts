import { choice, type Field, length, solvable, solvedOrSet } from './kinds.ts';

export const top = {
  thicknessBy: solvedOrSet(
    'Thickness from',
    'Solved so that the saddle shows as much as wanted over it, or set by hand.',
  ),
  thickness: solvable(
    'thicknessBy',
    length(
      'Thickness at the centre',
      [5, 18],
      9.1,
      0.1,
      'Glue plane to the uncut top, at the middle of the slot.',
    ),
  ),
  crown: choice(
    'Crown',
    { follows: 'as the fretboard', set: 'set by hand' },
    'follows',
    'The top is arched like the fretboard, carried on to the saddle.',
  ),
  crownRadius: solvable(
    'crown',
    length('Crown radius', [150, 5000], '16 in', 5, 'Radius across the top of the middle block.'),
  ),
  block: length('Middle block', [50, 180], 90, 1, 'Length of the full-height middle between the wings.'),
  tip: length('Wing tip', [1, 10], 3, 0.1, 'Wood left at the very end of a wing, before edging.'),
  wing: choice(
    'Wing run',
    { straight: 'straight', hollow: 'hollow' },
    'straight',
    'The wing runs straight to its tip, or in a hollow that levels out at the tip.',
  ),
  wingRise: length(
    'Wing rise',
    [0, 10],
    1.2,
    0.1,
    'How much higher the wing’s run would stand where the block ends than it does at the tip.',
  ),
  blend: length('Blend at the block', [2, 120], 25, 1, 'Radius of the hollow between wing and block.'),
  shoulder: length(
    'Shoulder',
    [0.8, 25],
    2.5,
    0.1,
    'Radius that takes the corner off where the crown turns down into the blend.',
  ),
  edge: choice(
    'Top edge',
    { none: 'left square', round: 'rounded over', chamfer: 'chamfered' },
    'round',
    'What is done to the edge all round the top.',
  ),
  edgeSize: length(
    'Edge size',
    [0.2, 4],
    1,
    0.1,
    'Radius of the round-over, or width of the chamfer on each face.',
  ),
} as const satisfies Readonly<Record<string, Field>>;
