import type { Kernel } from './kernel.ts';
import { recognised, SAME } from './recognised.ts';
import type { Scope } from './scope.ts';
import { cylinder, plane, type Surface } from './surfaces.ts';
import { ahead, cross, dot, lengthOf, minus, unit, type Vector } from './vectors.ts';

/** What a section across a band is. */
export type Section = 'straight' | 'arc';
/** The line across a band at t (0 to 1) along it, from a share across it (0 to 1). */
export type Band = (t: number) => (share: number) => Vector;

/** Where along and across a band it is looked at. */
const PLACES = [0, 0.2, 0.4, 0.6, 0.8, 1] as const;

/** The plane or cylinder that a band lies on, if it does. */
export function straightened(
  kernel: Kernel,
  scope: Scope,
  band: Band,
  section: Section,
): Surface | undefined {
  return section === 'straight' ? flat(kernel, scope, band) : rolled(kernel, scope, band);
}

function flat(kernel: Kernel, scope: Scope, band: Band): Surface | undefined {
  const corner = band(0)(0);
  const x = unit(minus(band(1)(0), corner));
  const normal = unit(cross(x, minus(band(0.5)(1), corner)));
  const lies = everywhere(band, (p) => Math.abs(dot(minus(p, corner), normal)) < SAME);
  return lies ? plane(kernel, scope, corner, normal, x) : undefined;
}

/** A ball that rolls straight on leaves a cylinder: every section's circle has its centre on the axis, square to it. */
function rolled(kernel: Kernel, scope: Scope, band: Band): Surface | undefined {
  const [first, last] = [recognised(band(0)), recognised(band(1))];
  if (first?.kind !== 'arc' || last?.kind !== 'arc') return undefined;
  const { centre, radius } = first;
  const along = minus(last.centre, centre);
  const axis = unit(along);
  const lies = everywhere(band, (p) => {
    const d = minus(p, centre);
    return Math.abs(lengthOf(ahead(d, -dot(d, axis), axis)) - radius) < SAME;
  });
  if (!lies) return undefined;
  return cylinder(kernel, scope, centre, axis, unit(minus(band(0)(0.5), centre)), radius);
}

function everywhere(band: Band, holds: (p: Vector) => boolean): boolean {
  return PLACES.every((t) => {
    const at = band(t);
    return PLACES.every((share) => holds(at(share)));
  });
}
