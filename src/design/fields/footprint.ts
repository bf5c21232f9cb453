import { choice, type Field, length } from './kinds.ts';

export const footprint = {
  length: length('Length', [100, 230], 153, 1, 'Tip to tip.'),
  depthCentre: length('Depth, centre', [20, 75], 36, 0.5, 'Front to back on the centre line.'),
  depthWing: length('Depth, wings', [12, 70], 27, 0.5, 'Front to back at the wing tips.'),
  backEdge: choice(
    'Back edge',
    { straight: 'straight', tail: 'belly toward the tail', soundhole: 'drawn in toward the soundhole' },
    'tail',
    'Where the middle of the back edge goes, seen from the wings.',
  ),
  backForm: choice(
    'Back edge runs',
    { sweep: 'in a double sweep', bow: 'in one bow', taper: 'straight, with a knee' },
    'sweep',
    'How the back edge gets from the wing to the middle.',
  ),
  frontEdge: choice(
    'Front edge',
    { straight: 'straight', soundhole: 'belly toward the soundhole', tail: 'drawn in toward the tail' },
    'straight',
    'Where the middle of the front edge goes, seen from the wings.',
  ),
  frontForm: choice(
    'Front edge runs',
    { sweep: 'in a double sweep', bow: 'in one bow', taper: 'straight, with a knee' },
    'bow',
    'How the front edge gets from the wing to the middle.',
  ),
  frontBelly: length(
    'Front belly',
    [0.5, 25],
    3,
    0.5,
    'How far the front edge goes when both edges are shaped; the back edge takes the rest of the depth.',
  ),
  fullDepthLength: length(
    'Full-depth run',
    [0, 180],
    52,
    1,
    'Length of the middle that keeps its full depth before a sweep or taper begins.',
  ),
  sweepLength: length(
    'Sweep',
    [4, 90],
    34,
    1,
    'Length along the bridge in which a double sweep goes from the middle to the wing.',
  ),
  knee: length('Knee radius', [2, 300], 20, 1, 'Rounds the corner where a straight taper leaves the middle.'),
  tip: choice(
    'Wing tips',
    { square: 'straight', bowed: 'bowed', round: 'half round' },
    'bowed',
    'How the ends go: straight with rounded corners, slightly bowed, or one round.',
  ),
  tipBow: length('Tip bow', [0.3, 12], 1.5, 0.1, 'How far a bowed tip stands out beyond its corners.'),
  cornerFront: length('Front corner radius', [1, 35], 6, 0.5, 'Rounds the front corner of each wing.'),
  cornerBack: length('Back corner radius', [1, 35], 6, 0.5, 'Rounds the back corner of each wing.'),
  slotBehindFront: length(
    'Slot behind front edge',
    [4, 40],
    11,
    0.5,
    'Front edge to the middle of the saddle slot, on the centre line.',
  ),
} as const satisfies Readonly<Record<string, Field>>;
