import { polygon } from '../../../models/curves/chain.ts';
import type { Curves, Edge } from '../../../models/curves/curves.ts';
import { outermost } from '../../../models/curves/rim/plan.ts';
import { arc, type Chain, line, mirrored, type Point } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import { path, stroke } from '../paper/inks.ts';
import type { Seen } from './seen.ts';

/** How far chords may stray from the wing's rim as it rises, mm. */
const STRAY = 0.01;
const PAST = 2;

/**
 * The bridge seen from one end, z up. From its right end y (toward the nut) goes to the right, from its left end to the
 * left.
 */
export function endView(curves: Curves, from: 'right' | 'left'): Seen {
  const { outline, profile, edge } = curves;
  const ys = outermost(outline).map(([, y]) => y);
  const [back, front] = [Math.min(...ys), Math.max(...ys)];
  const wing = polygon(outline, STRAY).filter(([x]) => x >= profile.runStart);
  const low = Math.min(...wing.map(([x, y]) => undersideHeight(curves.underside, x, y)));
  const wingYs = wing.map(([, y]) => y);
  const tip: readonly Point[] = [...wing]
    .map(([x, y]): Point => [y, topHeight(profile, x)])
    .map(([y, z]): Point => [y, z]);
  const sides: readonly [number, number] = [Math.min(...wingYs), Math.max(...wingYs)];
  const chain = silhouette([back, front], sides, low, profile.thickness, edge);
  const seen = (c: Chain): Chain => (from === 'right' ? c : c.map(mirrored));
  const across = (y: number) => (from === 'right' ? y : -y);
  const rim = path('profile', 'detail', tip);
  return {
    extent: [
      Math.min(across(back), across(front)),
      low,
      Math.max(across(back), across(front)),
      profile.thickness,
    ],
    inks: [
      ...(rim.kind === 'line' ? [{ ...rim, chain: seen(rim.chain) }] : []),
      path('centre', 'centre', [
        [0, low - PAST],
        [0, profile.thickness + PAST],
      ]),
      stroke('profile', 'outline', seen(chain), true),
    ],
  };
}

/** The outermost that is seen: the block, and below it the wing's tip, which reaches lower on a domed soundboard. */
function silhouette(
  [back, front]: readonly [number, number],
  [wingBack, wingFront]: readonly [number, number],
  low: number,
  top: number,
  edge: Edge,
): Chain {
  const by = edge.kind === 'none' ? 0 : edge.size;
  const below: readonly Point[] =
    low < -1e-6
      ? [
          [back, 0],
          [wingBack, 0],
          [wingBack, low],
          [wingFront, low],
          [wingFront, 0],
          [front, 0],
        ]
      : [
          [back, 0],
          [front, 0],
        ];
  const points = below.filter((p, i) => {
    const next = below[i + 1];
    return !next || Math.hypot(p[0] - next[0], p[1] - next[1]) > 1e-9;
  });
  const right: Point = [front, top - by];
  const left: Point = [back, top - by];
  const [rightTop, leftTop]: readonly [Point, Point] = [
    [front - by, top],
    [back + by, top],
  ];
  const corner = (a: Point, b: Point, centre: Point): Chain =>
    edge.kind === 'none' ? [] : [edge.kind === 'round' ? arc(a, b, centre, 1) : line(a, b)];
  return [
    ...points.slice(1).map((to, i) => line(points[i] as Point, to)),
    line(points[points.length - 1] as Point, right),
    ...corner(right, rightTop, [front - by, top - by]),
    line(rightTop, leftTop),
    ...corner(leftTop, left, [back + by, top - by]),
    line(left, points[0] as Point),
  ];
}
