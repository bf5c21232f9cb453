import { describe, expect, test } from 'vitest';
import { disc, level, rounded } from '../../surface/slab.ts';
import { edged } from './edged.ts';

// Heights and contacts worked out by hand on blocks: derived.

const size = 2;
const chamfered = (outline: Parameters<typeof edged>[0], profile = level(9)) =>
  edged(outline, profile, { kind: 'chamfer', size });

describe('the height that is left', () => {
  test('along straight walls and round a corner', () => {
    const { left } = chamfered(rounded(100, 30, 8));
    for (const d of [0.01, 0.3, 1, 1.9]) {
      for (const [x, y] of [
        [3, 15 - d],
        [3, d - 15],
        [50 - d, 2],
        [d - 50, 2],
        [42 + (8 - d) * Math.cos(0.7), 7 + (8 - d) * Math.sin(0.7)],
      ] as const) {
        expect(left(x, y), `${d} mm in, at (${x}, ${y})`).toBeCloseTo(9 - size + d, 9);
      }
    }
    expect(left(3, 15 - size - 0.001)).toBe(9);
    expect(left(3, 0)).toBe(9);
  });

  test('at a tip whose top falls: from 2 along the top to 2 down the wall', () => {
    const slope = 0.25;
    const { left } = chamfered(rounded(40, 30, 8), level(9, slope));
    const onTop = size / Math.hypot(1, slope);
    const [z0, z1] = [9 - slope * 20 - size, 9 - slope * (20 - onTop)];
    for (const d of [0.2, 1, 1.8]) expect(left(20 - d, 0)).toBeCloseTo(z0 + ((z1 - z0) * d) / onTop, 9);
    expect(left(20 - onTop - 0.001, 0)).toBeCloseTo(9 - slope * (20 - onTop - 0.001), 9);
  });

  test('on a round block it is the same all round', () => {
    const { left } = chamfered(disc(20));
    for (let i = 0; i < 12; i++) {
      const a = 0.1 + (i * Math.PI) / 6;
      expect(left(19.5 * Math.cos(a), 19.5 * Math.sin(a))).toBeCloseTo(9 - size + 0.5, 9);
    }
  });
});

describe('its sections', () => {
  const { edge, plan, top, left } = chamfered(rounded(40, 30, 8), level(9, 0.25));
  const places = Array.from({ length: Math.floor(plan.length / 1.93) }, (_, i) => 0.37 + 1.93 * i);

  test('are straights, square to the edge, that end as far from it on the top as on the wall', () => {
    for (const s of places) {
      const p = plan.at(s);
      const z = top.height(p.x, 0);
      const rise = top.slope(p.x, 0) * p.dx;
      const at = edge.across(s);
      for (const share of [0, 0.3, 1]) {
        const [x, y, height] = at(share);
        const along = (x - p.x) * p.dx + (y - p.y) * p.dy + (height - z) * rise;
        expect(along, `square to the edge at ${share} across, ${s} along`).toBeCloseTo(0, 9);
        at(0).forEach((v, i) => {
          const straight = v + share * ((at(1)[i] as number) - v);
          expect([x, y, height][i], `straight at ${s}`).toBeCloseTo(straight, 9);
        });
      }
      for (const end of [0, 1]) {
        const [x, y, height] = at(end);
        expect(Math.hypot(x - p.x, y - p.y, height - z), `end ${end} at ${s}`).toBeCloseTo(size, 9);
      }
      expect(at(0)[2], `on the top at ${s}`).toBeCloseTo(top.height(at(0)[0], 0), 9);
      const wall = plan.at(edge.wallAt(s));
      expect(Math.hypot(at(1)[0] - wall.x, at(1)[1] - wall.y), `on the wall at ${s}`).toBeLessThan(1e-9);
    }
  });

  test('lie on the surface whose heights are given', () => {
    for (const s of places) {
      const [x, y, z] = edge.across(s)(0.4);
      expect(left(x, y), `at ${s} along`).toBeCloseTo(z, 7);
    }
  });
});
