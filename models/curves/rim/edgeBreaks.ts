import { lengthOf } from '../segment.ts';
import { passings } from './passings.ts';
import { type Plan, quarterTurns } from './plan.ts';

/**
 * Lengths along the outline between which an edge's surface is smooth: the outline's joints, and where a curve that
 * runs `inset` mm inside it passes under one of the profile's joints.
 */
export function edgeBreaks(plan: Plan, inset: number, profileJoints: readonly number[]): readonly number[] {
  const x = (s: number) => {
    const p = plan.at(s);
    return p.x - inset * p.dy;
  };
  const passed = plan.pieces.flatMap((piece, i) => {
    const [start, length] = [plan.joints[i] as number, lengthOf(piece)];
    // x turns back where an arc faces along X, and nowhere else: between those places every joint is passed but once
    const turns = piece.kind === 'line' ? [] : quarterTurns(piece, [0, Math.PI]);
    // kept off the outline's joints, where two pieces answer
    const walk = [start + 1e-9, ...turns.map((t) => start + t * length), start + length - 1e-9];
    return profileJoints.flatMap(passings(x, walk));
  });
  return [...plan.joints, ...passed].sort((p, q) => p - q);
}
