import type { Rule } from './rule.ts';
import { actionOtherwise } from './rules/actionOtherwise.ts';
import { bevelRing } from './rules/bevelRing.ts';
import { breakAngle } from './rules/breakAngle.ts';
import { centsMisread } from './rules/centsMisread.ts';
import { crownBeyondSaddle } from './rules/crownBeyondSaddle.ts';
import { cutterTooWide } from './rules/cutterTooWide.ts';
import { insideCorner } from './rules/insideCorner.ts';
import { mass } from './rules/mass.ts';
import { saddleNotHalfIn } from './rules/saddleNotHalfIn.ts';
import { saddleShowing } from './rules/saddleShowing.ts';
import { saddleTooShort } from './rules/saddleTooShort.ts';
import { steelStress } from './rules/steelStress.ts';
import { straightedgeGap } from './rules/straightedgeGap.ts';
import { stringHeight } from './rules/stringHeight.ts';
import { stringLifts } from './rules/stringLifts.ts';
import { stringOverWood } from './rules/stringOverWood.ts';
import { stringUnderTop } from './rules/stringUnderTop.ts';
import { tipWall } from './rules/tipWall.ts';
import { undersideOtherwise } from './rules/undersideOtherwise.ts';
import { usual } from './rules/usual.ts';
import { wingTip } from './rules/wingTip.ts';
import { woodBeforeSlot } from './rules/woodBeforeSlot.ts';
import { woodBehindPins } from './rules/woodBehindPins.ts';
import { woodBehindSlot } from './rules/woodBehindSlot.ts';
import { woodBetweenPins } from './rules/woodBetweenPins.ts';
import { woodUnderSlot } from './rules/woodUnderSlot.ts';

/** Every trade rule that a design is held against, in the order in which they are said. */
export const RULES: readonly Rule[] = [
  stringUnderTop,
  stringLifts,
  saddleTooShort,
  saddleNotHalfIn,
  saddleShowing,
  breakAngle,
  stringHeight,
  straightedgeGap,
  stringOverWood,
  steelStress,
  crownBeyondSaddle,
  actionOtherwise,
  centsMisread,
  woodBeforeSlot,
  woodBehindSlot,
  woodUnderSlot,
  woodBetweenPins,
  woodBehindPins,
  wingTip,
  tipWall,
  mass,
  cutterTooWide,
  bevelRing,
  insideCorner,
  undersideOtherwise,
  ...usual,
];
