import { said } from '../../said.ts';
import { outside } from '../outside.ts';
import { PRACTICE, rule } from '../rule.ts';

export const mass = rule({
  id: 'mass',
  about: 'wood',
  watches: 'What the finished bridge weighs.',
  judge: ({ accepted: { design }, massG }) => {
    const out = outside(design, [massG], { least: 'massLeast', most: 'massMost', unit: 'g', decimals: 1 });
    if (!out) return undefined;
    return {
      severity: 'warning',
      text: `The wood weighs ${said(massG, 'g', 1)}, its holes reamed: ${out.lowest ? 'so light a bridge is thin or small for what the strings ask of it' : 'so heavy a bridge takes loudness and treble from the soundboard'}.`,
      ...out.held,
      source: PRACTICE,
      path: 'timber.density',
      place: [],
      mends: [
        'aim.mass',
        'top.block',
        'top.tip',
        'footprint.depthWing',
        'footprint.depthCentre',
        'footprint.length',
        'top.thickness',
      ],
    };
  },
});
