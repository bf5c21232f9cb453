import { describe, expect, test } from 'vitest';
import { stepEntry } from '../../src/app/form/stepEntry.ts';
import { stepNote } from '../../src/app/form/strings/stepNote.ts';
import {
  entryAt,
  isPlain,
  withEntry,
  withString,
  withWoundOrPlain,
} from '../../src/app/form/strings/stringLists.ts';
import { isTunedTo, withTuning } from '../../src/app/form/strings/tunedTo.ts';
import { isStrungWith, withStringSet } from '../../src/app/form/strings/withStringSet.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { FIELDS } from '../../src/design/fields.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { STRING_SETS, type StringSet } from '../../src/trade/stringSets.ts';
import { TUNINGS } from '../../src/trade/tunings.ts';
import { change, problemsOf } from '../support/change.ts';

const setNamed = (name: string) => STRING_SETS.find((set) => set.name === name) as StringSet;
const text = initialDesign();

describe('a note steps by semitones in its own manner', () => {
  test.each([
    ['E4', 1, 'F4'],
    ['E4', -1, 'D#4'],
    ['Eb4', -1, 'D4'],
    ['Bb2', -2, 'Ab2'],
    ['b♭3', 1, 'B3'],
    ['b3', 1, 'C4'],
    ['82.4 Hz', 12, '164.8 Hz'],
    ['82,4', 12, '164,8'],
    ['', 1, ''],
    ['loud', 1, 'loud'],
  ])('%s by %i is %s', (typed, semitones, stepped) => {
    expect(stepNote(typed, semitones)).toBe(stepped);
  });
});

describe('an entry steps', () => {
  test('a gauge by a thousandth of an inch, typed in either unit', () => {
    expect(stepEntry('0.012 in', FIELDS.strings.diameters, 1)).toBe('0.013 in');
    expect(stepEntry('0.0115 in', FIELDS.strings.cores, -1)).toBe('0.0105 in');
    expect(stepEntry(0.3, FIELDS.strings.diameters, 1)).toBe(0.3254);
  });
  test('a measure by a tenth, and not from nothing', () => {
    expect(stepEntry(2.4, FIELDS.strings.setbacks, 1)).toBe(2.5);
    expect(stepEntry('', FIELDS.strings.setbacks, 1)).toBe('');
    expect(stepEntry(-2, FIELDS.action.cents, -1)).toBe(-2.5);
    expect(stepEntry(8800, FIELDS.strings.wraps, 1)).toBe(8900);
  });
});

describe('one string typed anew', () => {
  test('changes its entry alone, and keeps those of strings beyond the count', () => {
    const strung = withString(change(text, { 'strings.count': 4 }), 'notes', 2, 'F#3');
    expect(strung.strings.notes).toEqual(['E4', 'B3', 'F#3', 'D3', 'A2', 'E2']);
  });
  test('as it stands is no change', () => {
    expect(withString(text, 'notes', 2, 'G3')).toBe(text);
  });
  test('takes the core of a plain string with its diameter, and leaves a wound one’s', () => {
    const plain = withString(text, 'diameters', 0, '0.013 in');
    expect(entryAt(plain.strings.cores, 0)).toBe('0.013 in');
    const wound = withString(text, 'diameters', 2, '0.026 in');
    expect(entryAt(wound.strings.cores, 2)).toBe('0.011 in');
  });
  test('stays plain while its diameter is half typed', () => {
    let typed = text;
    for (const half of ['', '0.', '0.01', '0.013 in']) typed = withString(typed, 'diameters', 0, half);
    expect(isPlain(typed.strings, 0)).toBe(true);
    expect(problemsOf(typed)).toEqual([]);
  });
  test('in a list that ends before is filled with blanks', () => {
    expect(withEntry(['1'], 2, '3')).toEqual(['1', '', '3']);
    expect(withEntry('none', 0, 1)).toEqual([1]);
  });
});

describe('wound or plain', () => {
  test('a plain string gets an assumed core in its own unit, a wound one is all core', () => {
    const wound = withWoundOrPlain(withString(text, 'diameters', 1, '0.024 in'), 1);
    expect(entryAt(wound.strings.cores, 1)).toBe('0.011 in');
    expect(isPlain(wound.strings, 1)).toBe(false);
    expect(withWoundOrPlain(withString(text, 'diameters', 1, 0.6096), 1).strings.cores).toContain(0.2794);
    const plain = withWoundOrPlain(text, 2);
    expect(entryAt(plain.strings.cores, 2)).toBe('0.024 in');
    expect(isPlain(plain.strings, 2)).toBe(true);
  });
  test('every string of every set can be wound and made plain again', () => {
    for (const set of STRING_SETS) {
      const strung = withStringSet(text, set);
      set.strings.forEach(({ wound }, i) => {
        expect(isPlain(strung.strings, i), `${set.name}, string ${i + 1}`).toBe(!wound);
        const other = withWoundOrPlain(strung, i);
        expect(isPlain(other.strings, i), `${set.name}, string ${i + 1} the other way`).toBe(wound);
      });
    }
  });
});

describe('a set of strings', () => {
  test.each(STRING_SETS.map((set) => [set.name, set] as const))('%s strings the first bridge', (_, set) => {
    const strung = withStringSet(text, set);
    const { design, fit } = acceptDesign(strung);
    expect(design.strings.count).toBe(set.strings.length);
    expect(fit.strings.map(({ spec }) => spec.wound)).toEqual(set.strings.map(({ wound }) => wound));
    fit.strings.forEach(({ spec }, i) => {
      expect(spec.diameterMm).toBeCloseTo(set.strings[i]?.diameterMm ?? 0, 9);
      expect(spec.coreMm).toBeCloseTo(set.strings[i]?.coreMm ?? 0, 9);
    });
    const tuning = TUNINGS.find(({ name }) => name === set.tuning);
    expect(fit.strings.map(({ note }) => note)).toEqual(tuning?.notes);
    expect(STRING_SETS.filter((one) => isStrungWith(strung, one))).toEqual([set]);
  });

  test('of twelve stands in pairs over two rows of pins about the one row’s place, and comes back from there', () => {
    const twelve = withStringSet(text, setNamed('Light, twelve strings'));
    expect(twelve.strings).toMatchObject({ count: 12, courses: 'pairs' });
    expect(twelve.pins).toMatchObject({ rows: 'two', spacing: 'strings', behindSlot: 8.5 });
    const again = withStringSet(twelve, setNamed('Light, twelve strings'));
    expect(again.pins).toEqual(twelve.pins);
    const six = withStringSet(twelve, setNamed('Light'));
    expect(six.pins).toEqual(text.pins);
    expect(six.strings).toMatchObject({ count: 6, courses: 'single' });
  });

  test('keeps measures of as many strings, and blanks those of other ones', () => {
    const measured = change(text, {
      'strings.setbacks': [2, '', 2.2, '', '', 4],
      'action.cents': [1, '', '', '', '', ''],
    });
    const medium = withStringSet(measured, setNamed('Medium'));
    expect(medium.strings.setbacks).toEqual(measured.strings.setbacks);
    expect(medium.action).toEqual(measured.action);
    const seven = withStringSet(measured, setNamed('Light, seven strings'));
    expect(seven.strings.setbacks).toEqual(Array(7).fill(''));
    expect(seven.action.cents).toEqual(Array(7).fill(''));
  });

  test('is no longer the one chosen when a string of it is changed', () => {
    const light = withStringSet(text, setNamed('Light'));
    expect(isStrungWith(light, setNamed('Light'))).toBe(true);
    expect(isStrungWith(withString(light, 'cores', 5, '0.019 in'), setNamed('Light'))).toBe(false);
  });
});

test('a tuning fills in the notes, keeps what lies beyond, and is known by any name of a note', () => {
  const dropped = TUNINGS.find(({ name }) => name === 'Drop D');
  if (!dropped) throw new Error('Drop D is a tuning');
  const longer = change(text, { 'strings.notes': ['E4', 'B3', 'G3', 'D3', 'A2', 'E2', 'B1'] });
  const tuned = withTuning(longer, dropped);
  expect(tuned.strings.notes).toEqual(['E4', 'B3', 'G3', 'D3', 'A2', 'D2', 'B1']);
  expect(isTunedTo(tuned, dropped)).toBe(true);
  expect(isTunedTo(longer, dropped)).toBe(false);
  const sharp = change(text, { 'strings.notes': ['D#4', 'A#3', 'F#3', 'C#3', 'G#2', 'D#2'] });
  expect(
    TUNINGS.filter((one) => one.notes.length === 6 && isTunedTo(sharp, one)).map(({ name }) => name),
  ).toEqual(['Half a step down']);
});
