import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { type Measured, whatItMeans } from '../../src/making/whatItMeans.ts';
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

test('all measured as wanted: nothing but the timber’s density to say', () => {
  const one = bench({ ...STRAIGHT, 'saddle.slotWidth': 3 });
  const measured = Object.fromEntries(
    one.steps.flatMap((s) => s.settings.map(({ id, value }) => [id, value])),
  );
  const said = whatItMeans(one.accepted, one.workshop, measured);
  expect(said.text).toHaveLength(1);
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
