import { describe, expect, test } from 'vitest';
import { HEIGHTS, planOverlay, profileOverlay } from '../../../src/app/compare/overlay.ts';
import { WIDTH } from '../../../src/app/picture/mark.ts';
import { fitOf, someFits } from '../fit/fitOf.ts';
import { extent, placeOf, pointsOf } from '../fit/marks.ts';

const usual = fitOf().curves;
const long = { 'footprint.length': 176, 'top.thicknessBy': 'set', 'top.thickness': 11 };

describe.each(Object.entries({ ...someFits, 'a longer, thicker one': long }))(
  '%s over the usual',
  (_, changes) => {
    const { curves, design } = fitOf(changes);
    const plan = planOverlay(curves, usual);
    const profile = profileOverlay(curves, usual);

    test('nothing outside its box', () => {
      for (const drawn of [plan, profile]) {
        const { xs, ys } = extent(drawn);
        expect(Math.min(...xs)).toBeGreaterThanOrEqual(0);
        expect(Math.max(...xs)).toBeLessThanOrEqual(WIDTH);
        expect(Math.min(...ys)).toBeGreaterThanOrEqual(0);
        expect(Math.max(...ys)).toBeLessThanOrEqual(drawn.height);
      }
    });

    test('both to one scale, the middles of their slots on one another', () => {
      const wide = (name: string) => {
        const xs = pointsOf(plan, name).map(([x]) => x);
        expect((Math.min(...xs) + Math.max(...xs)) / 2, 'symmetric about the middle').toBeCloseTo(
          WIDTH / 2,
          1,
        );
        return Math.max(...xs) - Math.min(...xs);
      };
      expect(wide('bench outline') / wide('reference outline')).toBeCloseTo(design.footprint.length / 153, 3);
      const middle = (name: string) => {
        const points = pointsOf(plan, name);
        const of = (k: 0 | 1) => {
          const values = points.map((p) => p[k]);
          return (Math.min(...values) + Math.max(...values)) / 2;
        };
        return [of(0), of(1)] as const;
      };
      const [x, y] = middle('bench slot');
      const [rx, ry] = middle('reference slot');
      expect(x).toBeCloseTo(rx, 1);
      expect(y).toBeCloseTo(ry, 1);
      const [px, py] = placeOf(plan, 'bench pin 1');
      const scale = wide('bench outline') / design.footprint.length;
      expect((px - WIDTH / 2) / scale).toBeCloseTo(curves.pins[0]?.at[0] ?? 0, 1);
      expect((ry - py) / scale, 'the nut is up').toBeCloseTo(curves.pins[0]?.at[1] ?? 0, 1);
    });

    test('profiles are as high as the bridges, as many times larger as is said', () => {
      const tall = (name: string) => {
        const points = pointsOf(profile, name);
        const scale =
          (Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x))) /
          (name.startsWith('bench') ? design.footprint.length : 153);
        const middle = points.filter(([x]) => Math.abs(x - WIDTH / 2) < 0.01).map(([, y]) => y);
        return (Math.max(...middle) - Math.min(...middle)) / scale / HEIGHTS;
      };
      expect(tall('bench profile')).toBeCloseTo(curves.profile.thickness, 2);
      expect(tall('reference profile')).toBeCloseTo(usual.profile.thickness, 2);
    });
  },
);
