import type { Point } from '../../../models/curves/segment.ts';
import { slotFloor } from '../../../models/curves/slot.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { TOLERANCES } from '../../trade/tolerances.ts';
import { depthMark } from '../dimensions/depthMark.ts';
import type { Draft } from '../dimensions/draft.ts';
import type { Laned } from '../dimensions/lanes.ts';
import { leader } from '../dimensions/leader.ts';
import { lengthText, limitsText, type Units } from '../lengthText.ts';
import { onPaper, type View } from '../paper/view.ts';
import type { Typeface } from '../sheet.ts';
import { slotReach } from '../views/alongView.ts';

/** How far beside the middle the depth is drawn, mm: clear of the centre line. */
const BESIDE = 6;

/** The slot's length, unless it is open. */
export function alongDimensions({ curves }: AcceptedDesign, units: Units): readonly Laned[] {
  const { slot, profile } = curves;
  if (!slot.roundEnds) return [];
  const at = (u: number): Point => [u, topHeight(profile, u * Math.cos(slot.angle))];
  return [
    {
      side: 'above',
      label: lengthText(2 * slot.halfLength, units),
      from: at(-slot.halfLength),
      to: at(slot.halfLength),
    },
  ];
}

/** The slot's depth, measured in the slot, and what its floor is. */
export function alongDrafts(
  { curves }: AcceptedDesign,
  view: View,
  units: Units,
  typeface: Typeface,
): readonly Draft[] {
  const { slot, profile } = curves;
  const floor = (u: number): Point => [u, profile.thickness + slotFloor(slot, u) * Math.cos(slot.tilt)];
  const along = slot.tilt === 0 ? '' : ' along the wall';
  const tips = [-0.55, -0.4, -0.7, 0.45, 0.6].map((share) => onPaper(view, floor(share * slotReach(curves))));
  const ways = [110, 70, 125, 55].map(
    (d): Point => [Math.cos((d * Math.PI) / 180), Math.sin((d * Math.PI) / 180)],
  );
  return [
    depthMark(
      `${lengthText(slot.depth, units)} ${limitsText(TOLERANCES['slot-depth'], units)}${along}`,
      [BESIDE, -BESIDE, 2 * BESIDE, -2 * BESIDE].map((u) => ({
        floor: onPaper(view, floor(u)),
        rim: onPaper(view, [u, profile.thickness]),
      })),
      typeface,
    ),
    leader(
      slot.floorRadius === undefined ? 'floor flat' : `floor R${lengthText(slot.floorRadius, units)}`,
      ways.flatMap((way) => tips.map((tip) => ({ tip, way }))),
      typeface,
    ),
  ];
}
