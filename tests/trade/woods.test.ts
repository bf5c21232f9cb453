import { expect, test } from 'vitest';
import { massG } from '../../models/surface/figures.ts';
import { FIELDS } from '../../src/design/fields.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { sameWood, WOODS } from '../../src/trade/woods.ts';

const wood = (name: string) => {
  const found = WOODS.find((one) => one.name === name);
  if (!found) throw new Error(`${name} is not in the list`);
  return found;
};

/**
 * Derived from density × volume. Densities: black walnut and sugar maple, USDA Wood Handbook, GTR-190, as quoted elsewhere;
 * Indian rosewood and African ebony, Chudnoff, Tropical Timbers of the World (1984).
 */
test.each([
  ['Black walnut', 616, 19.1],
  ['Sugar maple', 706, 21.89],
  ['Indian rosewood', 849, 26.32],
  ['African ebony', 1009, 31.28],
])('31.0 cm³ of %s, %d kg/m³, weigh %d g', (name, density, g) => {
  expect(Math.round(wood(name).densityKgM3)).toBe(density);
  expect(massG(31_000, density)).toBeCloseTo(g, 2);
});

test('densities of the Wood Handbook’s woods follow from its specific gravities: ρ = 1000·G·1.12', () => {
  expect(wood('Sugar maple').densityKgM3).toBeCloseTo(1000 * 0.63 * 1.12, 9);
  expect(wood('Black walnut').densityKgM3).toBeCloseTo(1000 * 0.55 * 1.12, 9);
});

test('ranges stand in their middle (Chudnoff 1984)', () => {
  expect(wood('African padauk')).toMatchObject({
    densityKgM3: (673 + 817) / 2,
    stiffnessGPa: (10.8 + 12.1) / 2,
  });
  expect(wood('Cocobolo')).toMatchObject({ densityKgM3: (993 + 1217) / 2, stiffnessGPa: undefined });
  expect(wood('Honduras rosewood')).toMatchObject({ densityKgM3: (929 + 1089) / 2, stiffnessGPa: undefined });
});

test('every wood is within what a design allows, has a source and a name of its own', () => {
  const { density, stiffness } = FIELDS.timber;
  for (const { name, densityKgM3, stiffnessGPa = stiffness.min, source } of WOODS) {
    expect(densityKgM3, name).toBeGreaterThanOrEqual(density.min);
    expect(densityKgM3, name).toBeLessThanOrEqual(density.max);
    expect(stiffnessGPa, name).toBeGreaterThanOrEqual(stiffness.min);
    expect(stiffnessGPa, name).toBeLessThanOrEqual(stiffness.max);
    expect(source, name).toMatch(/\w{5}/);
  }
  expect(new Set(WOODS.map(({ name }) => name)).size).toBe(WOODS.length);
});

test('the initial design’s timber is the list’s; changed figures make it one’s own', () => {
  const { timber } = initialDesign();
  expect(WOODS.filter((one) => sameWood(one, timber)).map(({ name }) => name)).toEqual(['Indian rosewood']);
  expect(sameWood(wood('Indian rosewood'), { ...timber, density: 850 })).toBe(false);
  expect(sameWood(wood('Indian rosewood'), { ...timber, stiffness: 12 })).toBe(false);
  expect(sameWood(wood('Cocobolo'), { name: 'Cocobolo', density: 1105, stiffness: 15 })).toBe(true);
});
