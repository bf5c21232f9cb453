import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { massG, surfaceFigures } from '../models/surface/figures.ts';
import { loadStarters } from '../src/app/starters/starters.ts';
import { STARTER_FILES } from '../src/cli/starterFiles.ts';
import type { Design } from '../src/design/design.ts';
import { sameWood, WOODS } from '../src/trade/woods.ts';

const folder = new URL('../public/starters/', import.meta.url);
const read = async (file: string): Promise<unknown> =>
  JSON.parse(readFileSync(new URL(file, folder), 'utf8'));

const starters = await loadStarters(read);

test('the index, the folder and the command line hold the same designs', async () => {
  const files = readdirSync(folder).filter((file) => file !== 'index.json');
  expect(STARTER_FILES.map(({ file }) => file).sort()).toEqual(files.sort());
  for (const { file, name, json } of STARTER_FILES) {
    expect(json, `${file} isn't built into src/cli/starterFiles.ts as it lies in the folder`).toEqual(
      await read(file),
    );
    expect(file).toBe(`${name.toLowerCase()}.json`);
  }
});

test('every starter is accepted under its own name; that all are invented is said where they are shown', () => {
  expect(starters.length).toBeGreaterThanOrEqual(8);
  for (const { name, about, design } of starters) {
    expect(design.guitar.name).toBe(name);
    expect(about, name).toMatch(/^[A-Z].*[^ ]\.$/);
  }
});

test('between them they show every family of footprint, both hands, hollow wings, twelve strings and an open slot', () => {
  const families: Readonly<Record<string, (d: Design) => boolean>> = {
    'plain rectangle with rounded corners': ({ footprint: f }) =>
      f.backEdge === 'straight' && f.frontEdge === 'straight' && f.tip === 'square',
    'belly toward the tail': ({ footprint: f }) => f.backEdge === 'tail' && f.backForm === 'sweep',
    'belly toward the soundhole': ({ footprint: f }) =>
      f.frontEdge === 'soundhole' && f.frontForm === 'sweep',
    'bowed back': ({ footprint: f }) => f.backEdge === 'tail' && f.backForm === 'bow',
    'straight tapered wings': ({ footprint: f }) =>
      f.backForm === 'taper' && f.frontForm === 'taper' && f.depthWing < f.depthCentre / 2,
    'half-round tips': ({ footprint: f }) => f.tip === 'round',
    'left-handed': ({ guitar }) => guitar.hand === 'left',
    'hollow wings': ({ top }) => top.wing === 'hollow',
    'twelve strings': ({ strings }) => strings.count === 12,
    'long scale': ({ guitar }) => guitar.scale > 670,
    'open slot': ({ saddle }) => saddle.ends === 'open',
  };
  for (const [family, fits] of Object.entries(families)) {
    expect(
      starters.some(({ design }) => fits(design)),
      `no starter shows: ${family}`,
    ).toBe(true);
  }
});

test('each is of a listed wood and weighs what a bridge weighs', () => {
  for (const { name, design, curves } of starters) {
    expect(
      WOODS.some((wood) => sameWood(wood, design.timber)),
      `${name}: ${design.timber.name}`,
    ).toBe(true);
    const mass = massG(surfaceFigures(curves, 'reamed').volumeMm3, design.timber.density);
    // common practice: 20 to 35 g finished; a gram less for the lightest wood
    expect(mass, `${name} weighs ${mass.toFixed(1)} g`).toBeGreaterThan(19);
    expect(mass, `${name} weighs ${mass.toFixed(1)} g`).toBeLessThan(35);
  }
});
