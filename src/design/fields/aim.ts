import { bending, choice, type Field, length, mass } from './kinds.ts';

export const aim = {
  of: choice(
    'Aim at',
    { none: 'nothing', mass: 'a mass', stiffness: 'a stiffness in the middle', tip: 'a height at the tips' },
    'none',
    'What the bridge must come to; one dimension then follows.',
  ),
  mass: mass('Mass aimed at', [5, 120], 26, 0.1, 'Of the wood, its pin holes reamed.'),
  stiffness: bending(
    'Stiffness aimed at',
    [0.5, 400],
    20,
    0.1,
    'Bending stiffness E·I along the bridge at the middle, slot and holes taken out.',
  ),
  tip: length('Height aimed at', [0.2, 9], 2, 0.1, 'What stands of a tip’s end wall under the top edge.'),
  follows: choice(
    'Follows',
    {
      tip: 'the wing tip',
      thickness: 'the thickness',
      block: 'the middle block, and with it the wings',
      length: 'the length',
      depth: 'the depth at the centre',
    },
    'tip',
    'The dimension that is changed to meet the mass.',
  ),
  stiffnessFollows: choice(
    'Follows',
    { thickness: 'the thickness', depth: 'the depth at the centre' },
    'thickness',
    'The dimension that is changed to meet the stiffness: no other changes the middle.',
  ),
} as const satisfies Readonly<Record<string, Field>>;
