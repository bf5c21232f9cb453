import type { DesignText } from '../../design/design.ts';
import { rangeOf } from '../../design/problem.ts';
import { MEASURES } from '../../report/aim/measures.ts';
import type { Accepted } from './judge.ts';

/**
 * A design that has just been given something to aim at, with what it comes to now as the aim: so nothing moves until the
 * builder moves it. As it is where that isn't known, or lies beyond what may be aimed at.
 */
export function aimingAtPresent(text: DesignText, now: Accepted | undefined): DesignText {
  const { of } = text.aim;
  if (!now || (of !== 'mass' && of !== 'stiffness' && of !== 'tip')) return text;
  const value = Math.round(MEASURES[of].of(now.design, now.curves) * 100) / 100;
  const { min, max } = rangeOf(`aim.${of}`);
  return value < min || value > max ? text : { ...text, aim: { ...text.aim, [of]: value } };
}
