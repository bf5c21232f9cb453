import fc from 'fast-check';
import { type AcceptedDesign, acceptDesign } from '../../src/design/acceptDesign.ts';
import { jobByHand } from '../../src/making/jobByHand.ts';
import type { Setting, Step, StepId } from '../../src/making/step.ts';
import { usualWorkshop, type Workshop } from '../../src/making/workshop.ts';
import { type Changes, designText } from '../support/change.ts';

/** A job of the default design, every number set by hand, with some fields of design and workshop changed. */
export interface Bench {
  readonly accepted: AcceptedDesign;
  readonly workshop: Workshop;
  readonly steps: readonly Step[];
  step(id: StepId): Step | undefined;
  /** The value of a setting, NaN where there is none. */
  value(id: string): number;
  setting(id: string): Setting;
}

export function bench(changes: Changes = {}, tools: Partial<Workshop> = {}): Bench {
  return benchOf(acceptDesign(designText(changes)), tools);
}

export function benchOf(accepted: AcceptedDesign, tools: Partial<Workshop> = {}): Bench {
  const workshop = { ...usualWorkshop(accepted.design.saddle.slotWidth), ...tools };
  const steps = jobByHand(accepted, workshop);
  const settings = new Map(steps.flatMap((step) => step.settings.map((one) => [one.id, one] as const)));
  return {
    accepted,
    workshop,
    steps,
    step: (id) => steps.find((step) => step.id === id),
    value: (id) => settings.get(id)?.value ?? Number.NaN,
    setting: (id) => {
      const one = settings.get(id);
      if (!one) throw new Error(`there is no ${id}`);
      return one;
    },
  };
}

/** Any tools; the cutter a share of the slot's width. */
export const anyTools: fc.Arbitrary<(slotWidth: number) => Partial<Workshop>> = fc
  .record({
    cutterShare: fc.double({ min: 0.25, max: 1, noNaN: true }),
    drill: fc.constantFrom('press', 'hand'),
    slot: fc.constantFrom('router', 'router', 'hand'),
    outline: fc.constantFrom('machine', 'hand'),
    shimSide: fc.constantFrom('front', 'back'),
    reamBy: fc.constantFrom('depth', 'diameter'),
    baseWidth: fc.double({ min: 30, max: 250, noNaN: true }),
    jigLength: fc.double({ min: 100, max: 1000, noNaN: true }),
    greatestPass: fc.double({ min: 0.2, max: 4, noNaN: true }),
    finishAllowance: fc.double({ min: 0, max: 0.5, noNaN: true }),
    topAllowance: fc.double({ min: 0.5, max: 5, noNaN: true }),
  } as const)
  .map(({ cutterShare, ...tools }) => (slotWidth) => ({
    ...tools,
    cutter: Math.min(8, Math.max(0.8, cutterShare * slotWidth)),
  }));
