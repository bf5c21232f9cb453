import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import type { Measured } from '../../src/making/meaning.ts';
import { whatItMeans } from '../../src/making/whatItMeans.ts';
import { usualWorkshop } from '../../src/making/workshop.ts';
import { crowns } from '../../src/trade/fit/crowns.ts';
import { type Changes, designText } from '../support/change.ts';
import { bench } from './onBench.ts';

/** A crown on the slot's middle, so that another slot in the design is the same as one cut otherwise. */
const STRAIGHT: Changes = { 'saddle.filed': 'straight', 'saddle.angle': 3, 'saddle.setback': 4 };

const meaning = (changes: Changes, measured: (value: (id: string) => number) => Measured) => {
  const one = bench(changes);
  return whatItMeans(one.accepted, one.workshop, measured(one.value));
};

/** Cents at the 12th fret of the design itself. */
const centsOf = (changes: Changes) => {
  const { design, fit } = acceptDesign(designText(changes));
  return crowns(design, fit).map(({ cents }) => cents.filed[11] as number);
};

test('nothing measured: all as designed, nothing to say', () => {
  for (const changes of [{}, { 'guitar.hand': 'left', 'saddle.tilt': 6 }]) {
    const said = meaning(changes, () => ({}));
    expect(said.text).toEqual([]);
    expect(said.stiffness).toBe(1);
    expect(said.density).toBeUndefined();
    said.strings.forEach(({ rise, action, cents }, i) => {
      expect(rise).toBe(0);
      expect(action.now).toBe(action.designed);
      expect(cents.bySlot).toBeCloseTo(centsOf(changes)[i] as number, 9);
      expect(cents.byEdge).toBeCloseTo(cents.designed, 9);
    });
  }
});

test('all measured as wanted: that, and the timber’s density', () => {
  const one = bench({ ...STRAIGHT, 'saddle.slotWidth': 3 });
  const measured = Object.fromEntries(
    one.steps.flatMap((s) => s.settings.map(({ id, value }) => [id, value])),
  );
  const said = whatItMeans(one.accepted, one.workshop, measured);
  expect(said.text[0]).toBe('All that was measured is as designed, within tolerance.');
  expect(said.text).toHaveLength(2);
  expect(said).toMatchObject({ outside: 0, tables: [] });
  expect(said.density).toBeCloseTo(one.accepted.design.timber.density, 6);
});

describe('action', () => {
  test('half of what the bridge is too thick, and half of what the saddle is too high', () => {
    const thick = meaning({}, (value) => ({ 'check.thickness': value('check.thickness') + 0.3 }));
    for (const { rise, action } of thick.strings) {
      expect(rise).toBeCloseTo(0.3, 9);
      expect(action.now - action.designed).toBeCloseTo(0.15, 9);
    }
    expect(thick.text[0]).toContain('0.30 mm at most');
    const high = meaning({}, (value) => ({ 'saddle.height-2': value('saddle.height-2') - 0.2 }));
    expect(high.strings.map(({ rise }) => Math.round(rise * 1e6) / 1e6)).toEqual([0, -0.2, 0, 0, 0, 0]);
    expect(high.text[0]).toContain('lower');
  });

  test('the action designed is the one asked for', () => {
    const { strings } = meaning(
      { 'action.treble': 1.8, 'action.bass': 2.3, 'saddle.showingBy': 'solved' },
      () => ({}),
    );
    expect(strings[0]?.action.designed).toBeCloseTo(1.8, 4);
    expect(strings[5]?.action.designed).toBeCloseTo(2.3, 4);
  });

  test('a slot too deep lets the saddle down, unless what shows was measured; a leaning one by the cosine', () => {
    const changes = { 'saddle.tilt': 8 };
    const lean = Math.cos((8 * Math.PI) / 180);
    const deep = meaning(changes, (value) => ({ 'check.slot-depth': value('check.slot-depth') + 0.2 }));
    expect(deep.strings[3]?.rise).toBeCloseTo(-0.2 * lean, 9);
    const showing = meaning(changes, (value) => ({
      'check.slot-depth': value('check.slot-depth') + 0.2,
      'saddle.showing-4': value('saddle.showing-4') + 0.1,
    }));
    expect(showing.strings[3]?.rise).toBeCloseTo(0.1 * lean, 9);
    expect(showing.strings[2]?.rise).toBeCloseTo(-0.2 * lean, 9);
  });

  test('the depth from the blank’s face tells as well while no better one was measured', () => {
    const early = meaning({}, (value) => ({ 'slot.depth': value('slot.depth') + 0.15 }));
    expect(early.strings[0]?.rise).toBeCloseTo(-0.15, 9);
    const later = meaning({}, (value) => ({
      'slot.depth': 9,
      'check.slot-depth': value('check.slot-depth'),
    }));
    expect(later.strings[0]?.rise).toBeCloseTo(0, 9);
  });
});

test('a blank planed otherwise asks for another depth, and a slot of that depth is right', () => {
  const changes = { 'saddle.tilt': 6 };
  const one = bench(changes);
  const thicker = bench(changes, { topAllowance: one.workshop.topAllowance + 0.25 });
  const measured = { 'thickness.planed': one.value('thickness.planed') + 0.25 };
  const said = whatItMeans(one.accepted, one.workshop, measured);
  expect(said.text).toHaveLength(1);
  expect(said.text[0]).toContain(`${thicker.value('slot.depth').toFixed(2)} mm deep in all`);
  const cut = whatItMeans(one.accepted, one.workshop, {
    ...measured,
    'slot.depth': thicker.value('slot.depth'),
  });
  expect(cut.strings[0]?.rise).toBeCloseTo(0, 9);
});

describe('intonation: as the design with that very slot has it', () => {
  /** The slot's ends measured on a bridge whose slot was cut at another angle or place. */
  const cutAs = (other: Changes, hand: string) => {
    const [designed, cut] = [
      bench({ ...STRAIGHT, 'guitar.hand': hand }),
      bench({ ...STRAIGHT, 'guitar.hand': hand, ...other }),
    ];
    const read = (id: string) => cut.value(id) - designed.value(id);
    return { 'check.slot-treble': read('check.slot-treble'), 'check.slot-bass': read('check.slot-bass') };
  };

  test.each(['right', 'left'])('%s-handed, half a degree too much', (hand) => {
    const off = cutAs({ 'saddle.angle': 3.5 }, hand);
    const said = meaning({ ...STRAIGHT, 'guitar.hand': hand }, (value) => ({
      'check.slot-treble': value('check.slot-treble') + off['check.slot-treble'],
      'check.slot-bass': value('check.slot-bass') + off['check.slot-bass'],
    }));
    expect(said.slot.turn).toBeCloseTo(0.5, 2);
    const wanted = centsOf({ ...STRAIGHT, 'guitar.hand': hand, 'saddle.angle': 3.5 });
    said.strings.forEach(({ cents, note }, i) => {
      expect(Math.abs(cents.bySlot - (wanted[i] as number)), note).toBeLessThan(0.01);
    });
    expect(
      Math.abs((said.strings[0]?.cents.bySlot ?? 0) - (said.strings[0]?.cents.designed ?? 0)),
    ).toBeGreaterThan(0.3);
    expect(said.text.join(' ')).toContain('3.50° in place of 3.00°');
  });

  test('too far back by 0.4: nothing when laid by the slot, the set-back’s cents when laid by the edge', () => {
    const said = meaning(STRAIGHT, (value) => ({
      'check.slot-treble': value('check.slot-treble') - 0.4,
      'check.slot-bass': value('check.slot-bass') - 0.4,
    }));
    expect(said.slot.back).toBeCloseTo(0.4, 9);
    expect(said.slot.turn).toBeCloseTo(0, 9);
    const wanted = centsOf({ ...STRAIGHT, 'saddle.setback': 4.4 });
    said.strings.forEach(({ cents, note }, i) => {
      expect(cents.bySlot, note).toBeCloseTo(cents.designed, 9);
      expect(Math.abs(cents.byEdge - (wanted[i] as number)), note).toBeLessThan(0.01);
      expect(cents.byEdge, 'a longer string is flatter').toBeLessThan(cents.designed);
    });
  });

  test('a string that stands higher is sharper, as in the design with that action', () => {
    const changes = { ...STRAIGHT, 'action.treble': 2, 'action.bass': 2 };
    const said = meaning(changes, (value) => ({ 'check.thickness': value('check.thickness') + 0.4 }));
    const raised = centsOf({
      ...changes,
      'action.treble': 2.2,
      'action.bass': 2.2,
      // the nut stays: at the 1st fret the string rises by r = 1 − 2^(−1/12) of what it does at the saddle
      'action.firstTreble': 0.4 + 0.4 * (1 - 2 ** (-1 / 12)),
      'action.firstBass': 0.55 + 0.4 * (1 - 2 ** (-1 / 12)),
    });
    said.strings.forEach(({ cents, note }, i) => {
      expect(Math.abs(cents.bySlot - (raised[i] as number)), note).toBeLessThan(0.01);
      expect(cents.bySlot).toBeGreaterThan(cents.designed);
    });
  });
});

test('strength and stuff: stiffness by the cube, wood under the slot, density from the mass', () => {
  const said = meaning({ 'top.thickness': 9.5 }, (value) => ({
    'check.thickness': 9,
    'check.slot-depth': value('check.slot-depth') + 0.2,
    'check.mass': value('check.mass') * 1.05,
    'check.slot-width': 3.3,
  }));
  expect(said.stiffness).toBeCloseTo((9 / 9.5) ** 3, 12);
  const wood = bench({ 'top.thickness': 9.5 }).value('check.wood-under');
  expect(said.woodUnder).toBeCloseTo(wood - 0.5 - 0.2, 9);
  expect(said.density).toBeCloseTo(849 * 1.05, 6);
  // (9 / 9.5)³ = 0.8503, (10 / 9.5)³ = 1.1664
  expect(said.text.join('\n')).toContain('The block is 15 % less stiff than designed');
  const thick = meaning({ 'top.thickness': 9.5 }, () => ({ 'check.thickness': 10 }));
  expect(thick.text.join('\n')).toContain('The block is 17 % stiffer than designed');
  expect(said.text.join('\n')).toContain('3.25 to 3.30 mm thick');
  expect(said.text.join('\n')).toContain('891 kg/m³');
});

test('what is no measure is refused, what belongs to no setting has no say', () => {
  const one = bench();
  const tell = (measured: Measured) => whatItMeans(one.accepted, one.workshop, measured);
  expect(() => tell({ 'check.thickness': Number.NaN })).toThrow(/check\.thickness: NaN/);
  expect(() => tell({ 'check.mass': -3 })).toThrow(RangeError);
  expect(tell({ 'saddle.height-12': 9 }).text).toEqual([]);
  expect(usualWorkshop(3.2).slot).toBe('router');
});

describe('as designed is said only where nothing is outside its tolerance', () => {
  test.each<[string, number, number]>([
    ['check.tip', -1, 1],
    ['marking.pin-1', 1, 1],
    ['slot.length', 1.5, 1],
  ])('%s off by %f', (id, by, count) => {
    const said = meaning({}, (value) => ({ [id]: value(id) + by }));
    expect(said.outside).toBe(count);
    expect(said.text).toEqual([
      '1 value is outside its tolerance; it changes neither action, intonation nor strength.',
    ]);
    const two = meaning({}, (value) => ({
      [id]: value(id) + by,
      'outline.length': value('outline.length') + 3,
    }));
    expect(two.text[0]).toMatch(/^2 values are outside their tolerance; none of them changes action/);
  });

  test('no measured value of a setting with a tolerance, far outside, is called as designed', () => {
    const one = bench({ 'saddle.tilt': 4, 'pins.channel': 'ramp' });
    for (const { id, value, tolerance } of one.steps.flatMap(({ settings }) => settings)) {
      if (!tolerance) continue;
      const said = whatItMeans(one.accepted, one.workshop, { [id]: value + 1.5 * tolerance.plus + 0.5 });
      // the saddle is judged by the heights wanted now
      expect(said.outside, id).toBeGreaterThan(0);
      expect(said.text.join(), id).not.toContain('as designed, within');
      expect(said.text.length, id).toBeGreaterThan(0);
    }
  });
});

describe('the slot’s place by its marks, where the finished bridge was not measured', () => {
  const marks = (value: (id: string) => number, back: number) => ({
    'marking.slot-middle': value('marking.slot-middle') + back,
    'marking.slot-treble': value('marking.slot-treble') - back,
    'marking.slot-bass': value('marking.slot-bass') - back,
  });

  test('0.4 too far back is the set-back’s cents when laid by the edge', () => {
    const said = meaning(STRAIGHT, (value) => marks(value, 0.4));
    expect(said.slot.back).toBeCloseTo(0.4, 9);
    expect(said.slot.turn).toBeCloseTo(0, 9);
    expect(said.outside).toBe(3);
    const wanted = centsOf({ ...STRAIGHT, 'saddle.setback': 4.4 });
    said.strings.forEach(({ cents, note }, i) => {
      expect(Math.abs(cents.byEdge - (wanted[i] as number)), note).toBeLessThan(0.01);
    });
    expect(said.text[0]).toContain('0.40 mm further back on the bridge:');
    expect(said.text[0], 'no angle that isn’t off').not.toContain('in place of');
    const [table] = said.tables;
    expect(table?.title).toBe('Cents off at the 12th fret');
    expect(table?.rows.map((row) => row.length)).toEqual([4, 4, 4, 4, 4, 4]);
  });

  test('its middle alone tells, and an end beyond the middle', () => {
    const middle = meaning(STRAIGHT, (value) => ({
      'marking.slot-middle': value('marking.slot-middle') + 0.4,
    }));
    expect(middle.slot.back).toBeCloseTo(0.4, 9);
    const one = meaning(STRAIGHT, (value) => ({
      'marking.slot-middle': value('marking.slot-middle') + 0.2,
      'marking.slot-treble': value('marking.slot-treble') - 0.2,
    }));
    expect(one.slot.back).toBeCloseTo(0.2, 9);
    expect(one.slot.turn).toBeCloseTo(0, 9);
  });

  test('the finished bridge counts before any mark', () => {
    const said = meaning(STRAIGHT, (value) => ({
      ...marks(value, 0.4),
      'check.slot-treble': value('check.slot-treble'),
      'check.slot-bass': value('check.slot-bass'),
    }));
    expect(said.slot.back).toBeCloseTo(0, 9);
  });

  test('a shim turns the slot by what it is off, its angle and its height alike', () => {
    const byAngle = meaning(STRAIGHT, (value) => ({ 'slot.shim-angle': value('slot.shim-angle') + 0.5 }));
    expect(byAngle.slot.turn).toBeCloseTo(0.5, 9);
    const wanted = centsOf({ ...STRAIGHT, 'saddle.angle': 3.5 });
    byAngle.strings.forEach(({ cents, note }, i) => {
      expect(Math.abs(cents.bySlot - (wanted[i] as number)), note).toBeLessThan(0.01);
    });
    const byHeight = meaning(STRAIGHT, () => ({ 'slot.shim-height': 300 * Math.tan((3.5 * Math.PI) / 180) }));
    expect(byHeight.slot.turn).toBeCloseTo(0.5, 9);
  });
});

describe('a bridge that came out otherwise is made up for by its saddle', () => {
  test.each([{}, { 'saddle.tilt': 7 }])('%o: heights that bring the action back', (changes: Changes) => {
    const one = bench(changes);
    const made = {
      'check.thickness': one.value('check.thickness') - 0.15,
      'check.slot-depth': one.value('check.slot-depth') - 0.1,
    };
    const first = whatItMeans(one.accepted, one.workshop, made);
    expect(first.tables[0]?.title).toBe('The saddle wanted now, mm along it');
    expect(first.tables[0]?.rows[2]?.[1]).toBe(first.strings[2]?.saddle.showing.toFixed(2));
    const saddle = (which: 'showing' | 'height') =>
      Object.fromEntries(first.strings.map((s, i) => [`saddle.${which}-${i + 1}`, s.saddle[which]]));
    for (const which of ['showing', 'height'] as const) {
      const then = whatItMeans(one.accepted, one.workshop, { ...made, ...saddle(which) });
      for (const { rise } of then.strings) expect(rise, which).toBeCloseTo(0, 9);
      // the thickness and no saddle height
      expect(then.outside).toBe(1);
      expect(then.text.join()).not.toContain('Action at the 12th fret comes out');
    }
    const asOnce = Object.fromEntries(
      first.strings.map((_, i) => [`saddle.showing-${i + 1}`, one.value(`saddle.showing-${i + 1}`)]),
    );
    expect(whatItMeans(one.accepted, one.workshop, { ...made, ...asOnce }).outside).toBe(7);
  });

  test('a floor cut right under a crown too low stands where it was: foot to crown stays', () => {
    const one = bench();
    const said = whatItMeans(one.accepted, one.workshop, {
      'slot.depth': one.value('slot.depth'),
      'crown.thickness': one.value('crown.thickness') - 0.15,
    });
    said.strings.forEach(({ saddle, rise }, i) => {
      expect(rise).toBeCloseTo(0, 9);
      expect(saddle.showing).toBeCloseTo(one.value(`saddle.showing-${i + 1}`) + 0.15, 9);
      expect(saddle.height).toBeCloseTo(one.value(`saddle.height-${i + 1}`), 9);
    });
  });
});

test('foot to crown without a measured depth says for which slot it is', () => {
  const thin = { 'check.thickness': 9.35 };
  const words = 'is for a slot 5.50 mm deep, as designed: measure it';
  expect(meaning({ 'top.thickness': 9.5 }, () => thin).text.join()).toContain(words);
  const known = meaning({ 'top.thickness': 9.5 }, () => ({ ...thin, 'check.slot-depth': 5.35 }));
  expect(known.text.join()).not.toContain('as designed: measure it');
});

test('a blank planed too thin: whether the thickness is still in it', () => {
  const by = (less: number) =>
    meaning({ 'top.thickness': 9.5 }, (value) => ({ 'thickness.planed': value('thickness.planed') - less }))
      .text[0];
  // 0.3 stand over the crown, 0.1 of it for finishing
  expect(by(0.15)).toContain('can still be reached: 0.15 mm stand over it.');
  expect(by(0.25)).toContain('0.05 mm stand over it, less than the 0.10 meant for finishing.');
  expect(by(0.5)).toContain('can no longer be reached: at most 9.30 mm of 9.50.');
});
