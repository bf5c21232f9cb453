import type { Design } from '../../src/design/design.ts';
import type { Problem } from '../../src/design/problem.ts';
import { channelClearance } from './channelClearance.ts';
import type { Curves } from './curves.ts';
import { edgeClearance } from './edgeClearance.ts';
import { pinClearance } from './pinClearance.ts';
import { slotClearance } from './slotClearance.ts';

/** Everything about a drawn bridge that can't be: cuts that meet, run out of the wood or out of the block. */
export function clearances(design: Design, curves: Curves): readonly Problem[] {
  return [
    ...edgeClearance(design, curves),
    ...slotClearance(design, curves),
    ...pinClearance(design, curves),
    ...channelClearance(design, curves),
  ];
}
