import { describe, expect, test } from 'vitest';
import { slotToPart } from '../../models/curves/slot.ts';
import { stringPlaces } from '../../models/curves/strings.ts';
import { topHeight } from '../../models/curves/topHeight.ts';
import { surfaceOf } from '../../models/surface/surface.ts';
import { breakAngle } from '../../src/trade/breakAngle.ts';
import { crownPlace } from '../../src/trade/crownPlace.ts';
import { woodBehind } from '../../src/trade/woodBehind.ts';
import { curves, design } from '../support/change.ts';

const DEGREES = 180 / Math.PI;

/** Each string of a design with what lies behind its crown. */
function strings(changes: Readonly<Record<string, unknown>>, showing = 3.2) {
  const d = design(changes);
  const drawn = curves(changes);
  const { slot, profile, pins } = drawn;
  const top = (x: number) => topHeight(profile, x);
  const ramp =
    d.pins.channel === 'none' ? undefined : { length: d.pins.channelLength, depth: d.pins.channelDepth };
  const tilt = slot.tilt * DEGREES;
  return stringPlaces(d).map((x, i) => {
    const pin = pins[i];
    if (!pin) throw new Error(`string ${i + 1} has no pin`);
    const height = top(x) + showing;
    const behind = {
      crown: crownPlace(x, slot.angle * DEGREES, 0, tilt, height - profile.thickness),
      pin: pin.at,
      holeRadius: ramp ? d.pins.mouth / 2 : pin.reach,
      slotAngle: slot.angle * DEGREES,
      slotWidth: slot.width,
      tilt,
      top,
      ramp,
    };
    return { behind, height, wood: woodBehind(behind), drawn };
  });
}

/** The place in plan at s along a string's run. */
function placeAt({ crown, pin }: { crown: readonly number[]; pin: readonly number[] }, s: number) {
  const [dx, dy] = [(pin[0] ?? 0) - (crown[0] ?? 0), (pin[1] ?? 0) - (crown[1] ?? 0)];
  const far = Math.hypot(dx, dy);
  return [(crown[0] ?? 0) + (dx * s) / far, (crown[1] ?? 0) + (dy * s) / far] as const;
}

const plain = { 'saddle.angle': 3, 'pins.bevel': 'none', 'top.edge': 'none' };
const ramped = { ...plain, 'pins.channel': 'ramp', 'pins.channelLength': 7, 'pins.channelDepth': 2 };

describe('the wood between slot and hole is the drawn bridge’s', () => {
  test.each([
    ['upright', plain, 5e-5],
    ['left-handed', { ...plain, 'guitar.hand': 'left' }, 5e-5],
    ['tilted', { ...plain, 'saddle.tilt': 8 }, 5e-5],
    ['with channels', ramped, 5e-5],
    // a channel is aimed at the slot's line, from which a tilted saddle's crown leans a little
    ['tilted, with channels', { ...ramped, 'saddle.tilt': 6 }, 2e-3],
  ])('%s: its heights are those of the columns of wood', (_, changes, tolerance) => {
    for (const [i, { behind, wood, drawn }] of strings(changes).entries()) {
      const { columns } = surfaceOf(drawn, 'reamed');
      // both ends lie on walls: what stands there is asked for a hair inside
      for (const [s, z] of wood.slice(1, -1)) {
        const [x, y] = placeAt(behind, s);
        const highest = columns(x, y).at(-1)?.[1];
        expect(Math.abs((highest ?? 0) - z), `string ${i + 1} at ${s} mm`).toBeLessThan(tolerance);
      }
    }
  });

  test.each([
    ['upright', plain],
    ['tilted', { ...plain, 'saddle.tilt': 8 }],
  ])('%s: it begins at the slot’s back wall, within 0.01 mm', (_, changes) => {
    for (const [i, { behind, wood, drawn }] of strings(changes).entries()) {
      const { slot, profile } = drawn;
      const [x, y] = placeAt(behind, wood[0]?.[0] ?? 0);
      // the back wall at this u, at the height where it comes out of the top
      const u = x / Math.cos(slot.angle);
      let w = 0;
      for (let k = 0; k < 30; k++) {
        const [px, , pz] = slotToPart(slot, profile.thickness, u, -slot.width / 2, w);
        w += topHeight(profile, px) - pz;
      }
      const wall = slotToPart(slot, profile.thickness, u, -slot.width / 2, w);
      const behindLine = ([px, py]: readonly number[]) =>
        (py ?? 0) * Math.cos(slot.angle) - (px ?? 0) * Math.sin(slot.angle);
      expect(Math.abs(behindLine([x, y]) - behindLine(wall)), `string ${i + 1}`).toBeLessThan(0.01);
    }
  });

  test('it ends at the hole’s edge', () => {
    for (const { behind, wood } of strings(plain)) {
      const [x, y] = placeAt(behind, wood.at(-1)?.[0] ?? 0);
      expect(Math.hypot(x - behind.pin[0], y - behind.pin[1])).toBeCloseTo(behind.holeRadius, 9);
    }
  });
});

describe('break angles of a drawn bridge', () => {
  const angles = (changes: Readonly<Record<string, unknown>>, showing?: number) =>
    strings(changes, showing).map(({ height, wood }) => breakAngle(height, wood, 0).behind);

  test('on a slanted slot and a square row the treble string, further from its pin, breaks least', () => {
    const a = angles(plain);
    for (let i = 1; i < a.length; i++) expect(a[i], `string ${i + 1}`).toBeGreaterThan(a[i - 1] ?? 0);
  });

  test('a left-handed bridge has the same, string by string', () => {
    const left = angles({ ...plain, 'guitar.hand': 'left' });
    angles(plain).forEach((a, i) => {
      expect(left[i], `string ${i + 1}`).toBeCloseTo(a, 9);
    });
  });

  test('more showing and a channel each make every one steeper, pins further back flatter', () => {
    const [base, more, ramp, far] = [
      angles(plain),
      angles(plain, 3.6),
      angles(ramped),
      angles({ ...plain, 'pins.behindSlot': 15 }),
    ];
    base.forEach((a, i) => {
      expect(more[i], `string ${i + 1}`).toBeGreaterThan(a);
      expect(ramp[i], `string ${i + 1}`).toBeGreaterThan(a);
      expect(far[i], `string ${i + 1}`).toBeLessThan(a);
    });
  });

  test('by hand: the middle of a flat top, 3.2 over it, slot 3.2 wide, pin 13 behind, hole 5.6: 17.419°', () => {
    const wood = woodBehind({
      crown: [0, 0],
      pin: [0, -13],
      holeRadius: 2.8,
      slotAngle: 0,
      slotWidth: 3.2,
      tilt: 0,
      top: () => 9.5,
      ramp: undefined,
    });
    expect(wood[0]?.[0]).toBeCloseTo(1.6, 12);
    expect(breakAngle(12.7, wood, 0).behind).toBeCloseTo((Math.atan2(3.2, 10.2) * 180) / Math.PI, 9);
  });

  test('a ramp deep and short enough lets the string bend over the top before it', () => {
    const wood = woodBehind({
      crown: [0, 0],
      pin: [0, -13],
      holeRadius: 2.4,
      slotAngle: 0,
      slotWidth: 3,
      tilt: 0,
      top: () => 9.5,
      ramp: { length: 4, depth: 6 },
    });
    const found = breakAngle(11, wood, 0);
    expect(found.straight).toBe(false);
    // it leaves the top where the ramp begins: 9 behind the crown
    expect(found.run).toBeCloseTo(9, 9);
    expect(found.inTheWay).toBeGreaterThan(0.4);
  });

  test('a hole that reaches into the slot is refused', () => {
    const wrong = {
      crown: [0, 0],
      pin: [0, -4],
      holeRadius: 2.8,
      slotAngle: 0,
      slotWidth: 3,
      tilt: 0,
    } as const;
    expect(() => woodBehind({ ...wrong, top: () => 9.5, ramp: undefined })).toThrow(
      /must lie behind the slot/,
    );
  });
});
