import type { Curves } from '../../../../models/curves/curves.ts';
import { type Chain, directionAt, type Segment } from '../../../../models/curves/segment.ts';
import { below, mm } from '../../said.ts';
import { alongOutline } from '../places.ts';
import { rule } from '../rule.ts';

export const insideCorner = rule({
  id: 'inside-corner',
  about: 'making',
  watches: 'The outline’s hollows are wide enough for the cutter that goes round it.',
  judge: ({ accepted: { design, curves } }) => {
    const radius = design.footprint.cutter / 2;
    const tight = hollows(curves).filter((hollow) => below(hollow.radius, radius));
    if (tight.length === 0) return undefined;
    const least = Math.min(...tight.map((hollow) => hollow.radius));
    const edges = [...new Set(tight.map(({ edge }) => edge))].join(' and the ');
    return {
      severity: 'note',
      text: `The ${edges} edge turns inward as tightly as ${mm(least)}, and a cutter of ${mm(2 * radius)} leaves ${mm(radius)} there: finish those hollows by hand, or take a smaller cutter.`,
      found: `radius ${mm(least)}`,
      limit: `at least ${mm(radius)}, half the cutter`,
      source: 'A round cutter leaves no hollow tighter than itself.',
      path: 'footprint.cutter',
      place: tight.map(({ piece }) => alongOutline(curves, piece)),
      mends: ['footprint.cutter', 'footprint.knee', 'footprint.sweepLength'],
    };
  },
});

interface Hollow {
  readonly radius: number;
  readonly edge: 'front' | 'back';
  readonly piece: Chain;
}

/** A joint that turns inward by less, radians, is tangent but for rounding. */
const TANGENT = 0.002;

/** Where the outline, walked counter-clockwise, turns right: its inward arcs, and joints that are no tangents. */
function hollows({ outline }: Curves): readonly Hollow[] {
  return outline.flatMap((segment, i): Hollow[] => {
    const next = outline[(i + 1) % outline.length] ?? segment;
    const [from, to] = [directionAt(segment, 1), directionAt(next, 0)];
    const turn = Math.asin(Math.max(-1, Math.min(1, from[0] * to[1] - from[1] * to[0])));
    return [
      ...(segment.kind === 'arc' && segment.turn === -1
        ? [{ radius: segment.radius, edge: edgeOf(segment), piece: [segment] }]
        : []),
      ...(turn < -TANGENT ? [{ radius: 0, edge: edgeOf(segment), piece: [segment, next] }] : []),
    ];
  });
}

/** The back edge is walked toward +x. */
const edgeOf = ({ from, to }: Segment): Hollow['edge'] => (to[0] > from[0] ? 'back' : 'front');
