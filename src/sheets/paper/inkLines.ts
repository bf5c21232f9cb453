import { arcPieces } from '../../../models/curves/chain.ts';
import { type Point, pointAt, sweepOf } from '../../../models/curves/segment.ts';
import type { Ink } from '../sheet.ts';

/** How far a chord may stray from its arc, mm. */
const STRAY = 0.02;

/** What an ink draws as straights, near enough to tell what it runs into. */
export function inkLines(ink: Ink): readonly (readonly [Point, Point])[] {
  if (ink.kind === 'text') return [];
  if (ink.kind === 'circle') {
    const n = arcPieces(ink.radius, 2 * Math.PI, STRAY);
    const on = (i: number): Point => [
      ink.centre[0] + ink.radius * Math.cos((2 * Math.PI * i) / n),
      ink.centre[1] + ink.radius * Math.sin((2 * Math.PI * i) / n),
    ];
    return Array.from({ length: n }, (_, i) => [on(i), on(i + 1)] as const);
  }
  return ink.chain.flatMap((s) => {
    if (s.kind === 'line') return [[s.from, s.to] as const];
    const n = arcPieces(s.radius, sweepOf(s), STRAY);
    return Array.from({ length: n }, (_, i) => [pointAt(s, i / n), pointAt(s, (i + 1) / n)] as const);
  });
}
