/** A point or a direction of the part, or of a tool's own frame, mm. */
export type Vec3 = readonly [number, number, number];
