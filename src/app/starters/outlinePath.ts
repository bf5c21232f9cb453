import type { Chain } from '../../../models/curves/segment.ts';
import { sweepOf } from '../../../models/curves/segment.ts';

/** A closed chain as an SVG path in plan, y downward: lines and arcs as they are. */
export function outlinePath(chain: Chain): string {
  const first = chain[0];
  if (!first) return '';
  const at = ([x, y]: readonly [number, number]) => `${round(x)} ${round(-y)}`;
  const pieces = chain.map((s) => {
    if (s.kind === 'line') return `L${at(s.to)}`;
    // turned upside down, counter-clockwise is still SVG's 0
    return `A${round(s.radius)} ${round(s.radius)} 0 ${sweepOf(s) > Math.PI ? 1 : 0} ${s.turn === 1 ? 0 : 1} ${at(s.to)}`;
  });
  return `M${at(first.from)}${pieces.join('')}Z`;
}

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
