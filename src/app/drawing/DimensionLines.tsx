import type { Point } from '../../../models/curves/segment.ts';
import type { Mark } from './compose.ts';
import { plus } from './drawn.ts';
import { say } from './pathOf.ts';

/** Length of an arrowhead and half its width, px: an opening of 30° (ISO 129). */
const LENGTH = 7;
const HALF_WIDTH = 1.8;

/** The lines and arrowheads of one dimension. */
export function DimensionLines({ mark, selected }: { mark: Mark; selected: boolean }) {
  const { lines, bow, arrows } = mark;
  return (
    <g className={selected ? 'drawing-dimension selected' : 'drawing-dimension'}>
      <path d={`${lines.map(([a, b]) => `M${say(a)}L${say(b)}`).join('')}${bow ?? ''}`} />
      <path className="drawing-arrows" d={arrows.map(({ tip, way }) => arrow(tip, way)).join('')} />
    </g>
  );
}

function arrow(tip: Point, way: Point): string {
  const foot = plus(tip, way, -LENGTH);
  const aside: Point = [-way[1], way[0]];
  return `M${say(tip)}L${say(plus(foot, aside, HALF_WIDTH))}L${say(plus(foot, aside, -HALF_WIDTH))}Z`;
}
