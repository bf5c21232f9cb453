import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { holeRadius } from '../../models/curves/holeRadius.ts';
import { slotToPart } from '../../models/curves/slot.ts';
import { topHeight } from '../../models/curves/topHeight.ts';
import { undersideHeight } from '../../models/curves/underside.ts';
import { surfaceFigures } from '../../models/surface/figures.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { jobByHand } from '../../src/making/jobByHand.ts';
import { usualWorkshop } from '../../src/making/workshop.ts';
import { outlineTemplate } from '../../src/sheets/templates/outlineTemplate.ts';
import { CAUTIONS } from '../../src/trade/cautions.ts';
import { saddleFit } from '../../src/trade/fit/saddleFit.ts';
import { change, designText, thrown } from '../support/change.ts';
import { dejaVu } from '../support/dejaVu.ts';
import { acceptedDesigns } from '../support/designs.ts';
import { anyTools, bench, benchOf } from './onBench.ts';

const starters = JSON.parse(readFileSync('public/starters/index.json', 'utf8')) as { file: string }[];
const starterBenches = starters.map(({ file }) =>
  benchOf(acceptDesign(JSON.parse(readFileSync(`public/starters/${file}`, 'utf8')))),
);
const random = acceptedDesigns(80, 2026).accepted;
const tools = fc.sample(anyTools, { numRuns: random.length, seed: 77 });
const randomBenches = random.map((accepted, i) =>
  benchOf(accepted, tools[i]?.(accepted.design.saddle.slotWidth)),
);
const all = [...starterBenches, ...randomBenches];

describe('every job', () => {
  test('has its steps in working order, those that the design has no part for left out', () => {
    const order = [
      ...['blank', 'thickness', 'outline', 'marking', 'drilling', 'slot', 'underside', 'crown', 'wings'],
      ...['edge', 'bevel', 'channels', 'finishing', 'check', 'saddle', 'reaming'],
    ];
    for (const { steps, accepted } of all) {
      const ids = steps.map(({ id }) => id as string);
      expect(ids, accepted.design.guitar.name).toEqual(order.filter((id) => ids.includes(id)));
      const { pins, top } = accepted.design;
      expect(ids.includes('edge')).toBe(top.edge !== 'none');
      expect(ids.includes('bevel')).toBe(pins.bevel === 'cut');
      expect(ids.includes('channels')).toBe(pins.channel === 'ramp');
      if (pins.taper === 0) expect(ids).not.toContain('reaming');
      expect(ids.length).toBeGreaterThanOrEqual(12);
    }
    expect(bench({ 'pins.channel': 'ramp' }).steps.map(({ id }) => id)).toEqual(order);
  });

  test('has settings that are finite, and positive but for what may lie on the centre line or under the top', () => {
    const mayBeNothing = /^marking\.pin-\d+$|^slot\.shim|^wings\.angle|^finishing\.allowance/;
    for (const { steps, accepted, workshop } of all) {
      for (const { id, value, tolerance, label, formula, decimals } of steps.flatMap((s) => s.settings)) {
        const where = `${accepted.design.guitar.name}: ${id} ${value} with ${JSON.stringify(workshop)}`;
        expect(Number.isFinite(value), where).toBe(true);
        if (mayBeNothing.test(id)) expect(value, where).toBeGreaterThanOrEqual(0);
        else if (!id.startsWith('saddle.')) expect(value, where).toBeGreaterThan(0);
        expect(decimals).toBeGreaterThanOrEqual(0);
        for (const text of [label, formula]) {
          expect(text, where).toMatch(/\S/);
          expect(text, where).not.toMatch(/NaN|undefined|Infinity/);
        }
        if (!tolerance) continue;
        expect(Math.min(tolerance.minus, tolerance.plus), where).toBeGreaterThanOrEqual(0);
        expect(Math.max(tolerance.minus, tolerance.plus), where).toBeGreaterThan(0);
        expect(tolerance.ground, where).toMatch(/\S/);
      }
    }
  });

  test('says of a number that somebody typed whose it is, and of no other that it is designed', () => {
    const typed = /^as designed|as set in the workshop/;
    for (const { steps, accepted } of all) {
      for (const { id, formula, known, value } of steps.flatMap((s) => s.settings)) {
        expect(typed.test(formula), `${id}: ${formula}`).toBe(known === 'set');
        const numbers = [accepted.design, usualWorkshop(accepted.design.saddle.slotWidth)];
        // what is designed is a number of the design, not one made out of it
        if (formula.startsWith('as designed') && id !== 'slot.shim-angle')
          expect(JSON.stringify(numbers), `${id} ${value}`).toContain(`${value}`);
      }
    }
  });

  test('has ids of its own for every setting, under its step’s', () => {
    for (const { steps } of all) {
      const ids = steps.flatMap((step) => step.settings.map(({ id }) => id));
      expect(new Set(ids).size).toBe(ids.length);
      for (const step of steps) for (const { id } of step.settings) expect(id.split('.')[0]).toBe(step.id);
    }
  });

  test('says what to do, what to measure and with what, and puts rules and qualified persons first wherever it warns', () => {
    for (const step of all.flatMap(({ steps }) => steps)) {
      expect(step.work.length).toBeGreaterThan(0);
      expect(step.check).toMatch(/\S/);
      expect(step.needs.length).toBeGreaterThan(0);
      if (step.cautions.length > 0) expect(step.cautions).toContain('first');
    }
  });

  test('adds up', () => {
    for (const { value, accepted, workshop, step } of all) {
      const { design } = accepted;
      const name = design.guitar.name;
      const below = value('thickness.planed') - design.top.thickness - workshop.topAllowance;
      const tip = -undersideHeight(accepted.curves.underside, design.footprint.length / 2, 0);
      expect(below, `${name}: the blank holds the underside`).toBeGreaterThan(tip - 0.02);
      expect(value('blank.thickness')).toBeGreaterThan(value('thickness.planed'));
      expect(value('blank.length')).toBeGreaterThan(value('outline.length'));
      if (workshop.slot === 'router') {
        expect(value('slot.pass') * value('slot.passes')).toBeCloseTo(value('slot.depth'), 9);
        expect(value('slot.pass')).toBeLessThanOrEqual(workshop.greatestPass + 1e-9);
      } else expect(step('slot')?.settings.map(({ id }) => id)).not.toContain('slot.fence');
      expect(value('slot.depth'), `${name}: wood stays under the slot`).toBeLessThan(
        value('thickness.planed') / Math.cos(accepted.curves.slot.tilt),
      );
      expect(value('crown.thickness')).toBeLessThanOrEqual(value('underside.thickness') + 1e-9);
    }
  });
});

describe('marks lead to the very places drawn', () => {
  test.each(['right', 'left'])('%s-handed, leaning pins in two rows', (hand) => {
    const one = bench({
      'guitar.hand': hand,
      'pins.line': 'parallel',
      'pins.rows': 'two',
      'pins.rowGap': 5,
      'pins.behindSlot': 12,
      'footprint.depthCentre': 42,
      'saddle.tilt': 5,
    });
    const { curves, design } = one.accepted;
    const toTreble = hand === 'right' ? 1 : -1;
    const back = design.footprint.slotBehindFront - design.footprint.depthCentre;
    const left = one.workshop.finishAllowance;
    curves.pins.forEach(({ at: [x, y] }, i) => {
      const setting = one.setting(`marking.pin-${i + 1}`);
      const side = setting.label.endsWith('treble') ? toTreble : -toTreble;
      expect(side * setting.value, setting.label).toBeCloseTo(x, 9);
      expect(back - left + one.value(`marking.pin-${i + 1}-back`)).toBeCloseTo(y, 9);
    });
    const face = design.top.thickness + one.workshop.topAllowance;
    const up = (face - design.top.thickness) / Math.cos(curves.slot.tilt);
    for (const end of ['treble', 'bass']) {
      const sign = (end === 'treble' ? 1 : -1) * toTreble;
      const [x, y, z] = slotToPart(curves.slot, design.top.thickness, sign * curves.slot.halfLength, 0, up);
      expect(z).toBeCloseTo(face, 9);
      expect(one.value(`marking.slot-${end}-across`)).toBeCloseTo(Math.abs(x), 9);
      expect(back - left + one.value(`marking.slot-${end}`)).toBeCloseTo(y, 9);
    }
    // the middle lies on the straight line through the ends
    const [t, b] = [one.value('marking.slot-treble'), one.value('marking.slot-bass')];
    const [tx, bx] = [one.value('marking.slot-treble-across'), one.value('marking.slot-bass-across')];
    const middle = b + ((t - b) * bx) / (tx + bx);
    const depth = design.footprint.depthCentre + 2 * left;
    expect(depth - one.value('marking.slot-middle')).toBeCloseTo(middle, 9);
  });

  test('one row square to the centre line has one distance from the back edge', () => {
    const one = bench({
      'pins.behindSlot': 13,
      'footprint.slotBehindFront': 11,
      'footprint.depthCentre': 36,
    });
    expect(one.value('marking.pin-line')).toBeCloseTo(36 - 11 - 13 + one.workshop.finishAllowance, 9);
    expect(one.value('marking.pin-1-back')).toBeNaN();
    expect(one.value('marking.pin-step')).toBeCloseTo(57 / 5, 9);
  });

  test('a left-handed bridge has the same settings, told from the other side', () => {
    for (const accepted of random.slice(0, 25)) {
      const tool = usualWorkshop(accepted.design.saddle.slotWidth);
      const mirrored = acceptDesign(
        change(accepted.text, { 'guitar.hand': accepted.design.guitar.hand === 'left' ? 'right' : 'left' }),
      );
      const [a, b] = [jobByHand(accepted, tool), jobByHand(mirrored, tool)];
      const told = (steps: typeof a) =>
        steps.flatMap((s) => s.settings.map(({ id, label }) => `${id} ${label}`));
      expect(told(b)).toEqual(told(a));
      const values = (steps: typeof a) => steps.flatMap((s) => s.settings.map(({ value }) => value));
      for (const [i, value] of values(b).entries())
        expect(value, told(a)[i]).toBeCloseTo(values(a)[i] as number, 6);
      const words = b
        .flatMap((s) => s.work)
        .filter((line) => !line.startsWith('Seen') && !line.startsWith('This is'));
      const before = a
        .flatMap((s) => s.work)
        .filter((line) => !line.startsWith('Seen') && !line.startsWith('This is'));
      expect(words).toEqual(before);
    }
  });
});

describe('closed forms', () => {
  // s = R − √(R² − c²/4), chord 155 mm; derived by two independent programs
  test.each([
    ['15 ft', 0.6569],
    ['25 ft', 0.39412],
    ['28 ft', 0.35189],
  ])('underside of %s: the gap under a straightedge from tip to tip', (radius, gap) => {
    const one = bench({ 'footprint.length': 155, 'guitar.soundboardRadius': radius });
    expect(Math.abs(one.value('underside.gap') - gap)).toBeLessThan(1e-5);
  });

  test('a flat glue face has no radius and no gap; one arched across none from front to back', () => {
    expect(bench({ 'underside.shape': 'flat' }).step('underside')?.settings).toHaveLength(1);
    const arched = bench({ 'underside.shape': 'cylinder' });
    expect(arched.value('underside.gap')).toBeGreaterThan(0.3);
    expect(arched.value('underside.gap-across')).toBeNaN();
  });

  // the widths that a cone of 5.6 at its mouth has at a depth; derived: C = 2·tan(a/2)
  test.each([
    [3, 5, 5.3381],
    [3, 9, 5.1287],
    [3, 10, 5.0763],
    [5, 5, 5.1634],
    [5, 9, 4.8141],
    [5, 10, 4.7268],
  ])('reamed at %d° the cone reaches %d mm down to a drill of %f', (taper, depth, drill) => {
    const one = bench({ 'pins.taper': taper, 'pins.mouth': 5.6, 'pins.drill': drill, 'pins.bevel': 'none' });
    expect(Math.abs(one.value('reaming.depth') - depth)).toBeLessThan(0.002);
  });

  test('0.1 mm of diameter is 1.909 mm of depth at 3°', () => {
    expect(bench({ 'pins.taper': 3 }).value('reaming.tenth')).toBeCloseTo(1.909, 3);
    expect(bench({ 'pins.taper': 5 }).value('reaming.tenth')).toBeCloseTo(0.1 / 0.087322, 4);
  });

  test('by depth or by diameter: the one that tells comes first', () => {
    const first = (reamBy: 'depth' | 'diameter') => bench({}, { reamBy }).step('reaming')?.settings[0]?.id;
    expect(first('depth')).toBe('reaming.depth');
    expect(first('diameter')).toBe('reaming.mouth');
  });

  test('a reamed hole is measured inside the ring that its bevel leaves, on the drawn hole', () => {
    const one = bench({ 'pins.bevel': 'cut' });
    expect(one.value('reaming.mouth')).toBeLessThan(one.accepted.design.pins.mouth);
    const { bevelDiameter } = one.accepted.design.pins;
    expect(one.value('reaming.mouth')).toBeCloseTo(bevelDiameter - 2 * one.value('bevel.ring-left'), 9);
    expect(one.setting('reaming.mouth').formula).toContain('5.60');
    expect(bench({ 'pins.bevel': 'none' }).value('reaming.mouth')).toBe(5.6);
  });

  test('a gap from front to back that no gauge tells is not asked for', () => {
    const domed = (radius: number) =>
      bench({ 'underside.shape': 'sphere', 'underside.radius': radius, 'footprint.depthCentre': 34 });
    // 34² / (8 R): 0.019 and 0.072
    expect(domed(7620).value('underside.gap-across')).toBeNaN();
    expect(domed(2000).value('underside.gap-across')).toBeCloseTo(0.0723, 4);
  });

  test('at least so much is rounded up: the blank’s thickness and the saddle’s blank', () => {
    for (const thickness of [9.5, 9.546, 9.612]) {
      const one = bench({ 'top.thickness': thickness });
      const said = ({ value, decimals }: ReturnType<typeof one.setting>) => Number(value.toFixed(decimals));
      expect(said(one.setting('blank.thickness'))).toBeGreaterThanOrEqual(
        one.value('thickness.planed') + 1 - 1e-6,
      );
      const { design, curves, fit } = one.accepted;
      const { blank } = saddleFit(design, curves, fit);
      if (!blank) throw new Error('this saddle has a blank');
      expect(said(one.setting('saddle.blank-height'))).toBe(blank.height);
      expect(blank.height).toBeGreaterThanOrEqual(blank.finished + 0.5 - 1e-6);
      expect(blank.height - blank.finished).toBeLessThan(0.51);
    }
  });

  test('the drill that bores a slot’s round ends by hand is at hand', () => {
    const needs = (ends: string) => bench({ 'saddle.ends': ends }, { slot: 'hand' }).step('slot')?.needs;
    expect(needs('round')).toContain('drill as wide as the slot');
    expect(needs('open')).not.toContain('drill as wide as the slot');
  });

  test('holes left as drilled are not reamed', () => {
    expect(bench({ 'pins.taper': 0 }).step('reaming')).toBeUndefined();
    expect(bench({ 'pins.mouth': '3/16 in' }).step('reaming')).toBeUndefined();
  });
});

describe('bevels', () => {
  /** Where the hole's wall leaves the cone of the countersink, going down from the surface: by looking at its drawn outline. */
  const ring = (
    outline: readonly (readonly [number, number])[],
    top: number,
    diameter: number,
    angle: number,
  ) => {
    const flare = Math.tan((angle * Math.PI) / 360);
    for (let down = 0; down < 4; down += 0.0005) {
      const cone = diameter / 2 - down * flare;
      if (holeRadius(outline, top - down) > cone + 1e-6) return diameter / 2 - cone;
    }
    return Number.NaN;
  };

  test.each([
    [5, 90, 6.6],
    [3, 90, 6.2],
    [5, 120, 7],
    [8, 60, 6.4],
  ])(
    'taper %d°, countersink %d° to %f: rings before and after as the drawn holes have them',
    (taper, angle, wide) => {
      const one = bench(
        { 'pins.taper': taper, 'pins.bevelAngle': angle, 'pins.bevelDiameter': wide },
        { finishAllowance: 0 },
      );
      const pin = one.accepted.curves.pins[2];
      if (!pin) throw new Error('no third pin');
      expect(one.value('bevel.diameter'), 'reaming leaves its outside').toBeCloseTo(wide, 9);
      expect(
        Math.abs(one.value('bevel.ring') - ring(pin.outline.drilled, pin.top, wide, angle)),
      ).toBeLessThan(0.001);
      expect(
        Math.abs(one.value('bevel.ring-left') - ring(pin.outline.reamed, pin.top, wide, angle)),
      ).toBeLessThan(0.001);
      expect(one.value('bevel.ring-left')).toBeLessThan(one.value('bevel.ring'));
    },
  );

  test('what finishing takes off is cut wider: 0.1 mm of a 90° cone is 0.2 of its diameter', () => {
    const one = bench({ 'pins.bevelDiameter': 6.6, 'pins.bevelAngle': 90 }, { finishAllowance: 0.1 });
    expect(one.value('bevel.diameter')).toBeCloseTo(6.8, 9);
  });

  test('the reamer first touches where the drawn hole is narrowest and highest, and goes on till its mouth is right', () => {
    const one = bench({ 'pins.taper': 5, 'pins.mouth': 5.6, 'pins.bevelDiameter': 6.6 });
    const pin = one.accepted.curves.pins[0];
    if (!pin) throw new Error('no pin');
    // the cone's width at the surface grows until it touches the drilled hole's outline anywhere
    const slope = Math.tan((2.5 * Math.PI) / 180);
    const free = (mouth: number) =>
      Array.from({ length: 9000 }, (_, i) => i / 1000).every(
        (down) => mouth - down * slope <= holeRadius(pin.outline.drilled, pin.top - down) + 1e-9,
      );
    let [low, high] = [1, 4];
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      if (free(middle)) low = middle;
      else high = middle;
    }
    // each millimetre that it sinks widens the cone at the surface by its slope
    expect(Math.abs(one.value('reaming.depth') - (5.6 / 2 - low) / slope)).toBeLessThan(0.02);
  });
});

describe('top, wings and the whole', () => {
  test('the crown’s fall and the wings’ saw line lie on the drawn top', () => {
    for (const { value, accepted, workshop } of all) {
      const { curves, design } = accepted;
      const { profile } = curves;
      const half = design.footprint.length / 2;
      const x = design.top.block / 2;
      const R = profile.crownRadius;
      expect(value('crown.fall')).toBeCloseTo(R - Math.sqrt(R * R - x * x), 6);
      const start = value('wings.start');
      const rise = Math.tan((value('wings.angle') * Math.PI) / 180);
      for (const share of [0, 0.25, 0.5, 0.75, 1]) {
        const at = start + share * (half - start);
        const line = topHeight(profile, half) + (half - at) * rise;
        const over = line - topHeight(profile, at);
        if (design.top.wing === 'straight') expect(over, `${design.guitar.name} at ${at}`).toBeCloseTo(0, 6);
        else expect(over, `${design.guitar.name} at ${at}`).toBeGreaterThan(-1e-6);
      }
      const low = undersideHeight(curves.underside, half, 0);
      expect(
        Math.abs(value('wings.tip') - workshop.finishAllowance - (topHeight(profile, half) - low)),
      ).toBeLessThan(0.2);
    }
  });

  test('a hollow wing lies deepest under its saw line by its sagitta', () => {
    const one = bench({ 'top.wing': 'hollow', 'top.wingRise': 2.5 });
    const { profile } = one.accepted.curves;
    const [start, half] = [one.value('wings.start'), one.accepted.design.footprint.length / 2];
    const angle = (one.value('wings.angle') * Math.PI) / 180;
    let most = 0;
    for (let i = 0; i <= 4000; i++) {
      const x = start + ((half - start) * i) / 4000;
      const line = topHeight(profile, half) + (half - x) * Math.tan(angle);
      most = Math.max(most, (line - topHeight(profile, x)) * Math.cos(angle));
    }
    expect(one.value('wings.hollow-depth')).toBeCloseTo(most, 4);
    expect(bench().value('wings.hollow')).toBeNaN();
  });

  test('mass and wood are those of the part', () => {
    const one = bench({ 'saddle.depth': 5.5, 'underside.shape': 'flat', 'saddle.floor': 'flat' });
    const { curves, design } = one.accepted;
    expect(one.value('check.wood-under')).toBeCloseTo(9.5 - 5.5, 6);
    const cm3 = surfaceFigures(curves, 'drilled').volumeMm3 / 1000;
    expect(one.value('check.mass')).toBeCloseTo((cm3 * design.timber.density) / 1000, 9);
  });

  test('what shows of the saddle and what stands in the slot make its height', () => {
    const one = bench({ 'top.thickness': 9.5, 'saddle.showing': 3.2, 'saddle.depth': 5 });
    const { fit, curves } = one.accepted;
    fit.height.undersides.forEach((z, i) => {
      const x = fit.strings[i]?.x ?? 0;
      expect(one.value(`saddle.showing-${i + 1}`)).toBeCloseTo(z - topHeight(curves.profile, x), 9);
      expect(one.value(`saddle.height-${i + 1}`)).toBeCloseTo(z - (9.5 - 5), 9);
    });
  });
});

describe('the outline is worked to a line that is the finished one', () => {
  test.each(['machine', 'hand'] as const)(
    'by %s: what is left beside it is what the sizes are larger by',
    (outline) => {
      const one = bench({ 'footprint.length': 150 }, { outline, finishAllowance: 0.15 });
      const [, said = ''] = /within ([\d.]+) mm of it/.exec(one.step('outline')?.work.join(' ') ?? '') ?? [];
      expect(one.value('outline.length')).toBeCloseTo(150 + 2 * Number(said), 9);
      const bare = bench({}, { outline, finishAllowance: 0 }).step('outline');
      expect(bare?.work.join(' ')).toMatch(/(sand|scrape) to it/);
    },
  );

  test('the template says the same', () => {
    const { notes, inks } = outlineTemplate(bench().accepted, dejaVu);
    expect(notes[0]).toMatch(/line is the finished outline: .* to within what is left for finishing/);
    expect(inks).toContainEqual(
      expect.objectContaining({ layer: 'outline', chain: bench().accepted.curves.outline }),
    );
  });
});

describe('other tools, other words', () => {
  test('each choice says its own', () => {
    const words = (
      id: 'drilling' | 'slot' | 'outline' | 'wings' | 'bevel',
      tools: Parameters<typeof bench>[1],
    ) => JSON.stringify(bench({}, tools).step(id));
    expect(words('drilling', { drill: 'press' })).toContain('drill press');
    expect(words('drilling', { drill: 'hand' })).toContain('guide block');
    expect(words('bevel', { drill: 'hand' })).toContain('by hand');
    expect(words('slot', { slot: 'router' })).toContain('Set the fence');
    expect(words('slot', { slot: 'hand' })).toContain('chisel');
    expect(words('outline', { outline: 'machine' })).toContain('bandsaw');
    expect(words('outline', { outline: 'hand' })).toContain('hand saw');
    expect(words('wings', { outline: 'hand' })).not.toContain('bandsaw');
  });

  test('a curved edge is shimmed on a carrier board', () => {
    const curved = bench({ 'footprint.backEdge': 'tail' }, { shimSide: 'back' });
    expect(curved.step('slot')?.work[0]).toContain('carrier board');
    expect(bench().step('slot')?.work[0]).not.toContain('carrier board');
  });

  test('machines warn of fixture and cutter, sanding of dust', () => {
    expect(bench().step('slot')?.cautions).toEqual(['dust', 'allergy', 'machines', 'first']);
    expect(bench({ 'saddle.ends': 'open' }, { slot: 'hand' }).step('slot')?.cautions).not.toContain(
      'machines',
    );
    expect(bench().step('drilling')?.cautions).toContain('machines');
    expect(bench().step('finishing')?.cautions).toContain('machines');
    expect(bench().step('blank')?.cautions).toEqual(expect.arrayContaining(['allergy', 'listed']));
    expect(bench().step('reaming')?.cautions).toContain('strings');
  });

  test('whatever cuts wood warns of its dust and of allergy; bone gives dust alone; marking and measuring give none', () => {
    for (const { steps } of all) {
      for (const { id, cautions } of steps) {
        expect(cautions.includes('dust'), id).toBe(id !== 'marking' && id !== 'check');
        expect(cautions.includes('allergy'), id).toBe(cautions.includes('dust') && id !== 'saddle');
        expect(new Set(cautions).size, id).toBe(cautions.length);
      }
    }
  });

  test('a machine that a step names, in its words or its needs, is warned of there; and nothing else is', () => {
    const machine = /drill press|hand drill|bandsaw|sander|buffing wheel|drum|\brouter\b(?! plane)|^saw$/m;
    for (const { steps, workshop } of all) {
      for (const { id, cautions, needs, work } of steps) {
        const named = machine.test([...needs, ...work].join('\n'));
        expect(cautions.includes('machines'), `${id} with ${JSON.stringify(workshop)}`).toBe(named);
      }
    }
    for (const kind of ['drill press', 'router', 'saw', 'sander', 'buffing wheel'])
      expect(CAUTIONS.machines.text).toContain(kind);
  });

  test('the first step says that strength figures compare, and promise nothing', () => {
    for (const { steps } of all) expect(steps[0]?.cautions).toContain('strength');
    expect(CAUTIONS.strength.text).toMatch(/comparing .*not a guarantee/);
  });

  test('a cutter wider than the slot is refused, unless the slot is cut by hand', () => {
    const accepted = acceptDesign(designText({ 'saddle.slotWidth': 2.4 }));
    const workshop = { ...usualWorkshop(2.4), cutter: 3.175 };
    const problems = thrown(() => jobByHand(accepted, workshop));
    expect(problems).toMatchObject([
      {
        code: 'does-not-fit',
        path: 'workshop.cutter',
        value: '3.175',
        allowed: 'at most 2.4 mm in this slot',
      },
    ]);
    expect(jobByHand(accepted, { ...workshop, slot: 'hand' }).length).toBeGreaterThan(10);
  });
});
