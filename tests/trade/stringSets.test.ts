import { describe, expect, test } from 'vitest';
import { assumedCore } from '../../src/trade/assumedCore.ts';
import { coreStressShare } from '../../src/trade/coreStress.ts';
import { massPerLength } from '../../src/trade/massPerLength.ts';
import { noteNumber, pitchFrequency } from '../../src/trade/notes.ts';
import { STRING_SETS } from '../../src/trade/stringSets.ts';
import { tension } from '../../src/trade/tension.ts';
import { TUNINGS } from '../../src/trade/tunings.ts';
import { LIGHT_SET } from '../support/lightSet.ts';

const names = (list: readonly { readonly name: string }[]) => list.map(({ name }) => name);

test('the light set is the one whose tensions and set-backs were derived', () => {
  const light = STRING_SETS.find(({ name }) => name === 'Light');
  expect(light?.strings).toHaveLength(6);
  for (const [i, string] of LIGHT_SET.entries()) {
    expect(light?.strings[i]?.wound).toBe(string.wound);
    expect(light?.strings[i]?.diameterMm).toBeCloseTo(string.diameterMm, 12);
    expect(light?.strings[i]?.coreMm).toBeCloseTo(string.coreMm, 12);
    expect(light?.strings[i]?.wrapDensityKgM3).toBe(string.wrapDensityKgM3);
  }
});

test('cores of other gauges go on from that set’s, to half a thousandth of an inch', () => {
  expect([20, 24, 32, 42, 53, 56, 70].map(assumedCore)).toEqual([9.5, 11, 14, 16, 18, 18.5, 21]);
  for (let outside = 16; outside <= 90; outside++) {
    expect(assumedCore(outside + 1)).toBeGreaterThanOrEqual(assumedCore(outside));
    expect(assumedCore(outside) / outside).toBeGreaterThan(0.25);
    expect(assumedCore(outside) / outside).toBeLessThan(0.55);
  }
});

test('names are single', () => {
  expect(new Set(names(STRING_SETS)).size).toBe(STRING_SETS.length);
  expect(new Set(names(TUNINGS)).size).toBe(TUNINGS.length);
});

describe.each(STRING_SETS.map((set) => [set.name, set] as const))('%s', (_name, set) => {
  const tuning = TUNINGS.find(({ name }) => name === set.tuning);

  test('has a tuning of as many notes', () => {
    expect(tuning?.notes).toHaveLength(set.strings.length);
    expect(set.strings.length % set.perCourse).toBe(0);
  });

  test('cores are thinner than their strings', () => {
    for (const string of set.strings.filter(({ wound }) => wound))
      expect((string.diameterMm - string.coreMm) / 2, 'the wrap’s wire').toBeGreaterThan(0.1);
  });

  test('at a usual scale every string pulls as strings do, and no core is stressed much beyond steel’s 2 GPa', () => {
    // practice: 60 to 160 N a string; a baritone's scale is about 27 in, the others' 25.4
    const scaleM = set.tuning.startsWith('Baritone') ? 0.6858 : 0.64516;
    for (const [i, string] of set.strings.entries()) {
      const newtons = tension(
        massPerLength(string),
        scaleM,
        pitchFrequency(tuning?.notes[i] ?? '') ?? Number.NaN,
      );
      expect(newtons, `string ${i + 1}`).toBeGreaterThan(60);
      expect(newtons, `string ${i + 1}`).toBeLessThan(160);
      // the assumed cores of the thinnest wound strings are on the thin side: 9 % over
      expect(coreStressShare(string, newtons), `string ${i + 1}`).toBeLessThan(1.1);
    }
  });
});

describe.each(TUNINGS.map((tuning) => [tuning.name, tuning] as const))('tuning %s', (_name, { notes }) => {
  const numbers = notes.map((note) => noteNumber(note) ?? Number.NaN);

  test('is of notes that can be read', () => expect(numbers.every(Number.isFinite)).toBe(true));

  test('falls from treble to bass; in courses, each is a unison or an octave pair', () => {
    const courses = notes.length === 12 ? 2 : 1;
    const first = numbers.filter((_, i) => i % courses === 0);
    for (let i = 1; i < first.length; i++) expect(first[i]).toBeLessThan(first[i - 1] ?? 0);
    if (courses === 2) {
      const apart = first.map((number, i) => (numbers[2 * i + 1] ?? 0) - number);
      expect(apart).toEqual([0, 0, 12, 12, 12, 12]);
    }
  });
});

test('lowered tunings lie as low as they say', () => {
  const numbers = (name: string) =>
    TUNINGS.find((tuning) => tuning.name === name)?.notes.map((note) => noteNumber(note) ?? Number.NaN);
  const lower = (name: string, by: number) => numbers(name)?.map((number) => number - by);
  expect(numbers('Half a step down')).toEqual(lower('Standard', 1));
  expect(numbers('A whole step down')).toEqual(lower('Standard', 2));
  expect(numbers('Baritone C')).toEqual(lower('Standard', 4));
  expect(numbers('Baritone B')).toEqual(lower('Standard', 5));
  expect(numbers('Baritone A')).toEqual(lower('Standard', 7));
  expect(numbers('Twelve strings, a whole step down')).toEqual(lower('Twelve strings', 2));
});
