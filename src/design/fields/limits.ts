import { OWN_LEVEL } from '../../trade/ownLevel.ts';
import { angle, type Field, length, mass, modulus, ratio } from './kinds.ts';

/**
 * What the findings hold a design against: the trade's usual levels (common practice, no source), unless a help says that it
 * is our own level, or who says so. The builder may change each.
 */
export const limits = {
  held: ratio(
    'Saddle held, share',
    [0.2, 0.9],
    0.5,
    0.05,
    'Least share of the saddle that stands in its slot.',
  ),
  showingLeast: length('Saddle showing, least', [0, 10], 2.5, 0.1, 'Least saddle standing over the bridge.'),
  showingMost: length('Saddle showing, most', [0, 12], 4.5, 0.1, 'Most saddle standing over the bridge.'),
  breakAngle: angle('Break angle, least', [0, 45], 15, 1, 'Least turn of each string over the saddle.'),
  stringLeast: length(
    'String height, least',
    [5, 25],
    11.5,
    0.1,
    'Least height of the strings over the soundboard at the saddle.',
  ),
  stringMost: length(
    'String height, most',
    [5, 25],
    13.5,
    0.1,
    'Most height of the strings over the soundboard at the saddle.',
  ),
  woodBefore: length('Wood before the slot', [0.2, 15], 2, 0.1, 'Least wood in front of the slot.'),
  woodBehind: length(
    'Wood behind the slot',
    [0.2, 15],
    2,
    0.1,
    `Least wood between slot and pin holes. ${OWN_LEVEL}`,
  ),
  woodUnder: length('Wood under the slot', [0.2, 10], 2, 0.1, 'Least wood below the slot.'),
  betweenPins: length(
    'Wood between pins',
    [0.2, 10],
    2,
    0.1,
    `Least wood between neighbouring pin holes. ${OWN_LEVEL}`,
  ),
  behindPins: length(
    'Wood behind the pins',
    [0.2, 20],
    3,
    0.1,
    `Least wood from a pin hole to the outline. ${OWN_LEVEL}`,
  ),
  gapLeast: length(
    'Under a straightedge, least',
    [-3, 3],
    -0.5,
    0.1,
    'Least gap from a straightedge on the frets down to the bridge’s top; 0 is usual, and less is a top over it: 0.5 is our own level.',
  ),
  gapMost: length(
    'Under a straightedge, most',
    [-3, 6],
    1.5,
    0.1,
    'Most gap from a straightedge on the frets down to the bridge’s top.',
  ),
  tipLeast: length('Wing tip, least', [0.5, 10], 2.5, 0.1, 'Least thickness of the wing tips.'),
  tipMost: length('Wing tip, most', [0.5, 12], 4, 0.1, 'Most thickness of the wing tips.'),
  tipWall: length(
    'Left under the edge',
    [0.1, 5],
    1,
    0.1,
    `Least height of a tip’s end wall under the top edge. ${OWN_LEVEL}`,
  ),
  bevelRing: length(
    'Bevel’s ring',
    [0.05, 3],
    0.3,
    0.05,
    `Least width of a bevel after reaming. ${OWN_LEVEL}`,
  ),
  massLeast: mass('Mass, least', [2, 100], 20, 0.5, 'Least mass of the finished bridge.'),
  massMost: mass('Mass, most', [2, 150], 35, 0.5, 'Most mass of the finished bridge.'),
  steel: modulus(
    'Stress in string steel',
    [1, 2.9],
    2.2,
    0.05,
    `Most stress in a core: string steel is stressed up to about 2 GPa (Zollner, Physics of the Electric Guitar §1.2). The limit beyond it: ${OWN_LEVEL}`,
  ),
} as const satisfies Readonly<Record<string, Field>>;
