import { beforeAll, describe, expect, test } from 'vitest';
import { writeStep } from '../../models/kernel/step.ts';
import { fitOf } from '../../src/cli/fitOf.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { change } from '../support/change.ts';
import { type Roadside, roadside } from '../support/roads.ts';
import { type Read, secondReader } from '../support/secondReader.ts';

/*
 * The slot that the fit asks for is the slot in the file: an old kernel of other hands reads the STEP back, and the slot's
 * two side faces lie where the strings put them. The origin is the middle of the slot on the guitar's centre line, so
 * that its faces stand half a width to either side of it.
 */
const DESIGNS = {
  'right-handed': {},
  'left-handed': { 'guitar.hand': 'left' },
  'of another set and tuning, filed straight': {
    'strings.notes': ['D4', 'A3', 'G3', 'D3', 'A2', 'D2'],
    'strings.cores': ['0.012 in', '0.016 in', '0.012 in', '0.015 in', '0.017 in', '0.019 in'],
    'action.bass': 2.8,
    'saddle.filed': 'straight',
    'saddle.slotWidth': '3/32 in',
  },
  'open, for the smallest largest error': {
    'saddle.line': 'largest',
    'saddle.ends': 'open',
    'saddle.depthBy': 'set',
    'saddle.depth': 4,
  },
  'left-handed and tilted': { 'guitar.hand': 'left', 'saddle.tilt': 6 },
} as const;

let side: Roadside;
let read: (step: Uint8Array) => Read;
beforeAll(async () => {
  side = await roadside();
  read = await secondReader();
});

describe('the slot in the STEP file is the fit’s', () => {
  test.each(Object.entries(DESIGNS))('%s', async (_, changes) => {
    const accepted = acceptDesign(change(initialDesign(), changes));
    const fit = fitOf(accepted);
    const { slot, strings, numbers, thicknessMm } = fit;
    for (const path of ['saddle.angle', 'saddle.setback'] as const) expect(numbers[path].by).toBe('solved');

    const { shape } = await side.builder.build(accepted.curves, 'drilled');
    const { planes } = read(writeStep(side.kernel, shape, 'Slot', 'AP214'));

    // the slot's line under the first and the last string, nearer the nut by what its set-back there is less
    const [first, last] = [strings[0], strings.at(-1)];
    if (!first || !last) throw new Error('no strings');
    const along = [last.xMm - first.xMm, slot.setbackMm.treble - slot.setbackMm.bass] as const;
    const size = Math.hypot(...along);
    const tilt = (accepted.design.saddle.tilt * Math.PI) / 180;
    // square to the slot's walls: across the line in plan, lifted with the tilt
    const across = [
      (-along[1] / size) * Math.cos(tilt),
      (along[0] / size) * Math.cos(tilt),
      Math.sign(along[0]) * Math.sin(tilt),
    ] as const;
    const dot = (a: readonly number[], b: readonly number[]) =>
      a.reduce((sum, one, i) => sum + one * (b[i] ?? 0), 0);
    const sides = planes
      .filter(({ normal }) => 1 - Math.abs(dot(normal, across)) < 1e-6)
      .map(({ normal, point }) => {
        const turn = Math.sign(dot(normal, across));
        // from the slot's middle on the uncut top
        const from = [point[0], point[1], point[2] - thicknessMm];
        return { normal: normal.map((n) => n * turn), distance: turn * dot(normal, from) };
      })
      .sort((a, b) => a.distance - b.distance);
    expect(sides, 'faces that run as the slot does').toHaveLength(2);

    const half = accepted.design.saddle.slotWidth / 2;
    for (const [i, wall] of sides.entries()) {
      const off = Math.hypot(...wall.normal.map((n, k) => n - (across[k] ?? 0)));
      expect(off, 'direction of the wall, radians').toBeLessThan(1e-6);
      const wanted = (i === 0 ? -1 : 1) * half;
      expect(Math.abs(wall.distance - wanted), `wall at ${wall.distance} mm`).toBeLessThan(1e-6);
      const [nx = 0, ny = 1] = wall.normal.map((n) => n * Math.sign(wall.normal[1] ?? 1));
      const leans =
        (accepted.design.guitar.hand === 'left' ? 1 : -1) * ((Math.atan2(nx, ny) * 180) / Math.PI);
      expect(Math.abs(leans - slot.angleDeg), `angle in the file ${leans}°`).toBeLessThan(1e-6);
    }
  });
});
