import { fixed } from '../report/said.ts';
import type { Setting, Tolerance } from './step.ts';

/** A tolerance as it stands beside its value: `±0.10`, `+0.05 −0.00`, with as many decimals as tell something. */
export function toleranceText({ minus, plus }: Tolerance, { decimals }: Pick<Setting, 'decimals'>): string {
  const say = (off: number) => fixed(off, Math.max(2, decimals));
  return minus === plus ? `±${say(plus)}` : `+${say(plus)} −${say(minus)}`;
}
