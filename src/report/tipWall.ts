import type { Design } from '../design/design.ts';

/** What stands of a wing tip's end wall between glue face and top edge, mm: the tip less what its edging takes. */
export function tipWall({ top }: Pick<Design, 'top'>): number {
  return top.edge === 'none' ? top.tip : top.tip - top.edgeSize;
}
