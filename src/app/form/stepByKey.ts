import type { NumberField } from '../../design/fields/kinds.ts';
import { stepTyped } from './typedForm.ts';

interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly preventDefault: () => void;
}

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

/** The value after an arrow key (one step, ten with Shift) or a page key (ten). Undefined for any other key. */
export function stepByKey(
  event: Key,
  typed: number | string,
  field: NumberField,
): number | string | undefined {
  const steps = STEPS[event.key];
  if (steps === undefined) return undefined;
  event.preventDefault();
  return stepTyped(typed, field, event.shiftKey && Math.abs(steps) === 1 ? 10 * steps : steps);
}
