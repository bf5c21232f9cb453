import type { Curves, Holes } from '../curves/curves.ts';
import type { Spot } from '../curves/rim/rim.ts';
import { heldArm } from './heldArm.ts';
import type { Slice } from './slice.ts';
import { slicesAlong } from './slicesAlong.ts';
import { stretchIntegral } from './stretchIntegral.ts';

/** One of the lengths that a bridge is made of. */
export interface BridgePart {
  readonly fromMm: number;
  readonly toMm: number;
  readonly volumeMm3: number;
  readonly centroidMm: Spot;
  /** Least second moment of area in it, about the horizontal axis. */
  readonly leastSecondMm4: number;
  /** What it adds to the give at the middle of a bridge on its two tips, times the timber's stiffness: ∫m²/I dx, 1/mm. */
  readonly flexPerMm: number;
  /** The same as a share of the whole bridge's. */
  readonly flexShare: number;
}

export interface BridgeParts {
  readonly leftWing: BridgePart;
  readonly block: BridgePart;
  readonly rightWing: BridgePart;
}

/**
 * The wing on either side and the middle block between x = ∓ half its length: how much wood is in each and how much each
 * gives way. By sections as `bendingAlong` takes them, so that volumes are right to a few ten-thousandths. The left wing
 * lies toward −X, whichever hand the guitar is for.
 *
 * @param blockMm overall length of the middle block
 */
export function partsAlong(curves: Curves, holes: Holes, blockMm: number): BridgeParts {
  const slices = slicesAlong(curves, holes);
  const [from, to] = [slices[0]?.x ?? 0, slices[slices.length - 1]?.x ?? 0];
  const inside = (x: number) => Math.max(from, Math.min(to, x));
  const [left, right] = [inside(-blockMm / 2), inside(blockMm / 2)];
  const { stops, arm } = heldArm({ kind: 'supports', from, to });
  const flexOf = (range: readonly [number, number]) =>
    stretchIntegral(
      slices,
      (s) => Math.cbrt(s.secondMm4),
      range,
      stops,
      (x, root) => arm(x) ** 2 / root ** 3,
    );
  const whole = flexOf([from, to]);
  const part = (range: readonly [number, number]): BridgePart => {
    const flexPerMm = flexOf(range);
    return {
      fromMm: range[0],
      toMm: range[1],
      ...wood(slices, range),
      leastSecondMm4: least(slices, range),
      flexPerMm,
      flexShare: flexPerMm / whole,
    };
  };
  return { leftWing: part([from, left]), block: part([left, right]), rightWing: part([right, to]) };
}

function wood(
  slices: readonly Slice[],
  range: readonly [number, number],
): Pick<BridgePart, 'volumeMm3' | 'centroidMm'> {
  const sum = (told: (s: Slice) => number, f: (x: number, value: number) => number) =>
    stretchIntegral(slices, told, range, [], f);
  const area = (s: Slice) => s.areaMm2;
  const volume = sum(area, (_, a) => a);
  const moments = [
    sum(area, (x, a) => x * a),
    sum(
      (s) => s.areaMm2 * s.centroidMm[0],
      (_, y) => y,
    ),
    sum(
      (s) => s.areaMm2 * s.centroidMm[1],
      (_, z) => z,
    ),
  ] as const;
  return {
    volumeMm3: volume,
    centroidMm: [moments[0] / volume, moments[1] / volume, moments[2] / volume],
  };
}

function least(slices: readonly Slice[], [from, to]: readonly [number, number]): number {
  return Math.min(...slices.filter((s) => s.x >= from && s.x <= to).map((s) => s.secondMm4));
}
