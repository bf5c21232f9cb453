import { choice, type Field, length } from './kinds.ts';

export const underside = {
  shape: choice(
    'Underside',
    {
      follows: 'as the soundboard',
      flat: 'flat',
      cylinder: 'arched across',
      sphere: 'domed',
    },
    'follows',
    'The glue face copies the soundboard unless you set it.',
  ),
  radius: length('Underside radius', [2000, 30000], '25 ft', 100, 'Radius to which the glue face is sanded.'),
} as const satisfies Readonly<Record<string, Field>>;
