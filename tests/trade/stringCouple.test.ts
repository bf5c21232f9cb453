import { expect, test } from 'vitest';
import { stringCouple } from '../../src/trade/stringCouple.ts';

test('B1: 711.6 N at 13 mm tip the bridge with 9.2508 N·m (derived)', () => {
  expect(stringCouple([{ tensionN: 711.6, heightMm: 13 }])).toBeCloseTo(9.2508, 4);
});

test('each string counts with its own height', () => {
  const strings = [
    { tensionN: 100, heightMm: 12 },
    { tensionN: 130, heightMm: 13.5 },
  ];
  expect(stringCouple(strings)).toBeCloseTo(1.2 + 1.755, 12);
  expect(stringCouple([])).toBe(0);
});

test('whatever the break angle: what saddle and pin bear of one string comes to the same couple (derived)', () => {
  const [tension, height, crownToPin, front] = [120, 13, 11, 0];
  for (const behind of [10, 20, 30]) {
    const t2 = (behind * Math.PI) / 180;
    // moments about the saddle's foot, tipping toward the nut positive: H at the crown; then the string's pull along its
    // slope from where it enters the hole, which the hole and the ball bear
    const atSaddle = tension * (Math.cos(front) - Math.cos(t2)) * height;
    const entry = height - crownToPin * Math.tan(t2);
    const atHole = tension * Math.cos(t2) * entry + tension * Math.sin(t2) * crownToPin;
    const couple = stringCouple([{ tensionN: tension, heightMm: height }]);
    expect((atSaddle + atHole) / 1000, `${behind}°`).toBeCloseTo(couple, 9);
  }
});
