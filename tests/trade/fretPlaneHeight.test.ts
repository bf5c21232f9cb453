import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fretPlace } from '../../models/curves/fretboard.ts';
import { domeRise } from '../../src/trade/domeRise.ts';
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

describe('a dome’s rise from joint to saddle', () => {
  test('lies on the dome’s sphere', () => {
    const rise = domeRise(7620, 287.39);
    expect(Math.hypot(287.39, 7620 - rise)).toBeCloseTo(7620, 9);
    expect(rise).toBeCloseTo(5.4214, 3);
  });

  test('a usual neck on a full 25 ft dome gives a usual height: 1.5° (common practice: 9–11)', () => {
    const p = fretPlaneHeight({
      ...neck,
      neckAngle: 1.5,
      domeRise: domeRise(7620, S - neck.jointFromNut),
    });
    expect(p).toBeGreaterThan(9);
    expect(p).toBeLessThan(11);
  });
});
