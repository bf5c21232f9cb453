import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { sayProblem } from '../../../src/design/problem.ts';
import { fitReport } from '../../../src/trade/fit/fitReport.ts';
import { type Changes, change, problemsOf } from '../../support/change.ts';

/** Six entries of which one is replaced. */
const but = (list: readonly unknown[], i: number, entry: unknown) =>
  list.map((one, k) => (k === i ? entry : one));
const NOTES = ['E4', 'B3', 'G3', 'D3', 'A2', 'E2'];
const CORES = ['0.012 in', '0.016 in', '0.011 in', '0.014 in', '0.016 in', '0.018 in'];

describe('what no guitar has is refused: where, what was given, what is allowed, what to do', () => {
  const A_NOTE =
    /a note with its octave such as E4, F#3 or Bb2, or a frequency of 16 to 2000 Hz such as 82\.4 Hz/;
  test.each<[string, Changes, string, RegExp, RegExp, RegExp]>([
    [
      'a core thicker than its string',
      { 'strings.cores': but(CORES, 2, 0.7) },
      'strings.cores.3',
      /^0\.7$/,
      /^at most 0\.6.* in this string$/,
      /inside its string/,
    ],
    [
      'a list of cores that is too short',
      { 'strings.cores': CORES.slice(0, 3) },
      'strings.cores',
      /^a list of 3$/,
      /^one for each of 6 strings$/,
      /treble first/,
    ],
    [
      'a note too few',
      { 'strings.notes': NOTES.slice(0, 5) },
      'strings.notes',
      /^a list of 5$/,
      /^one for each of 6 strings$/,
      /treble first/,
    ],
    [
      'a note that does not exist',
      { 'strings.notes': but(NOTES, 2, 'H9') },
      'strings.notes.3',
      /^"H9"$/,
      A_NOTE,
      /^Type a note/,
    ],
    [
      'what is no note',
      { 'strings.notes': but(NOTES, 1, 'as it comes') },
      'strings.notes.2',
      /as it comes/,
      A_NOTE,
      /^Type a note/,
    ],
    [
      'a note with no octave',
      { 'strings.notes': but(NOTES, 0, 'E') },
      'strings.notes.1',
      /^"E"$/,
      A_NOTE,
      /^Type a note/,
    ],
    [
      'a blank note',
      { 'strings.notes': but(NOTES, 5, '') },
      'strings.notes.6',
      /^""$/,
      A_NOTE,
      /^Type a note/,
    ],
    [
      'one note for all',
      { 'strings.notes': 'E4' },
      'strings.notes',
      /^"E4"$/,
      /^1 to 12 notes such as E4$/,
      /one for each string/,
    ],
    [
      // by S2 and S5: 2.0748 g/m at 392 Hz on .645 m pull 530.6 N, over the core's .061312 mm² 8.65 GPa
      'a tuning past the strength of the core',
      { 'strings.notes': but(NOTES, 2, 'G4') },
      'strings.notes.3',
      /^G4: 531 N, 8\.65 GPa in the core on 645 mm$/,
      /^at most 2\.9 GPa, beyond which music wire breaks$/,
      /Tune it lower/,
    ],
    [
      // I3 with h0 = 0: 2 · 1.9 · (1 − 2^(−1/12)) = .2133 mm; .02 of air at the nut is added
      'a nut below the frets',
      { 'action.firstTreble': 0.15 },
      'action.firstTreble',
      /^0\.15$/,
      /^at least 0\.24 mm with 1\.9 over the 12th fret/,
      /raise the nut/,
    ],
    [
      'a solved thickness below what a bridge may be',
      { 'action.planeHeight': 3 },
      'top.thickness',
      /^3\.0368 mm as solved$/,
      /^5 to 18 mm$/,
      /height of the frets, or set it by hand/,
    ],
    [
      'a solved thickness above it',
      { 'action.planeHeight': 20 },
      'top.thickness',
      /^20\.0368 mm as solved$/,
      /^5 to 18 mm$/,
      /Change what shows of the saddle/,
    ],
    [
      'an action that leaves no saddle at the middle',
      { 'top.thicknessBy': 'set', 'top.thickness': 14 },
      'saddle.showing',
      /^-0\.6632 mm as solved$/,
      /^0 to 10 mm$/,
      /Change the thickness/,
    ],
    [
      'set-backs that lean the slot too far',
      { 'strings.setbacks': [-5, -5, -5, 15, 15, 15] },
      'saddle.angle',
      /^25\.0576° as solved$/,
      /^-3 to 9°$/,
      /Look at the strings/,
    ],
    [
      // on the cone's line: 3000 − 2850 · 2/(1 − 2^(−5/12)) would be far below 0
      'a cone that narrows to nothing before the saddle',
      {
        'guitar.fretboard': 'conical',
        'guitar.fretboardRadius': 3000,
        'guitar.fretboardRadiusAtFret': 150,
        'guitar.fretboardFret': 5,
      },
      'guitar.fretboardRadiusAtFret',
      /^150$/,
      /^at least 2\d{3}\.\d+ mm for a crown of at least 150 mm over the saddle$/,
      /Measure the fretboard again/,
    ],
    [
      'pairs of an odd number',
      { 'strings.count': 7, 'strings.courses': 'pairs' },
      'strings.count',
      /^7$/,
      /^an even number, for pairs$/,
      /single courses/,
    ],
    [
      'firmness beyond two clamped ends',
      { 'saddle.firmEnds': 3 },
      'saddle.firmEnds',
      /^3$/,
      /^0 to 2$/,
      /Keep it within 0 to 2/,
    ],
  ])('%s', (_, changes, path, value, allowed, remedy) => {
    const problems = problemsOf(change(initialDesign(), changes));
    expect(problems.map((p) => p.path)).toEqual([path]);
    const [problem] = problems;
    expect(problem?.value).toMatch(value);
    expect(problem?.allowed).toMatch(allowed);
    expect(problem?.remedy).toMatch(remedy);
    expect(problem && sayProblem(problem)).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('every wrong string and both ends of the action are told at once', () => {
    const wrong = { 'strings.notes': ['E4', 'B3', 'G4', 'D4', 'A2', 'E2'] };
    expect(problemsOf(change(initialDesign(), wrong)).map((p) => p.path)).toEqual([
      'strings.notes.3',
      'strings.notes.4',
    ]);
    const nut = { 'action.firstTreble': 0.1, 'action.firstBass': 0.1 };
    expect(problemsOf(change(initialDesign(), nut)).map((p) => p.path)).toEqual(Object.keys(nut));
  });

  test('the limit that is said for the nut is itself allowed', () => {
    const text = change(initialDesign(), { 'action.firstTreble': 0.24 });
    expect(problemsOf(text)).toEqual([]);
  });
});

describe('what can be made but not well is remarked with its number', () => {
  const remarks = (changes: Changes) => {
    const { design, curves, fit } = acceptDesign(change(initialDesign(), changes));
    return fitReport(design, curves, fit).remarks;
  };
  const remark = (changes: Changes, id: string) => remarks(changes).find((one) => one.id === id);

  test('an action that puts strings under the bridge’s top', () => {
    const low = {
      'saddle.showing': 0,
      'action.treble': 1.2,
      'action.firstTreble': 0.3,
      'action.bass': 3.5,
      'action.firstBass': 0.7,
    };
    const { fit, curves, design } = acceptDesign(change(initialDesign(), low));
    const { crownRadius: r, thickness } = curves.profile;
    const top = thickness - r + Math.sqrt(r * r - 27.5 * 27.5);
    const under = top - (fit.height.undersides[0] ?? 0);
    expect(under).toBeGreaterThan(1);
    const found = fitReport(design, curves, fit).remarks.find(({ id }) => id === 'string-under-top');
    expect(found?.path).toBe('top.thickness');
    expect(found?.text).toContain(`string 1 (E4), string 2 (B3), string 3 (G3) under the bridge’s top`);
    expect(found?.text).toContain(`by ${under.toFixed(2)} mm at most`);
    expect(remark({}, 'string-under-top')).toBeUndefined();
  });

  test('a core near the end of its strength', () => {
    // S2, plain: 7850·(2·.645·466.16)² Pa
    const gpa = (7850 * (2 * 0.645 * 466.1638) ** 2) / 1e9;
    const found = remark({ 'strings.notes': but(NOTES, 0, 'A#4') }, 'steel-stress');
    expect(found?.text).toContain(`string 1 (A#4) bears ${gpa.toFixed(2)} GPa`);
    expect(found?.text).toContain('about 2 GPa (Zollner');
    expect(remark({}, 'steel-stress')).toBeUndefined();
  });

  test('thickness and showing both set, so that the action comes out otherwise', () => {
    const set = { 'top.thicknessBy': 'set', 'top.thickness': 9.1368, 'saddle.showingBy': 'set' };
    expect(remark({ ...set, 'saddle.showing': 4.2 }, 'action-otherwise')).toBeUndefined();
    expect(remark({ ...set, 'saddle.showing': 5.2 }, 'action-otherwise')?.text).toContain('0.50 mm higher');
    expect(remark({ ...set, 'saddle.showing': 3.2 }, 'action-otherwise')?.text).toContain('0.50 mm lower');
  });

  test('less than half of the saddle in the wood', () => {
    const found = remark({ 'saddle.depthBy': 'set', 'saddle.depth': 4 }, 'saddle-not-half-in');
    // at the outer strings a flat floor is shallower by the crown's fall
    const { fit } = acceptDesign(initialDesign());
    expect(found?.text).toContain(`up to ${(fit.depth.forHalf - 4).toFixed(2)} mm more shows`);
    expect(remark({}, 'saddle-not-half-in')).toBeUndefined();
  });

  test('a saddle too short, with its length', () => {
    expect(remark({ 'saddle.slotLength': 54 }, 'saddle-too-short')?.text).toContain('54.0 mm');
    expect(remark({}, 'saddle-too-short')).toBeUndefined();
  });

  test('strings that don’t bear on their saddle', () => {
    const falling = {
      'action.planeBy': 'neck',
      'action.neckAngle': -2,
      'action.jointHeight': 15,
      'saddle.showing': 0.6,
      'saddle.floor': 'parallel',
      'pins.behindSlot': 24,
      'footprint.depthCentre': 46,
      'footprint.depthWing': 38,
    };
    const found = remark(falling, 'string-lifts');
    expect(found?.text).toMatch(/doesn’t bear .*string \d \(..\).*falls to -\d\.\d\d°, and must be above 0/);
    expect(remark({}, 'string-lifts')).toBeUndefined();
  });
});
