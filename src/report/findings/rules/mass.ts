import { above, below, fromTo, said } from '../../said.ts';
import { PRACTICE, rule } from '../rule.ts';

export const mass = rule({
  id: 'mass',
  about: 'wood',
  watches: 'What the finished bridge weighs.',
  judge: (judged) => {
    const { massLeast: least, massMost: most } = judged.accepted.design.limits;
    const { massG } = judged;
    const light = below(massG, least, 1);
    if (!light && !above(massG, most, 1)) return undefined;
    const grams = said(massG, 'g', 1);
    return {
      severity: 'warning',
      text: `The wood weighs ${grams}, its holes reamed: ${light ? 'so light a bridge is thin or small for what the strings ask of it' : 'so heavy a bridge takes loudness and treble from the soundboard'}.`,
      found: grams,
      limit: fromTo(least, most, 'g'),
      source: PRACTICE,
      path: 'timber.density',
      limitPath: light ? 'limits.massLeast' : 'limits.massMost',
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
