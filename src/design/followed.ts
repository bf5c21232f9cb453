import type { aim } from './fields/aim.ts';

/** Dimensions that can follow an aim, by the word of the choice. */
export const FOLLOWED = {
  tip: 'top.tip',
  thickness: 'top.thickness',
  block: 'top.block',
  length: 'footprint.length',
  depth: 'footprint.depthCentre',
} as const satisfies Record<keyof typeof aim.follows.choices, string>;

export type FollowedPath = (typeof FOLLOWED)[keyof typeof FOLLOWED];

/** The dimension that follows the design's aim, if it aims at anything. */
export function followedPath(
  aims: { readonly of?: unknown; readonly follows?: unknown } | undefined,
): FollowedPath | undefined {
  if (!aims || aims.of === undefined || aims.of === 'none') return undefined;
  return FOLLOWED[aims.follows as keyof typeof FOLLOWED];
}
