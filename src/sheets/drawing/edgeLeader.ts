import type { Point } from '../../../models/curves/segment.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Draft } from '../dimensions/draft.ts';
import { leader } from '../dimensions/leader.ts';
import { lengthText, type Units } from '../lengthText.ts';
import { onPaper, type View } from '../paper/view.ts';
import type { Typeface } from '../sheet.ts';
import type { Seen } from '../views/seen.ts';

/** What is done to the top edge, said at a corner of the end elevation. */
export function edgeLeader(
  { curves: { edge } }: AcceptedDesign,
  at: View,
  { extent }: Seen,
  units: Units,
  typeface: Typeface,
): readonly Draft[] {
  if (edge.kind === 'none') return [];
  const size = lengthText(edge.size, units);
  const label = edge.kind === 'round' ? `R${size} all round` : `${size} × 45° all round`;
  const off = edge.kind === 'round' ? (1 - Math.SQRT1_2) * edge.size : edge.size / 2;
  const pointings = ([1, -1] as const).flatMap((side) => {
    const x = side > 0 ? extent[2] - off : extent[0] + off;
    const tip = onPaper(at, [x, extent[3] - off]);
    return [50, 70, 35].map((degrees) => {
      const a = (degrees * Math.PI) / 180;
      return { tip, way: [side * Math.cos(a), Math.sin(a)] as Point };
    });
  });
  // back over the view, where there is more room than beside it
  const over = pointings.map(({ tip, way }) => ({ tip, way: [-0.3 * way[0], way[1]] as Point }));
  return [leader(label, [...pointings, ...over], typeface)];
}
