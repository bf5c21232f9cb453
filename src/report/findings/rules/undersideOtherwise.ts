import type { Underside } from '../../../../models/curves/curves.ts';
import { underside as faceOf } from '../../../../models/curves/underside.ts';
import { said } from '../../said.ts';
import { alongOutline } from '../places.ts';
import { rule } from '../rule.ts';

export const undersideOtherwise = rule({
  id: 'underside-otherwise',
  about: 'making',
  watches: 'The glue face copies the soundboard.',
  judge: ({ accepted: { design, curves } }) => {
    const board = faceOf({ ...design, underside: { ...design.underside, shape: 'follows' } });
    const face = curves.underside;
    if (sayFace(board) === sayFace(face)) return undefined;
    return {
      severity: 'note',
      text: `The glue face is set by hand, ${sayFace(face)}, over a soundboard that is ${sayFace(board)}: it must be sanded to fit before gluing, or clamps will bend one to the other.`,
      found: sayFace(face),
      limit: `as the soundboard, ${sayFace(board)}`,
      source: 'Follows from the two shapes.',
      path: 'underside.shape',
      place: [alongOutline(curves, curves.outline)],
      // the mending is no number: let the underside follow the soundboard
      mends: [],
    };
  },
});

const SHAPES = { flat: 'flat', cylinder: 'arched across', sphere: 'domed' } as const;

const sayFace = (face: Underside) =>
  face.shape === 'flat' ? 'flat' : `${SHAPES[face.shape]} to ${said(face.radius / 1000, 'm')}`;
