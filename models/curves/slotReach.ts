import type { Curves } from './curves.ts';

/** How far to either side a slot lies in wood that stands full, mm along it: an open one is carried on in the air beyond. */
export function slotReach({ slot, profile }: Pick<Curves, 'slot' | 'profile'>): number {
  return slot.roundEnds
    ? slot.halfLength
    : Math.min(slot.halfLength, profile.crownEnd / Math.cos(slot.angle));
}
