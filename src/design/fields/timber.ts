import { density, type Field, modulus, text } from './kinds.ts';

export const timber = {
  name: text('Timber', 'Indian rosewood', 120, 'What the bridge is made of.'),
  density: density('Density', [300, 1500], 849, 5, 'At 12 % moisture.'),
  stiffness: modulus(
    'Stiffness along the grain',
    [3, 30],
    12.27,
    0.1,
    'Modulus of elasticity E along the grain.',
  ),
} as const satisfies Readonly<Record<string, Field>>;
