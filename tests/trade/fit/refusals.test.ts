import { describe, expect, test } from 'vitest';
import { initialDesign } from '../../../src/design/initial.ts';
import { sayProblem } from '../../../src/design/problem.ts';
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
      /^at most 2\.9 GPa: more than music wire is said to bear \(from memory\)$/,
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
