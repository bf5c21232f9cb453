import type { Bending } from './bendingAlong.ts';
import { type Held, heldArm } from './heldArm.ts';
import { stretchIntegral } from './stretchIntegral.ts';

/**
 * How far the loaded place gives way, mm: δ = ∫M·m/(E·I(x)) dx by the unit load theorem (standard beam formula), M being
 * the load's bending moment and m that of a load of one. Between stations the cube root of I changes evenly, as it does
 * in wood that tapers. Shear is neglected: of a bridge on its tips it would add about a twentieth.
 *
 * @param stiffnessGPa the timber's along the grain
 * @param held on its two tips unless said otherwise
 */
export function deflection(bending: Bending, stiffnessGPa: number, forceN: number, held?: Held): number {
  const { stations } = bending;
  const [first, last] = [stations[0], stations[stations.length - 1]];
  if (!first || !last) return 0;
  const { range, stops, arm } = heldArm(held ?? { kind: 'supports', from: first.x, to: last.x });
  const flex = stretchIntegral(
    stations,
    (s) => Math.cbrt(s.secondMm4),
    range,
    stops,
    (x, root) => arm(x) ** 2 / root ** 3,
  );
  return (forceN * flex) / (1000 * stiffnessGPa);
}
