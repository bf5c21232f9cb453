import type { Curves } from '../../../models/curves/curves.ts';
import { massG, surfaceFigures } from '../../../models/surface/figures.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';

/** Volumes as drilled and as reamed, mm³: every sheet of a design says its mass, and integrating takes a while. */
const known = new WeakMap<Curves, readonly [number, number]>();

/** Mass of the finished bridge with its holes as drilled and as reamed, g. */
export function masses({ curves, design }: AcceptedDesign): readonly [number, number] {
  const volumes = known.get(curves) ?? [
    surfaceFigures(curves, 'drilled').volumeMm3,
    surfaceFigures(curves, 'reamed').volumeMm3,
  ];
  known.set(curves, volumes);
  return [massG(volumes[0], design.timber.density), massG(volumes[1], design.timber.density)];
}
