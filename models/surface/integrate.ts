import type { Plan } from '../curves/rim/plan.ts';
import type { EdgeCut } from '../curves/rim/rim.ts';
import type { Top } from '../curves/rim/top.ts';
import { lengthOf, type Segment, sweepOf } from '../curves/segment.ts';
import { undersideHeight } from '../curves/underside.ts';
import type { Body } from './cut.ts';
import { between, gauss, panels } from './gauss.ts';
import { type Intervals, within } from './interval.ts';
import type { Parts } from './parts.ts';
import { columns } from './surface.ts';

/** Volume in mm³ and its first moments about the part's axes in mm⁴. */
export interface Moments {
  readonly volume: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A sum that grows by columns of wood. */
class Sum implements Moments {
  volume = 0;
  x = 0;
  y = 0;
  z = 0;

  /** Adds what stands over `area` mm² at (x, y) between two heights. */
  add(x: number, y: number, from: number, to: number, area: number): void {
    const volume = (to - from) * area;
    this.volume += volume;
    this.x += volume * x;
    this.y += volume * y;
    this.z += (volume * (from + to)) / 2;
  }
}

/**
 * Volume and first moments of the wood: the body's, less what the edge and then each cut takes. Every term is
 * integrated in coordinates in which it is smooth, so that few places give a millionth of the volume.
 */
export function integrate(parts: Parts): Moments {
  const sum = new Sum();
  addBody(sum, parts);
  if (parts.edge) takeEdge(sum, parts.edge, parts);
  const body: Body = {
    top: (x) => parts.top.height(x, 0),
    under: (x, y) => undersideHeight(parts.underside, x, y),
  };
  parts.cuts.forEach((cut, made) => {
    cut.places(body, (x, y, area) => {
      const removed = cut.removed(x, y);
      if (!removed) return;
      const wood: Intervals = within(columns(parts, made, x, y), removed[0], removed[1]);
      for (const [from, to] of wood) sum.add(x, y, from, to, -area);
    });
  });
  return sum;
}

/**
 * The body between underside and uncut top, by Green's theorem: ∬ g dA = ∮ G dy, with G the integral of g along x
 * from 0. Lines along X give nothing.
 */
function addBody(sum: Sum, { plan, top, underside }: Parts): void {
  alongOutline(plan, top, (x, y, dy) => {
    alongTop(top, x, (xi, z, dx) => sum.add(xi, y, undersideHeight(underside, xi, y), z, dx * dy));
  });
}

/** Visits places on the outline with the dy that each stands for, smooth pieces apart. */
function alongOutline(plan: Plan, top: Top, visit: (x: number, y: number, dy: number) => void): void {
  const joints = top.joints(0);
  plan.pieces.forEach((piece, i) => {
    const start = plan.joints[i] as number;
    const stops = panels(0, lengthOf(piece), passings(piece, joints));
    stops.slice(1).forEach((to, k) => {
      between(stops[k] as number, to, gauss(8), (along, ds) => {
        // kept off the piece's very ends, so that this piece answers
        const p = plan.at(start + along);
        if (p.dy !== 0) visit(p.x, p.y, p.dy * ds);
      });
    });
  });
}

/** Lengths along a piece of the outline at which x passes one of the profile's joints; arcs in eighths of a turn too. */
function passings(piece: Segment, joints: readonly number[]): readonly number[] {
  const length = lengthOf(piece);
  if (piece.kind === 'line') {
    const run = piece.to[0] - piece.from[0];
    return joints.map((x) => ((x - piece.from[0]) / run) * length);
  }
  const start = Math.atan2(piece.from[1] - piece.centre[1], piece.from[0] - piece.centre[0]);
  const found: number[] = [];
  for (const x of joints) {
    const share = (x - piece.centre[0]) / piece.radius;
    if (Math.abs(share) >= 1) continue;
    for (const angle of [Math.acos(share), -Math.acos(share)]) {
      const raw = piece.turn * (angle - start);
      found.push((raw - Math.floor(raw / (2 * Math.PI)) * 2 * Math.PI) * piece.radius);
    }
  }
  const n = Math.ceil(sweepOf(piece) / (Math.PI / 4));
  for (let k = 1; k < n; k++) found.push((length * k) / n);
  return found;
}

/** Visits places on the top from x = 0 to `end` (either way) with the dx that each stands for. */
function alongTop(top: Top, end: number, visit: (x: number, z: number, dx: number) => void): void {
  const [low, high, sign] = end < 0 ? [end, 0, -1] : [0, end, 1];
  const stops = panels(low, high, top.joints(0));
  stops.slice(1).forEach((to, i) => {
    const from = stops[i] as number;
    const piece = top.pieces.find((s) => s.from[0] <= from + 1e-9 && s.to[0] >= to - 1e-9);
    if (piece?.kind !== 'arc') {
      between(from, to, gauss(6), (x, dx) => visit(x, top.height(x, 0), sign * dx));
      return;
    }
    // by the angle from the arc's vertical: steep ends stay smooth
    const angle = (x: number) => Math.asin(Math.max(-1, Math.min(1, (x - piece.centre[0]) / piece.radius)));
    between(angle(from), angle(to), gauss(8), (a, da) => {
      const up = piece.radius * Math.cos(a);
      visit(piece.centre[0] + piece.radius * Math.sin(a), piece.centre[1] - piece.turn * up, sign * up * da);
    });
  });
}

/** What the edge takes: between its surface and the uncut top, by the surface's own coordinates. */
function takeEdge(sum: Sum, edge: EdgeCut, { top }: Parts): void {
  const rule = gauss(8);
  // steps for the plan area by central differences, mm along the edge and share across it
  const [ds, dt] = [1e-5, 1e-5];
  edge.breaks.slice(1).forEach((to, i) => {
    const from = edge.breaks[i] as number;
    if (to - from < 1e-9) return;
    between(from, to, rule, (s, alongWeight) => {
      const [here, before, after] = [edge.across(s), edge.across(s - ds), edge.across(s + ds)];
      between(0, 1, rule, (share, acrossWeight) => {
        const [x, y, z] = here(share);
        const [a, b] = [before(share), after(share)];
        const [c, d] = [here(share - dt), here(share + dt)];
        const area = ((b[0] - a[0]) * (c[1] - d[1]) - (b[1] - a[1]) * (c[0] - d[0])) / (4 * ds * dt);
        sum.add(x, y, z, top.height(x, 0), -area * alongWeight * acrossWeight);
      });
    });
  });
}
