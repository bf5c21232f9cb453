import { measure } from '../report/said.ts';
import type { Setting } from './step.ts';

/** What a measured value is beside its setting, in the setting's unit. */
export interface Judgement {
  /** Measured − wanted. */
  readonly off: number;
  /** How far outside the tolerance, with the sign of `off`; 0 within it, or where there is none. */
  readonly beyond: number;
  /** Undefined where the setting has no tolerance. */
  readonly within: boolean | undefined;
  /** In a line, for page and paper. */
  readonly text: string;
}

/** Decimals that a calliper reads. */
const READ = 2;
/** Binary fractions may add so much without being a fault. */
const ROUNDING = 1e-9;

/**
 * Whether a measured value keeps the setting's tolerance. A limit is kept by what reads like it: half of the last figure
 * that is read is no fault. Throws `RangeError` for what is no finite number.
 */
export function judgeMeasured(setting: Setting, measured: number): Judgement {
  if (!Number.isFinite(measured)) throw new RangeError(`${setting.id}: ${measured} is not a measured value`);
  const off = measured - setting.value;
  const { tolerance, decimals, unit } = setting;
  const say = (value: number) => measure(Math.abs(value), unit, READ);
  const way = off > 0 ? 'more' : 'less';
  const told = Math.abs(off) < 0.005 ? 'as wanted' : `${say(off)} ${way} than wanted`;
  if (!tolerance) return { off, beyond: 0, within: undefined, text: told };
  const over = off > 0 ? off - tolerance.plus : off + tolerance.minus;
  const outside = (off > 0 ? over : -over) > 0.5 * 10 ** -Math.min(READ, decimals) + ROUNDING;
  const text = outside ? `${told}: outside by ${say(over)}` : `${told}: within tolerance`;
  return { off, beyond: outside ? over : 0, within: !outside, text };
}
