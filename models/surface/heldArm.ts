/**
 * How a bridge is held and loaded: on two supports with the load halfway between them, or clamped at one place and
 * loaded at another; x in mm.
 */
export type Held =
  | { readonly kind: 'supports'; readonly from: number; readonly to: number }
  | { readonly kind: 'clamped'; readonly clamp: number; readonly load: number };

export interface Arm {
  readonly range: readonly [number, number];
  readonly stops: readonly number[];
  /** Bending moment at x of a load of one, mm. */
  arm(x: number): number;
}

/** Where a held bridge bends, and by what moment. */
export function heldArm(held: Held): Arm {
  if (held.kind === 'clamped') {
    const { clamp, load } = held;
    return {
      range: [Math.min(clamp, load), Math.max(clamp, load)],
      stops: [],
      arm: (x) => Math.abs(x - load),
    };
  }
  const { from, to } = held;
  return { range: [from, to], stops: [(from + to) / 2], arm: (x) => Math.min(x - from, to - x) / 2 };
}
