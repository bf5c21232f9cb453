import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { comparison } from '../../src/report/compare/comparison.ts';
import { headlines } from '../../src/report/headlines.ts';
import { midStiffness } from '../../src/report/midStiffness.ts';
import { partFigures } from '../../src/report/partFigures.ts';
import { sensitivity } from '../../src/report/sensitivity.ts';
import { fitReport } from '../../src/trade/fit/fitReport.ts';
import { FORMULAS } from '../../src/trade/formulas.ts';
import { type Changes, designText } from '../support/change.ts';
import { acceptedDesigns } from '../support/designs.ts';

function figured(changes: Changes = {}) {
  const accepted = acceptDesign(designText(changes));
  const { design, curves, fit } = accepted;
  return { accepted, figures: partFigures(accepted, fitReport(design, curves, fit)) };
}

/** A straight bar: no crown to speak of, no edge, flat below, a shallow slot far from its middle plane. */
const BAR = {
  'footprint.backEdge': 'straight',
  'footprint.frontEdge': 'straight',
  'footprint.tip': 'square',
  'footprint.depthCentre': 36,
  'underside.shape': 'flat',
  'top.edge': 'none',
  'top.crown': 'set',
  'top.crownRadius': 5000,
  'top.thickness': 9,
  'timber.stiffness': 12.3,
  'saddle.depth': 4,
  'saddle.slotWidth': 3,
  'saddle.cutter': 3,
  'saddle.angle': 0,
};

describe('W5: the middle’s stiffness (standard beam, derived)', () => {
  test('a rectangle of 36 × 9 less a slot of 3 × 4 from its top, by parallel axes', () => {
    const [whole, cut] = [36 * 9, 3 * 4];
    const z = (whole * 4.5 - cut * 7) / (whole - cut);
    const second = (36 * 9 ** 3) / 12 + whole * (4.5 - z) ** 2 - ((3 * 4 ** 3) / 12 + cut * (7 - z) ** 2);
    const { figures, accepted } = figured(BAR);
    expect(figures.bending.midNm2).toBeCloseTo((12.3 * second) / 1000, 2);
    expect(midStiffness(accepted.curves, 12.3)).toBe(figures.bending.midNm2);
    // the bar of 8 mm that is as stiff: h = ∛(12·EI/(E·b))
    const brace = Math.cbrt((12e3 * figures.bending.midNm2) / (10.8 * 8));
    expect(figures.bending.braceMm).toBeCloseTo(brace, 9);
  });

  test('twice the E bends half as far, weighs the same and bears the same', () => {
    const { figures: once } = figured({ 'timber.stiffness': 8 });
    const { figures: twice } = figured({ 'timber.stiffness': 16 });
    expect(twice.bending.deflectionMm).toBeCloseTo(once.bending.deflectionMm / 2, 9);
    expect(twice.bending.twistDegPerNm).toBeCloseTo(once.bending.twistDegPerNm / 2, 9);
    expect(twice.mass).toEqual(once.mass);
    expect(twice.loads).toEqual(once.loads);
  });
});

describe('mass', () => {
  test('reaming takes the cone between drill and reamer; saddle and pins come on top only when weighed', () => {
    const { mass } = figured().figures;
    expect(mass.reamed).toBeLessThan(mass.drilled);
    expect(mass.together).toBe(mass.reamed);
    const strung = figured({ 'timber.weighed': 'strung', 'timber.pinMass': 0.9 }).figures.mass;
    expect(strung.pins).toBeCloseTo(6 * 0.9, 9);
    expect(strung.together).toBeCloseTo(strung.reamed + (strung.saddle ?? 0) + 5.4, 9);
  });

  test('the parts add up to the whole, wings alike on a bridge that is', () => {
    for (const { accepted, figures } of [
      figured(),
      figured({ 'pins.channel': 'ramp', 'guitar.hand': 'left' }),
    ]) {
      const sum = figures.bending.parts.reduce((all, { massG }) => all + massG, 0);
      expect(sum / figures.mass.reamed, accepted.design.guitar.hand).toBeCloseTo(1, 3);
      const give = figures.bending.parts.reduce((all, { deflectionShare }) => all + deflectionShare, 0);
      expect(give).toBeCloseTo(1, 9);
      expect(figures.bending.parts[0]?.massG).toBeCloseTo(figures.bending.parts[2]?.massG ?? 0, 2);
    }
  });
});

describe('what a tenth does', () => {
  const { accepted } = figured();
  const knobs = sensitivity(accepted.design, accepted.curves);

  test('is what comes out when it is done', () => {
    for (const path of ['top.thickness', 'top.tip', 'footprint.depthCentre']) {
      const knob = knobs.find((one) => one.path === path);
      if (!knob) throw new Error(`${path} is left out`);
      // ten times as much, so that the comparison is of the slope and not of rounding
      const more = figured({ [path]: knob.value + 0.5 }).figures;
      const less = figured({ [path]: knob.value - 0.5 }).figures;
      expect((more.mass.reamed - less.mass.reamed) / 10, path).toBeCloseTo(knob.massG, 3);
      expect((more.bending.midNm2 - less.bending.midNm2) / 10, path).toBeCloseTo(knob.stiffnessNm2, 2);
    }
  });

  test('of a depth that doesn’t matter to the middle is nothing there, and dead knobs are left out', () => {
    expect(knobs.find(({ path }) => path === 'top.tip')?.stiffnessNm2).toBe(0);
    const straight = figured({
      'footprint.backEdge': 'straight',
      'footprint.frontEdge': 'straight',
    }).accepted;
    const paths = sensitivity(straight.design, straight.curves).map(({ path }) => path);
    expect(paths).not.toContain('footprint.depthWing');
    expect(paths).toContain('top.thickness');
  });
});

test('every headline is a number with a formula, for random designs, and a design is 100 % of itself', () => {
  for (const [i, accepted] of acceptedDesigns(12, 31).accepted.entries()) {
    const figures = partFigures(accepted, fitReport(accepted.design, accepted.curves, accepted.fit));
    for (const { id, value, formula } of headlines(figures)) {
      expect(Number.isFinite(value), `${id} of design ${i} of seed 31: ${value}`).toBe(true);
      expect(FORMULAS[formula], id).toBeDefined();
    }
    const { figures: pairs, differences } = comparison({ accepted, figures }, { accepted, figures });
    expect(differences).toEqual([]);
    for (const { id, share } of pairs) expect(share ?? 1, id).toBe(1);
  }
});
