import { expect, test } from 'vitest';
import { jobIn } from '../../../src/app/making/jobIn.ts';
import { judgedJob } from '../../../src/app/making/judgedJob.ts';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { designText } from '../../support/change.ts';

const accepted = acceptDesign(designText({ 'top.thickness': 9.5 }));

test('a saddle that makes up for a thin bridge is judged by the heights wanted now', () => {
  const job = jobIn(accepted, {});
  if (!job.ok) throw new Error('the usual workshop can make it');
  const wanted = (steps: typeof job.steps) =>
    steps.flatMap(({ settings }) => settings).find(({ id }) => id === 'saddle.showing-1')?.value as number;
  const before = wanted(job.steps);
  const typed = {
    'check.thickness': '9.35',
    'saddle.showing-1': (before + 0.15).toFixed(2),
    'check.tip': 'x',
  };
  const { steps, verdicts, measured } = judgedJob(accepted, job.steps, typed);
  expect(wanted(steps)).toBeCloseTo(before + 0.15, 9);
  expect(verdicts.get('saddle.showing-1')).toMatchObject({ ok: true, judgement: { within: true } });
  expect(verdicts.get('check.thickness')).toMatchObject({ ok: true, judgement: { within: false } });
  expect(Object.keys(measured).sort()).toEqual(['check.thickness', 'saddle.showing-1']);
  expect(judgedJob(accepted, job.steps, {}).steps).toEqual(job.steps);
});
