import { expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { fieldsOf } from '../../src/design/fields.ts';
import { readDesign } from '../../src/design/read.ts';
import { designText } from '../support/change.ts';

/** The fields that a design of version 1 had. */
const OLD: Readonly<Record<string, readonly string[]>> = {
  strings: ['count', 'spread', 'spacing', 'diameters'],
  saddle: [...['slotWidth', 'slotLength', 'angle', 'setback', 'depth', 'ends', 'floor', 'tilt', 'showing']],
  pins: Object.keys(fieldsOf('pins')).filter((key) => !['spacing', 'rows', 'rowGap'].includes(key)),
  top: Object.keys(fieldsOf('top')).filter((key) => key !== 'thicknessBy'),
  footprint: Object.keys(fieldsOf('footprint')).filter((key) => key !== 'cutter'),
  timber: ['name', 'density', 'stiffness'],
};

/** A design as version 1 wrote it, with other strings than the defaults. */
function versionOne(strings: Readonly<Record<string, unknown>>) {
  const {
    action: _,
    aim: _a,
    limits: _l,
    ...now
  } = designText({ 'saddle.angle': 3.3, 'top.thickness': '3/8 in' });
  const groups = Object.entries(now).map(([group, fields]) => {
    const keys = OLD[group];
    if (!keys) return [group, fields];
    const old = Object.entries(fields as object).filter(([key]) => keys.includes(key));
    return [group, { ...Object.fromEntries(old), ...(group === 'strings' ? strings : {}) }];
  });
  return { ...Object.fromEntries(groups), version: 1 };
}

test('a design of version 1 keeps every number: what it knew as set is set', () => {
  const { text, design } = acceptDesign(versionOne({}));
  expect(text.version).toBe(3);
  expect(text.top.thickness).toBe('3/8 in');
  expect(design.saddle).toMatchObject({
    angle: 3.3,
    angleBy: 'set',
    depth: 5.5,
    depthBy: 'set',
    showing: 3.2,
  });
});

test.each([4, 7, 12])('%i strings get as many entries in every list', (count) => {
  // pins are another matter: twelve find no room in this block
  const { design } = readDesign(
    versionOne({ count, spread: 70, diameters: ['0.012 in', 0.6, ...Array(count - 2).fill(0.7)] }),
  );
  for (const list of ['notes', 'diameters', 'cores', 'wraps'] as const)
    expect(design.strings[list], list).toHaveLength(count);
  expect(design.strings.diameters.slice(0, 2)).toEqual([0.3048, 0.6]);
  // the thin one is plain, the thick one has a core
  expect(design.strings.cores[0]).toBe(0.3048);
  expect(design.strings.cores[1]).toBeLessThan(0.4);
});

test('what is wrong in an old design is told as in a new one', () => {
  expect(() => readDesign({ ...versionOne({}), top: 9 })).toThrow(/top/);
  expect(() => readDesign(versionOne({ count: 'many' }))).toThrow(/strings\.count/);
});

/** A design as version 2 wrote it. */
function versionTwo(changes: Readonly<Record<string, unknown>> = {}) {
  const { aim: _a, limits: _l, ...now } = designText(changes);
  const { cutter: _c, ...footprint } = now.footprint;
  const { cutter: _s, ...saddle } = now.saddle;
  const { name, density, stiffness } = now.timber;
  return { ...now, version: 2, footprint, saddle, timber: { name, density, stiffness } };
}

test('a design of version 2 aims at nothing, has the usual limits and keeps every number', () => {
  const { text, design } = acceptDesign(versionTwo({ 'saddle.angle': 3.1 }));
  expect(text).toEqual(designText({ 'saddle.angle': 3.1 }));
  expect(design.aim.of).toBe('none');
});

test('a slot narrower than the usual cutter was made with one no wider', () => {
  const { design } = acceptDesign(versionTwo({ 'saddle.slotWidth': '3/32 in' }));
  expect(design.saddle.cutter).toBe(design.saddle.slotWidth);
});

test('what is wrong in a design of version 2 is told as in a new one', () => {
  expect(() => readDesign({ ...versionTwo(), timber: 9 })).toThrow(/timber/);
  expect(() => readDesign({ ...versionTwo(), limits: { held: 0.1 } })).toThrow(/limits\.held/);
});
