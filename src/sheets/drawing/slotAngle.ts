import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { TOLERANCES } from '../../trade/tolerances.ts';
import { toleranceText } from '../../trade/toleranceText.ts';
import { angular } from '../dimensions/angular.ts';
import type { Draft } from '../dimensions/draft.ts';
import { angleText } from '../lengthText.ts';
import { onPaper, type View } from '../paper/view.ts';
import type { Typeface } from '../sheet.ts';

/** The slot's angle to the line across, at the left end. */
export function slotAngle(
  { design, curves: { slot } }: AcceptedDesign,
  at: View,
  half: number,
  typeface: Typeface,
): readonly Draft[] {
  if (Math.abs(slot.angle) < 1e-9) return [];
  const corner = onPaper(at, [0, 0]);
  return [
    angular(
      {
        label: `${angleText(Math.abs(design.saddle.angle))} ${toleranceText(TOLERANCES['slot-angle'])}°`,
        corner,
        from: Math.PI,
        to: Math.PI + slot.angle,
        radius: at.scale * half + 13,
        extend: [at.scale * (half + 2) + 1, at.scale * (slot.halfLength + 2) + 1],
      },
      typeface,
    ),
  ];
}
