import { describe, expect, test } from 'vitest';
import { massG, surfaceFigures } from '../../models/surface/figures.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { holeCuts } from '../../src/making/holes.ts';
import { jobNote } from '../../src/making/jobNote.ts';
import { readOrder } from '../../src/making/order.ts';
import { CAUTIONS, CHOSEN_IS_LISTED } from '../../src/trade/cautions.ts';
import { type Changes, designText } from '../support/change.ts';
import { acceptedDesigns } from '../support/designs.ts';

const note = (order: object = {}, changes: Changes = {}) => {
  const made = jobNote(acceptDesign(designText(changes)), readOrder(order));
  const lines = (title: string) =>
    made.sections.find((section) => section.title === title)?.lines.join('\n') ?? '';
  return { made, lines };
};

test('says what a shop would ask: how many, of what, how the grain runs, which face first', () => {
  const { lines, made } = note({ quantity: 12, deadline: '2031-05-17' }, { 'guitar.name': 'A “b”/c' });
  expect(made.title).toBe('A “b”/c');
  expect(lines('Order')).toContain('12 pieces');
  expect(lines('Order')).toContain('2031-05-17');
  expect(lines('Material')).toContain('Grain along X');
  expect(lines('Material')).toContain('849 kg/m³');
  expect(lines('Which face first')).toContain('R 7620');
  expect(lines('Tolerances that matter, and why')).toContain('3.20 +0.05/0');
  expect(lines('Tolerances that matter, and why')).toContain('ISO 2768-m');
});

test('blank deadline and remarks are allowed, and said', () => {
  const { lines } = note();
  expect(lines('Order')).toContain('1 piece.');
  expect(lines('Order')).toContain('no day given');
  expect(lines('Remarks')).toBe('None.');
  expect(note({ remarks: 'Two lines,\nthis one last.' }).lines('Remarks')).toBe('Two lines,\nthis one last.');
});

describe('as drilled or as reamed, with an allowance or none', () => {
  test('as drilled: don’t ream', () => {
    const { lines } = note({ holes: 'drilled' });
    expect(lines('The solid')).toContain('As drilled: pin holes are parallel, 4.76 across.');
    expect(lines('Please don’t')).toContain('Don’t ream or taper');
  });

  test('as reamed: no deeper than drawn', () => {
    const { lines } = note({ holes: 'reamed', sandingAllowance: 0.15 });
    expect(lines('The solid')).toContain('As reamed: pin holes taper by 5° in all, 5.60 across');
    expect(lines('The solid')).toContain('With 0.15 for sanding on the top');
    expect(lines('Please don’t')).not.toContain('Don’t ream or taper');
  });

  test('the mass is that of the ordered holes', () => {
    const { curves, design } = acceptDesign(designText());
    const mass = (holes: 'drilled' | 'reamed') =>
      massG(surfaceFigures(curves, holes).volumeMm3, design.timber.density).toFixed(1);
    expect(mass('reamed')).not.toBe(mass('drilled'));
    for (const holes of ['drilled', 'reamed'] as const)
      expect(note({ holes }).lines('Material')).toContain(`about ${mass(holes)} g with holes as ${holes}`);
  });

  test.each([
    ['reamed', { 'pins.taper': 0 }],
    ['drilled', { 'pins.taper': 0 }],
    ['reamed', { 'pins.mouth': '3/16 in' }],
  ])('ordered as %s, %o: as drilled and never reamed, all over the note', (holes, changes) => {
    const { lines, made } = note({ holes }, changes);
    expect(lines('The solid')).toMatch(
      /As drilled: pin holes are parallel, .* across, left as drilled; not reamed\./,
    );
    expect(lines('Tolerances that matter, and why')).toContain('seen at a glance, and left as drilled.');
    expect(lines('Please don’t')).toContain(
      'Don’t ream or taper the pin holes: they stay parallel, as drilled.',
    );
    expect(lines('Material')).toContain('with holes as drilled');
    expect(made.sections.flatMap((one) => one.lines).join()).not.toMatch(/reamed later|set-up|As reamed/);
  });

  test('a reamed hole is measured inside its bevel’s ring, or at the surface without one', () => {
    const said = (changes: Changes) =>
      note({ holes: 'reamed' }, changes).lines('Tolerances that matter, and why');
    const { inside } = holeCuts(acceptDesign(designText()).design);
    expect(inside).toBeLessThan(5.6);
    expect(said({})).toContain(
      `Pin holes ${inside?.toFixed(2)} ±0.1 across inside the bevel’s ring (the taper carried up to the surface has 5.60)`,
    );
    expect(said({ 'pins.bevel': 'none' })).toContain('Pin holes 5.60 ±0.1 at the surface');
  });

  test('the two holes that pegs stand in are finished with the others', () => {
    const said = (holes: string, changes: Changes = {}) => note({ holes }, changes).lines('Which face first');
    expect(said('reamed')).toContain('pegs shorter than the holes');
    expect(said('reamed')).toContain('taper and bevel of all the holes from the top, these two too');
    expect(said('drilled')).toContain(' bevel of all the holes from the top');
    expect(said('drilled')).not.toContain('taper');
    expect(said('drilled', { 'pins.bevel': 'none' })).toContain('the other holes, top, edge, and');
  });
});

test('takes care, with the listed wood named when it is one', () => {
  const care = note().lines('Care');
  for (const id of ['dust', 'allergy', 'listed', 'machines', 'strength', 'first'] as const)
    expect(care).toContain(CAUTIONS[id].text);
  expect(care).toContain(CHOSEN_IS_LISTED);
  expect(note({}, { 'timber.name': 'Sugar maple' }).lines('Care')).not.toContain(CHOSEN_IS_LISTED);
});

test('left-handed: X goes to the bass', () => {
  expect(note({}, { 'guitar.hand': 'left' }).lines('The solid')).toContain('to the bass side');
});

test('any design has a note without holes in it, short enough for a page', () => {
  for (const accepted of acceptedDesigns(25, 5).accepted) {
    const { sections } = jobNote(accepted, readOrder({ quantity: 2 }));
    const text = sections.flatMap(({ lines }) => lines).join('\n');
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    expect(sections.every(({ lines }) => lines.length > 0)).toBe(true);
    expect(text.length, 'characters beside remarks').toBeLessThan(3200);
  }
});
