import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fretPlace } from '../../models/curves/fretboard.ts';
import { fretPlaneHeight } from '../../src/trade/fretPlaneHeight.ts';

const S = 645.16;
const neck = { by: 'neck', overJoint: 7.35, jointFromNut: fretPlace(S, 14), saddleFromNut: S } as const;

describe('the frets’ plane over the glue plane at the saddle line', () => {
  test('7.35 at a fret-14 joint, 0.5°, scale 645.16, flat top: 9.8580 (derived)', () => {
    const p = fretPlaneHeight({ ...neck, neckAngle: 0.5, domeRise: 0 });
    expect(Math.abs(p - 9.858)).toBeLessThan(5e-5);
  });

  test('a neck set level keeps its height; the dome takes its rise from it', () => {
    expect(fretPlaneHeight({ ...neck, neckAngle: 0, domeRise: 0 })).toBe(7.35);
    expect(fretPlaneHeight({ ...neck, neckAngle: 0, domeRise: 1.25 })).toBeCloseTo(6.1, 12);
  });

  test('by coordinates: a straightedge at that height stands square on the neck’s own normal', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (neckAngle, rise) => {
          const p = fretPlaneHeight({ ...neck, neckAngle, domeRise: rise });
          // both points seen from the rim's plane: the glue plane stands `rise` over it
          const along = [neck.saddleFromNut - neck.jointFromNut, p + rise - neck.overJoint] as const;
          const a = (neckAngle * Math.PI) / 180;
          const normal = [-Math.sin(a), Math.cos(a)] as const;
          expect(along[0] * normal[0] + along[1] * normal[1]).toBeCloseTo(0, 9);
        },
      ),
      { seed: 303, numRuns: 200 },
    );
  });

  test('measured with the bridge off it is the measure', () => {
    expect(fretPlaneHeight({ by: 'straightedge', overSoundboard: 10.2 })).toBe(10.2);
  });
});

test('a usual neck on a full 25 ft dome gives a usual height: 1.5° (common practice: 9–11)', () => {
  // how much higher than at the joint the dome's sphere stands at the saddle
  const domeRise = 7620 - Math.sqrt(7620 ** 2 - (S - neck.jointFromNut) ** 2);
  const p = fretPlaneHeight({ ...neck, neckAngle: 1.5, domeRise });
  expect(p).toBeGreaterThan(9);
  expect(p).toBeLessThan(11);
});
