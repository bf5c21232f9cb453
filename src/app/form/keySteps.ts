interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly preventDefault: () => void;
}

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

/** How many steps a key moves a value: an arrow one, ten with Shift, a page key ten. Undefined for any other key. */
export function keySteps(event: Key): number | undefined {
  const steps = STEPS[event.key];
  if (steps === undefined) return undefined;
  event.preventDefault();
  return event.shiftKey && Math.abs(steps) === 1 ? 10 * steps : steps;
}
