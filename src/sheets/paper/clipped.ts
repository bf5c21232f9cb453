import { arc, type Chain, line, type Point, pointAt, type Segment } from '../../../models/curves/segment.ts';
import type { Ink } from '../sheet.ts';
import type { Box } from './box.ts';

/** What of inks lies in a box. Text and filled shapes, which can't be cut, are left out: ask `isWhole`. */
export function clipped(inks: readonly Ink[], box: Box): readonly Ink[] {
  return inks.flatMap((ink): readonly Ink[] => {
    if (ink.kind === 'text') return [];
    if (ink.kind === 'line' && ink.fill) {
      const first = ink.chain[0];
      return first && holds(box, first.from) ? [ink] : [];
    }
    const chain = ink.kind === 'circle' ? twoHalves(ink.centre, ink.radius) : ink.chain;
    const runs = runsWithin(chain, box);
    if (runs.length === 1 && runs[0]?.length === chain.length && chain.every((s, i) => runs[0]?.[i] === s))
      return [ink];
    return runs.map((run) => ({ kind: 'line', layer: ink.layer, pen: ink.pen, chain: run, closed: false }));
  });
}

function holds(box: Box, [x, y]: Point): boolean {
  return x >= box.left && x <= box.right && y >= box.bottom && y <= box.top;
}

function twoHalves([x, y]: Point, r: number): Chain {
  return [arc([x + r, y], [x - r, y], [x, y], 1), arc([x - r, y], [x + r, y], [x, y], 1)];
}

/** The parts of a chain inside a box, each as long as it goes without a break. */
function runsWithin(chain: Chain, box: Box): readonly Chain[] {
  const runs: Segment[][] = [];
  let open: Segment[] | undefined;
  for (const s of chain) {
    const stops = [0, ...cuts(s, box), 1];
    for (const [i, to] of stops.slice(1).entries()) {
      const from = stops[i] as number;
      if (to - from < 1e-9) continue;
      if (!holds(box, pointAt(s, (from + to) / 2))) {
        open = undefined;
        continue;
      }
      const piece = from === 0 && to === 1 ? s : part(s, from, to);
      if (open) open.push(piece);
      else {
        open = [piece];
        runs.push(open);
      }
    }
  }
  return runs;
}

function part(s: Segment, from: number, to: number): Segment {
  const [a, b] = [pointAt(s, from), pointAt(s, to)];
  return s.kind === 'line' ? line(a, b) : { ...s, from: a, to: b };
}

/** Shares along a piece at which it crosses the box's sides, in order. */
function cuts(s: Segment, box: Box): readonly number[] {
  const sides = [
    [0, box.left],
    [0, box.right],
    [1, box.bottom],
    [1, box.top],
  ] as const;
  return sides
    .flatMap(([axis, at]) => crossingsOf(s, axis, at))
    .filter((t) => t > 1e-9 && t < 1 - 1e-9)
    .sort((a, b) => a - b);
}

function crossingsOf(s: Segment, axis: 0 | 1, at: number): readonly number[] {
  if (s.kind === 'line') {
    const run = s.to[axis] - s.from[axis];
    return run === 0 ? [] : [(at - s.from[axis]) / run];
  }
  const off = (at - s.centre[axis]) / s.radius;
  if (Math.abs(off) >= 1) return [];
  const angles = axis === 0 ? [Math.acos(off), -Math.acos(off)] : [Math.asin(off), Math.PI - Math.asin(off)];
  const start = Math.atan2(s.from[1] - s.centre[1], s.from[0] - s.centre[0]);
  const end = Math.atan2(s.to[1] - s.centre[1], s.to[0] - s.centre[0]);
  const whole = 2 * Math.PI;
  const turnTo = (angle: number) => {
    const raw = s.turn * (angle - start);
    return raw - Math.floor(raw / whole) * whole;
  };
  const sweep = turnTo(end) || whole;
  return angles.map((angle) => turnTo(angle) / sweep);
}
