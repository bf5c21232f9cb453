import type { Curves } from '../../models/curves/curves.ts';
import { sliceAt } from '../../models/surface/sliceAt.ts';
import { bendingStiffness } from '../trade/bendingStiffness.ts';

/** Bending stiffness E·I along the bridge at its middle, N·m² (W5), slot and reamed holes taken out; E in GPa. */
export function midStiffness(curves: Curves, stiffnessGPa: number): number {
  return bendingStiffness(sliceAt(curves, 'reamed', 0).secondMm4, stiffnessGPa);
}
