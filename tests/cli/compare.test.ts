import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { writeDesign } from '../../src/files/designFile.ts';
import { type Changes, designText } from '../support/change.ts';
import { fakeIo } from './fakeIo.ts';

let folder: string;
const at = (file: string) => path.join(folder, file);
const write = (file: string, changes: Changes) =>
  writeFileSync(at(file), writeDesign(designText({ 'guitar.name': file, ...changes })));

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-compare-'));
  write('known', {});
  write('thicker', { 'top.thickness': 10, 'top.edge': 'none' });
  write('light', { 'timber.density': 424.5 });
  write('impossible', { 'top.tip': 99 });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function call(...argv: readonly string[]) {
  const io = fakeIo();
  return { exit: await run(['compare', ...argv], io), ...io.said };
}

test('says what differs and what that comes to', async () => {
  const { exit, out } = await call(at('known'), at('thicker'));
  const { names, differences, figures, stiffness, caution } = JSON.parse(out);
  expect(exit).toBe(0);
  expect(names).toEqual({ a: 'known', b: 'thicker' });
  const thickness = differences.find((one: { path: string }) => one.path === 'top.thickness');
  expect(thickness).toMatchObject({ a: 9.5, b: 10, by: 0.5, unit: 'mm' });
  const edge = differences.find((one: { path: string }) => one.path === 'top.edgeSize');
  expect(edge, 'a field that isn’t used is null').toMatchObject({ a: 1, b: null });
  const mid = figures.find((one: { id: string }) => one.id === 'mid-stiffness');
  expect(mid.share, 'thicker is stiffer').toBeGreaterThan(1.1);
  expect(stiffness.b[0].x).toBeCloseTo(-stiffness.b[stiffness.b.length - 1].x, 6);
  const estimates = figures.filter((one: { estimate: boolean }) => one.estimate);
  expect(estimates.map(({ id }: { id: string }) => id)).toEqual(['twist', 'pin-bearing']);
  expect(caution).toMatch(/guarantee nothing/);
});

test('wood half as dense weighs half as much, and a design is like itself', async () => {
  const light = JSON.parse((await call(at('known'), at('light'))).out);
  const share = (id: string) => light.figures.find((one: { id: string }) => one.id === id).share;
  expect(share('mass-reamed')).toBeCloseTo(0.5, 9);
  expect(share('mid-stiffness')).toBe(1);
  const same = JSON.parse((await call(at('known'), at('known'))).out);
  expect(same.differences).toEqual([]);
  for (const { id, a, b } of same.figures) expect(b, id).toBe(a);
});

test('tables say the same in words', async () => {
  const { out } = await call(at('known'), at('thicker'), '--table');
  expect(out).toMatch(/Thickness at the centre, mm +9\.5 +10 +\+0\.5/);
  expect(out).toMatch(/Edge size, mm +1 +not used/);
  expect(out).toMatch(/Mass, as reamed, g +\d+\.\d\d +\d+\.\d\d +10\d\.\d %/);
  expect(out).toMatch(/Twists by a couple of 1 N·m, about, ° \(estimate\) +\d+\.\d\d +\d+\.\d\d /);
  const back = (await call(at('thicker'), at('known'), '--table')).out;
  expect(back, 'a true minus').toMatch(/Thickness at the centre, mm +10 +9\.5 +−0\.5/);
  expect((await call(at('known'), at('known'), '--table')).out).toMatch(/No dimension differs/);
});

test('wrong use and designs that can’t be made are told, and nothing is printed', async () => {
  const one = await call(at('known'));
  expect([one.exit, one.out]).toEqual([2, '']);
  expect(one.err).toMatch(/Two designs are compared; 1 given/);
  const bad = await call(at('known'), at('impossible'));
  expect([bad.exit, bad.out]).toEqual([1, '']);
  expect(bad.err).toMatch(/top\.tip/);
});
