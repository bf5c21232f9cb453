import { expect, test } from 'vitest';
import { balance } from '../../src/app/figures/figure.ts';
import { solidFigures } from '../../src/app/figures/solidFigures.ts';

test('the centre of mass is told by where one looks for it', () => {
  expect(balance(-5.966, 3.75)).toBe('5.97 mm behind, 3.75 mm up');
  expect(balance(0.5, 4)).toBe('0.50 mm before, 4.00 mm up');
});

test('the exact solid’s figures stand in the words and the form of those beside them', () => {
  const measured = {
    valid: true,
    volumeMm3: 32_092,
    areaMm2: 13_124,
    boxMm: [-76.5, -25, -0.39, 76.5, 11, 9.5],
    centroidMm: [-0.25, -5.97, 3.75],
    throughHoles: 6,
  } as const;
  const figures = solidFigures(measured, 'drilled', 'right');
  const value = (label: string) => figures.find((figure) => figure.label === label);
  expect(value('Over all')).toMatchObject({
    value: '153.00 × 36.00 × 9.89',
    formula: 'lowest point −0.39, highest 9.50 over the glue plane',
  });
  expect(value('Centre of mass, as drilled')?.value).toBe('5.97 mm behind, 3.75 mm up');
  expect(value('Centre of mass, as drilled')?.formula).toContain('−0.25 mm toward the treble side');
  const left = solidFigures(measured, 'reamed', 'left').find(
    ({ label }) => label === 'Centre of mass, as reamed',
  );
  expect(left?.formula, 'left-handed, the treble side is −X').toContain('; 0.25 mm toward the treble side');
});
