import { describe, expect, test } from 'vitest';
import { disc, level, rounded } from '../../surface/slab.ts';
import { edged } from './edged.ts';

// Heights and contacts worked out by hand on blocks: derived.

const size = 2;
const round = (outline: Parameters<typeof edged>[0], profile = level(9)) =>
  edged(outline, profile, { kind: 'round', size });
/** Height left `d` from a straight wall under a level top. */
const quarter = (d: number) => 9 - size + Math.sqrt(size ** 2 - (size - d) ** 2);

describe('the height that is left', () => {
  test('along straight walls and round a corner', () => {
    const { left } = round(rounded(100, 30, 8));
    for (const d of [0.01, 0.3, 1, 1.9]) {
      for (const [x, y] of [
        [3, 15 - d],
        [3, d - 15],
        [50 - d, 2],
        [d - 50, 2],
        [42 + (8 - d) * Math.cos(0.7), 7 + (8 - d) * Math.sin(0.7)],
      ] as const) {
        expect(left(x, y), `${d} mm in, at (${x}, ${y})`).toBeCloseTo(quarter(d), 9);
      }
    }
    expect(left(3, 15 - size - 0.001)).toBe(9);
    expect(left(3, 0)).toBe(9);
  });

  test('over a top that falls toward the tip: the ball touches where it is square to both', () => {
    const slope = 0.25;
    const steep = Math.hypot(1, slope);
    const { left } = round(rounded(40, 30, 8), level(9, slope));
    // at the tip: centre 2 inside, and 2 square under the top
    const centre = 9 - slope * 18 - size * steep;
    for (const d of [0.1, 0.7, 1.4]) {
      expect(left(20 - d, 0)).toBeCloseTo(centre + Math.sqrt(size ** 2 - (size - d) ** 2), 9);
    }
    const touch = 20 - size + (size * slope) / steep;
    expect(left(touch - 0.001, 0)).toBeCloseTo(9 - slope * (touch - 0.001), 9);
    // along ±y: the section square to the edge is the plain round
    expect(left(1, 15 - 0.6)).toBeCloseTo(9 - slope - steep * (9 - quarter(0.6)), 9);
  });

  test('on a round block it is the same all round', () => {
    const { left } = round(disc(20));
    for (let i = 0; i < 12; i++) {
      const a = 0.1 + (i * Math.PI) / 6;
      expect(left(19.5 * Math.cos(a), 19.5 * Math.sin(a))).toBeCloseTo(quarter(0.5), 9);
    }
  });
});

describe('its sections', () => {
  test('are arcs of the ball from where it touches the top to where it touches the wall', () => {
    const { edge, plan, top } = round(rounded(40, 30, 8), level(9, 0.25));
    for (let s = 0.37; s < plan.length; s += 1.93) {
      const p = plan.at(s);
      const [cx, cy] = [p.x - size * p.dy, p.y + size * p.dx];
      const cz = top.height(cx, size);
      const at = edge.across(s);
      for (const share of [0, 0.3, 0.5, 1]) {
        const [x, y, z] = at(share);
        expect(Math.hypot(x - cx, y - cy, z - cz), `radius at ${share} across, ${s} along`).toBeCloseTo(
          size,
          9,
        );
      }
      expect(at(0)[2], `on the top at ${s}`).toBeCloseTo(top.height(at(0)[0], 0), 9);
      expect(Math.hypot(at(1)[0] - p.x, at(1)[1] - p.y), `on the wall at ${s}`).toBeLessThan(1e-9);
      expect(edge.wallAt(s)).toBe(s);
    }
  });

  test('lie on the surface whose heights are given', () => {
    const { edge, plan, left } = round(rounded(40, 30, 8), level(9, 0.25));
    for (let s = 0.37; s < plan.length; s += 1.93) {
      const [x, y, z] = edge.across(s)(0.4);
      expect(left(x, y), `at ${s} along`).toBeCloseTo(z, 7);
    }
  });
});
