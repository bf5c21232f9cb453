import { describe, expect, test } from 'vitest';
import { jobIn } from '../../../src/app/making/jobIn.ts';
import { measuredIn } from '../../../src/app/making/measuredIn.ts';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';

const accepted = acceptDesign(initialDesign());
const stepsIn = (typed: Readonly<Record<string, string>>) => {
  const job = jobIn(accepted, typed);
  if (!job.ok) throw new Error(job.problems.map(({ path }) => path).join());
  return job.steps;
};

describe('a job in a workshop as typed', () => {
  test('takes lengths with their unit, and the usual for what is left out', () => {
    const job = jobIn(accepted, { baseWidth: '4 in' });
    expect(job.ok && job.workshop.baseWidth).toBeCloseTo(101.6, 9);
    expect(job.ok && job.workshop.cutter).toBeLessThanOrEqual(accepted.design.saddle.slotWidth);
  });

  test('says each problem at its field', () => {
    const job = jobIn(accepted, { baseWidth: 'wide', drill: 'spoon', jigLength: '5' });
    expect(job.ok ? [] : job.problems.map(({ path }) => path).sort()).toEqual([
      'workshop.baseWidth',
      'workshop.drill',
      'workshop.jigLength',
    ]);
    const wide = jobIn(accepted, { cutter: '5' });
    expect(wide.ok ? [] : wide.problems.map(({ path }) => path)).toEqual(['workshop.cutter']);
  });
});

describe('measured values as typed', () => {
  test('are judged one by one: one that can’t be read takes no other with it', () => {
    const steps = stepsIn({});
    const depth = steps.flatMap(({ settings }) => settings).find(({ id }) => id === 'slot.depth');
    if (!depth) throw new Error('the slot has no depth');
    const verdicts = measuredIn(steps, {
      'slot.depth': String(depth.value),
      'slot.length': 'long',
      'check.mass': '  ',
    });
    expect(verdicts.get('slot.depth')).toMatchObject({ ok: true, judgement: { within: true } });
    expect(verdicts.get('slot.length')).toMatchObject({ ok: false });
    expect(verdicts.has('check.mass'), 'blank is not measured').toBe(false);
  });

  test('for settings that another tool doesn’t have wait, unjudged', () => {
    const typed = { 'slot.fence': '45' };
    expect(measuredIn(stepsIn({}), typed).has('slot.fence')).toBe(true);
    expect(measuredIn(stepsIn({ slot: 'hand' }), typed).size).toBe(0);
  });
});
