import type { Point } from '../../../models/curves/segment.ts';
import type { SectionPiece } from '../../../models/surface/section.ts';
import { path } from '../paper/inks.ts';
import { onPaper, type View } from '../paper/view.ts';
import type { Ink } from '../sheet.ts';

/** Shortest stroke worth a pen, mm. */
const LEAST = 0.15;

/**
 * Hatching of cut wood at 45°, in strokes that end on its outline: holes and notches stay white.
 *
 * @param spacing between strokes, mm on paper
 */
export function hatching(pieces: readonly SectionPiece[], view: View, spacing: number): readonly Ink[] {
  const [c, s] = [Math.SQRT1_2, Math.SQRT1_2];
  // turned so that strokes lie level
  const flat = ([x, y]: Point): Point => [x * c + y * s, y * c - x * s];
  const back = ([x, y]: Point): Point => [x * c - y * s, x * s + y * c];
  return pieces.flatMap(({ outer, holes }) => {
    const loops = [outer, ...holes].map((loop) => loop.map((p) => flat(onPaper(view, p))));
    const ys = loops.flat().map(([, y]) => y);
    const first = Math.ceil(Math.min(...ys) / spacing);
    const last = Math.floor(Math.max(...ys) / spacing);
    return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * spacing).flatMap(
      (y) => {
        const xs = loops.flatMap((loop) => crossings(loop, y)).sort((a, b) => a - b);
        return xs.flatMap((x, k) => {
          const to = xs[k + 1];
          if (k % 2 === 1 || to === undefined || to - x < LEAST) return [];
          return [path('section', 'hatch', [back([x, y]), back([to, y])])];
        });
      },
    );
  });
}

function crossings(loop: readonly Point[], y: number): readonly number[] {
  return loop.flatMap((a, i) => {
    const b = loop[(i + 1) % loop.length] as Point;
    if (a[1] > y === b[1] > y) return [];
    return [a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])];
  });
}
