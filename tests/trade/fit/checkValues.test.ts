import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { type Changes, change } from '../../support/change.ts';

/*
 * Published and derived numbers, reached through a whole design: what a builder types, read and solved. The light set's
 * set-backs and tensions: derived by two independent programs, its cores assumed; the formulas are Anderson &
 * Beausoleil's, J. Acoust. Soc. Am. 156(1), 683 (2024), and their ends' firmness is fitted.
 */
const LIGHT: Changes = {
  'guitar.scale': '25.4 in',
  'guitar.fretboard': 'constant',
  'guitar.fretboardRadius': '16 in',
  'strings.notes': ['E4', 'B3', 'G3', 'D3', 'A2', 'E2'],
  'strings.diameters': ['.012 in', '.016 in', '.024 in', '.032 in', '.042 in', '.053 in'],
  'strings.cores': ['.012 in', '.016 in', '.011 in', '.014 in', '.016 in', '.018 in'],
  'strings.wraps': [8800, 8800, 8800, 8800, 8800, 8800],
  'strings.pitch': 440,
  'strings.modulus': 200,
  'strings.spread': 55,
  'action.treble': 1.9,
  'action.bass': 2.4,
  'action.firstTreble': 0.4,
  'action.firstBass': 0.55,
  'action.planeBy': 'straightedge',
  'action.planeHeight': 9.3,
  'action.nut': 'none',
  'saddle.rule': 'twelfth',
  'saddle.line': 'squares',
};

const fitOf = (changes: Changes = {}) => acceptDesign(change(initialDesign(), { ...LIGHT, ...changes }));

const SETBACKS = {
  1: [1.676, 3.1609, 1.2768, 2.1945, 3.1043, 4.5109],
  2: [2.5739, 4.7476, 1.9445, 3.2737, 4.5352, 6.4149],
} as const;

describe.each([
  [1, 2.2196, [1.588, 2.6539, 3.7198]],
  [2, 2.9584, [2.4938, 3.915, 5.3362]],
] as const)('I4: the light set’s slot with α = %i', (firmEnds, angle, [treble, centre, bass]) => {
  const { design, curves, fit } = fitOf({ 'saddle.firmEnds': firmEnds });

  test('each string asks for its set-back', () => {
    for (const [i, wanted] of SETBACKS[firmEnds].entries())
      expect(Math.abs((fit.slot.wanted[i]?.saddleMm ?? 0) - wanted), `string ${i + 1}`).toBeLessThan(0.002);
  });

  test('the line through them has its angle and its places', () => {
    expect(Math.abs(fit.slot.line.angleDeg - angle), `angle ${fit.slot.line.angleDeg}°`).toBeLessThan(0.003);
    for (const [end, found, known] of [
      ['treble', fit.slot.line.trebleMm, treble],
      ['centre', fit.slot.line.centreMm, centre],
      ['bass', fit.slot.line.bassMm, bass],
    ] as const)
      expect(Math.abs(found - known), `${end}: ${found} mm`).toBeLessThan(0.002);
  });

  test('the part is drawn with it, and α = 1 stands beside it', () => {
    expect(Math.abs((curves.slot.angle * 180) / Math.PI - angle)).toBeLessThan(0.003);
    expect(Math.abs(design.saddle.setback - centre)).toBeLessThan(0.002);
    expect(Math.abs(fit.slot.least.angleDeg - 2.2196)).toBeLessThan(0.003);
    expect(Math.abs(fit.slot.least.centreMm - 2.6539)).toBeLessThan(0.002);
  });
});

test('S1, S4, S5, S6, S7: frequencies, masses, tensions and inharmonicity of the light set', () => {
  const { fit } = fitOf();
  const known = [
    // Hz (A = 440), kg/m where one is known, N
    [329.6276, 5.72782e-4, 103.62],
    [246.9417, 1.01828e-3, 103.38],
    [195.9977, 2.0748e-3, 132.7],
    [146.8324, 3.6794e-3, 132.07],
    [110, 6.2995e-3, 126.91],
    [82.4069, 9.9915e-3, 112.97],
  ] as const;
  for (const [i, [hz, kgM, newtons]] of known.entries()) {
    const string = fit.strings[i];
    expect(Math.abs((string?.frequencyHz ?? 0) - hz), `Hz of string ${i + 1}`).toBeLessThan(1e-4);
    expect(Math.abs((string?.massKgM ?? 0) - kgM), `kg/m of string ${i + 1}`).toBeLessThan(1e-7);
    expect(Math.abs((string?.tensionN ?? 0) - newtons), `N of string ${i + 1}`).toBeLessThan(0.05);
  }
  const sum = fit.strings.reduce((total, { tensionN }) => total + tensionN, 0);
  expect(Math.abs(sum - 711.6), `${sum} N`).toBeLessThan(0.06);
  expect(Math.abs((fit.strings[0]?.inharmonicity ?? 0) / 1.939e-5 - 1)).toBeLessThan(1e-3);
});

describe('heights over the soundboard (derived)', () => {
  test('I3: over the frets at nut and saddle', () => {
    const { heights } = fitOf().fit;
    for (const [i, nut, saddle] of [
      [0, 0.2103, 3.5897],
      [5, 0.3161, 4.4839],
    ] as const) {
      expect(Math.abs((heights[i]?.nut ?? 0) - nut), `string ${i + 1}`).toBeLessThan(1e-4);
      expect(Math.abs((heights[i]?.saddle ?? 0) - saddle), `string ${i + 1}`).toBeLessThan(1e-4);
    }
  });

  test('each string’s underside is the frets’ plane less the fretboard’s fall and the string over it', () => {
    const { undersides } = fitOf().fit.height;
    // the arc of 16 in falls so much at 27.5, 16.5 and 5.5 mm
    const falls = [0.93149, 0.33509, 0.03722, 0.03722, 0.33509, 0.93149];
    for (const [i, fall] of falls.entries()) {
      const over = 3.5897 + ((4.4839 - 3.5897) * i) / 5;
      expect(Math.abs((undersides[i] ?? 0) - (9.3 - fall + over)), `string ${i + 1}`).toBeLessThan(2e-4);
    }
  });

  test('the frets’ plane from how the neck is set: 14th fret, 7.35 mm there, half a degree', () => {
    const neck = {
      'action.planeBy': 'neck',
      'action.neckJoint': 14,
      'action.jointHeight': 7.35,
      'action.neckAngle': 0.5,
      'action.domeRise': 0,
      'saddle.setbackBy': 'set',
      'saddle.setback': 0,
    };
    expect(fitOf(neck).fit.height.fretPlane).toBeCloseTo(9.858, 4);
    // every millimetre that the soundboard rises brings the plane a millimetre nearer
    expect(fitOf({ ...neck, 'action.domeRise': 0.5 }).fit.height.fretPlane).toBeCloseTo(9.358, 4);
    // and a saddle further back stands under a plane that has risen on
    const on = fitOf({ ...neck, 'saddle.setback': 4 }).fit.height.fretPlane;
    expect(on - 9.858).toBeCloseTo(4 * Math.tan(Math.PI / 360), 4);
  });

  test('a cone of 12 in to 16 in at the 20th fret is of 17.83925 in at the saddle', () => {
    const cone = {
      'guitar.fretboard': 'conical',
      'guitar.fretboardRadius': '12 in',
      'guitar.fretboardRadiusAtFret': '16 in',
      'guitar.fretboardFret': 20,
      'saddle.setbackBy': 'set',
      'saddle.setback': 0,
    };
    expect(fitOf(cone).fit.height.fretboardRadius / 25.4).toBeCloseTo(17.83925, 5);
    expect(fitOf(cone).curves.profile.crownRadius / 25.4).toBeCloseTo(17.83925, 5);
  });

  test('half a millimetre of action is a millimetre of saddle', () => {
    const kept = { 'saddle.setbackBy': 'set', 'top.thicknessBy': 'set', 'top.thickness': 9 };
    const at12 = { 'action.treble': 1.4, 'action.bass': 1.9 };
    // the nut's height stays: the string falls over the 1st fret by 2·(1 − 2^(−1/12)) of what it falls over the 12th
    const first = 2 * (1 - 2 ** (-1 / 12)) * 0.5;
    const lower = { ...at12, 'action.firstTreble': 0.4 - first, 'action.firstBass': 0.55 - first };
    const [high, low] = [fitOf(kept).fit.height, fitOf({ ...kept, ...lower }).fit.height];
    expect(high.showing - low.showing).toBeCloseTo(1, 3);
    for (const [i, z] of high.undersides.entries()) expect(z - (low.undersides[i] ?? 0)).toBeCloseTo(1, 9);
  });
});
