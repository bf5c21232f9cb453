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

/** The dimension that follows the design's aim, if it aims at anything. The tips' height is the wing tip's alone. */
export function followedPath(
  aims:
    | { readonly of?: unknown; readonly follows?: unknown; readonly stiffnessFollows?: unknown }
    | undefined,
): FollowedPath | undefined {
  switch (aims?.of) {
    case 'mass':
      return FOLLOWED[aims.follows as keyof typeof FOLLOWED];
    case 'stiffness':
      return FOLLOWED[aims.stiffnessFollows as keyof typeof FOLLOWED];
    case 'tip':
      return FOLLOWED.tip;
    default:
      return undefined;
  }
}
