import type { Setting, Step } from './step.ts';

/** Whether a setting has a measured value: one with a tolerance, and everything that the finished bridge is measured for. */
export function isMeasured({ tolerance }: Setting, { id }: Pick<Step, 'id'>): boolean {
  return tolerance !== undefined || id === 'check';
}
