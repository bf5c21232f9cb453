import type { Measured } from './meaning.ts';
import type { Step } from './step.ts';

/** Measured − wanted of the first of these settings that was measured, in its unit; undefined where none was. */
export type MeasuredOff = (...ids: readonly string[]) => number | undefined;

/** How far off measured values are; of settings that this job doesn't have, nothing. */
export function measuredOff(steps: readonly Step[], measured: Measured): MeasuredOff {
  const wanted = new Map(steps.flatMap((step) => step.settings.map(({ id, value }) => [id, value] as const)));
  return (...ids) => {
    for (const id of ids) {
      const value = wanted.get(id);
      if (value !== undefined && Object.hasOwn(measured, id)) return (measured[id] as number) - value;
    }
    return undefined;
  };
}
