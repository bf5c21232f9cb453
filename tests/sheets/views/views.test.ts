import { expect, test } from 'vitest';
import { chainLength, enclosedArea } from '../../../models/curves/chain.ts';
import { elevationOutline } from '../../../models/curves/elevationOutline.ts';
import { distance } from '../../../models/curves/segment.ts';
import { surfaceOf } from '../../../models/surface/surface.ts';
import { drawingSheets } from '../../../src/sheets/drawingSheets.ts';
import { PAPERS } from '../../../src/sheets/sheet.ts';
import { acrossView } from '../../../src/sheets/views/acrossView.ts';
import { alongView } from '../../../src/sheets/views/alongView.ts';
import { hatching } from '../../../src/sheets/views/hatching.ts';
import { sectionPin } from '../../../src/sheets/views/sectionPin.ts';
import { slotMouth } from '../../../src/sheets/views/slotMouth.ts';
import { wallAt, wallFoot } from '../../../src/sheets/views/slotWalls.ts';
import { dejaVu } from '../../support/dejaVu.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { greatest, measure } from '../../support/inkOf.ts';
import { starters } from '../../support/starters.ts';

const all = [...starters.values(), ...acceptedDesigns(12, 8).accepted];
const mmA4 = { paper: PAPERS.A4, units: 'mm', holes: 'drilled', date: '' } as const;

test('plan and front elevation are the curves themselves at the sheet’s scale', () => {
  for (const accepted of starters.values()) {
    const [views] = drawingSheets(accepted, dejaVu, mmA4);
    if (!views) throw new Error('no views');
    const plan = measure(greatest(views, 'outline'));
    const front = measure(greatest(views, 'profile'));
    const { curves, design } = accepted;
    const { scale } = views;
    const body = elevationOutline(curves).body;
    expect(plan.area / scale ** 2, design.guitar.name).toBeCloseTo(enclosedArea(curves.outline), 6);
    expect(plan.length / scale, design.guitar.name).toBeCloseTo(chainLength(curves.outline), 6);
    expect(front.area / scale ** 2, design.guitar.name).toBeCloseTo(enclosedArea(body), 6);
  }
});

test('every starter is drawn at full size on both papers', () => {
  for (const accepted of starters.values())
    for (const paper of Object.values(PAPERS))
      for (const sheet of drawingSheets(accepted, dejaVu, { ...mmA4, paper }))
        expect(sheet.scale, `${accepted.design.guitar.name} ${paper.name} ${sheet.id}`).toBe(1);
});

test('hatching lies on cut wood only, and covers it', () => {
  const spacing = 2;
  for (const { curves, design } of all) {
    const surface = surfaceOf(curves, 'drilled');
    const pin = sectionPin(curves);
    const { pieces } = acrossView(curves, pin, 'drilled');
    const view = { scale: 5, x: 40, y: 70 };
    const strokes = hatching(pieces, view, spacing).flatMap((ink) => (ink.kind === 'line' ? ink.chain : []));
    let length = 0;
    for (const { from, to } of strokes) {
      length += distance(from, to);
      for (const t of [0.02, 0.5, 0.98]) {
        const y = (from[0] + t * (to[0] - from[0]) - view.x) / view.scale;
        const z = (from[1] + t * (to[1] - from[1]) - view.y) / view.scale;
        // within a section's own stray
        const wood = [-1, 0, 1].some((dy) =>
          surface
            .columns(pin.at[0], y + dy * 0.003)
            .some(([low, high]) => z > low - 0.003 && z < high + 0.003),
        );
        expect(wood, `${design.guitar.name}: a stroke at y ${y}, z ${z}`).toBe(true);
      }
    }
    // strokes a spacing apart stand for the area: derived
    const area = pieces.reduce(
      (sum, { outer, holes }) => sum + shoelace(outer) + holes.reduce((s, h) => s + shoelace(h), 0),
      0,
    );
    expect((length * spacing) / (area * view.scale ** 2), design.guitar.name).toBeCloseTo(1, 1);
  }
});

function shoelace(points: readonly (readonly [number, number])[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length] ?? [0, 0];
    return sum + (x * v - u * y) / 2;
  }, 0);
}

test('the section across is in two pieces: the hole parts it', () => {
  for (const accepted of starters.values())
    expect(acrossView(accepted.curves, sectionPin(accepted.curves), 'drilled').pieces).toHaveLength(2);
});

test('in the section along it the slot is as deep as the design says, and stops where it ends', () => {
  for (const { curves, design } of starters.values()) {
    const [piece] = alongView(curves, 'drilled').pieces;
    if (!piece) throw new Error('no section');
    const { slot, profile } = curves;
    const highest = (u: number) => Math.max(...heightsAt(piece.outer, u));
    const name = design.guitar.name;
    // derived: an upright plane through a leaning slot's middle at half its depth meets the floor behind its middle
    const [c, s] = [Math.cos(slot.tilt), Math.sin(slot.tilt)];
    expect(profile.thickness - highest(0.01), name).toBeCloseTo(slot.depth * (c + (s * s) / (2 * c)), 3);
    if (!slot.roundEnds) continue;
    for (const side of [-1, 1]) {
      const step = highest(side * (slot.halfLength + 0.05)) - highest(side * (slot.halfLength - 0.05));
      // the crown has fallen by there, so that the wall at the end is lower than the depth
      expect(step, `${name}: the wall at the end ${side}`).toBeGreaterThan(slot.depth / 2);
    }
  }
});

/** Heights at which a polygon's sides pass u. */
function heightsAt(points: readonly (readonly [number, number])[], u: number): readonly number[] {
  return points.flatMap(([x, z], i) => {
    const [nextX, nextZ] = points[(i + 1) % points.length] ?? [0, 0];
    return x > u === nextX > u ? [] : [z + ((u - x) / (nextX - x)) * (nextZ - z)];
  });
}

test('a slot’s mouth lies on the top, its walls on the wood’s own walls', () => {
  for (const { curves, design } of all) {
    const surface = surfaceOf(curves, 'drilled');
    const [x] = sectionPin(curves).at;
    const { slot, profile } = curves;
    const [low, high] = [-1, 1].map((side) => {
      const v = (side * slot.width) / 2;
      const floor = wallFoot(slot, profile.thickness, v, x);
      return wallAt(slot, profile.thickness, v, x, floor[1] + 0.5).at;
    });
    if (!low || !high) throw new Error('no wall');
    const wood = (y: number, z: number) => surface.columns(x, y).some(([a, b]) => z > a && z < b);
    expect(wood(low[0] - 0.02, low[1]), `${design.guitar.name}: behind the slot`).toBe(true);
    expect(wood(low[0] + 0.02, low[1]), `${design.guitar.name}: in the slot`).toBe(false);
    expect(wood(high[0] - 0.02, high[1]), `${design.guitar.name}: in the slot`).toBe(false);
    expect(wood(high[0] + 0.02, high[1]), `${design.guitar.name}: before the slot`).toBe(true);
    const mouth = slotMouth(curves);
    expect(enclosedArea(mouth), design.guitar.name).toBeGreaterThan(0);
  }
});
