/** A point or direction in space, mm. */
export type Vector = readonly [number, number, number];

export const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
/** What lies `along` times `direction` from a point. */
export const ahead = (from: Vector, along: number, direction: Vector): Vector => [
  from[0] + along * direction[0],
  from[1] + along * direction[1],
  from[2] + along * direction[2],
];
export const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const lengthOf = (a: Vector) => Math.sqrt(dot(a, a));
/** The unit vector of the same direction; of a vector without one, not a number. */
export const unit = (a: Vector): Vector => {
  const l = lengthOf(a);
  return [a[0] / l, a[1] / l, a[2] / l];
};
