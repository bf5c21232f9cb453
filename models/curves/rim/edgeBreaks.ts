import { lengthOf, sweepOf } from '../segment.ts';
import type { Plan } from './plan.ts';

/**
 * Lengths along the outline between which an edge's surface is smooth: the outline's joints, and where a curve that
 * runs `inset` mm inside it passes under one of the profile's joints.
 */
export function edgeBreaks(plan: Plan, inset: number, profileJoints: readonly number[]): readonly number[] {
  const x = (s: number) => {
    const p = plan.at(s);
    return p.x - inset * p.dy;
  };
  const out = [...plan.joints];
  plan.pieces.forEach((piece, i) => {
    const start = plan.joints[i] as number;
    // x turns back at most where an arc faces along X: pieces of an eighth of a turn show every passing
    const n = piece.kind === 'line' ? 1 : Math.ceil(sweepOf(piece) / (Math.PI / 4));
    const step = lengthOf(piece) / n;
    for (let k = 0; k < n; k++) {
      // kept off the joints, where two pieces answer
      const [a, b] = [start + k * step + 1e-9, start + (k + 1) * step - 1e-9];
      for (const joint of profileJoints) {
        if (x(a) - joint > 0 !== x(b) - joint > 0) out.push(passing(x, joint, a, b));
      }
    }
  });
  return out.sort((p, q) => p - q);
}

function passing(x: (s: number) => number, level: number, from: number, to: number): number {
  let [a, b] = [from, to];
  const rising = x(b) > x(a);
  for (let i = 0; i < 48; i++) {
    const middle = (a + b) / 2;
    if (x(middle) < level === rising) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
