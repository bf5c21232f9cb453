import { type Chain, type Point, type Segment, sweepOf } from '../../../models/curves/segment.ts';
import { onSheet, type View } from './view.ts';

/**
 * How a curve's own frame lies in its view: turned by `angle` (radians, counter-clockwise), its second axis shortened
 * to `across` of its length, as a leaning slot is seen from above.
 */
export interface Pose {
  readonly angle: number;
  readonly across: number;
}

const UPRIGHT: Pose = { angle: 0, across: 1 };

/** A chain as the `d` of an SVG path, px: lines as lines, arcs as elliptical arcs of the same curve. */
export function pathOf(chain: Chain, view: View, closed: boolean, pose: Pose = UPRIGHT): string {
  const first = chain[0];
  if (!first) return '';
  const at = (p: Point): string => say(onSheet(view, posed(p, pose)));
  const pieces = chain.map((s) => piece(s, view, pose, at));
  return `M${at(first.from)}${pieces.join('')}${closed ? 'Z' : ''}`;
}

function piece(s: Segment, view: View, pose: Pose, at: (p: Point) => string): string {
  if (s.kind === 'line') return `L${at(s.to)}`;
  const [rx, ry] = [view.scale * s.radius, view.scale * s.radius * pose.across];
  const tilt = (-pose.angle * 180) / Math.PI;
  const large = sweepOf(s) > Math.PI ? 1 : 0;
  // the sheet's second axis points down, so a counter-clockwise arc is one of falling angle there
  return `A${short(rx)} ${short(ry)} ${short(tilt)} ${large} ${s.turn === 1 ? 0 : 1} ${at(s.to)}`;
}

function posed([u, v]: Point, { angle, across }: Pose): Point {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [u * c - across * v * s, u * s + across * v * c];
}

export function say([x, y]: Point): string {
  return `${short(x)} ${short(y)}`;
}

/** A hundredth of a pixel is finer than any screen. */
function short(n: number): string {
  return String(Math.round(n * 100) / 100 + 0);
}
