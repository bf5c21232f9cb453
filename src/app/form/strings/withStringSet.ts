import type { DesignText } from '../../../design/design.ts';
import { readQuantity } from '../../../design/quantity.ts';
import type { StringSet } from '../../../trade/stringSets.ts';
import { BRONZE_DENSITY_KG_M3 } from '../../../trade/stringSpec.ts';
import { TUNINGS } from '../../../trade/tunings.ts';
import { entryAt, inInches } from './stringLists.ts';

/**
 * The design strung with a set, tuned as the set is made for. Pairs get two rows of pins that stand as the strings do; a
 * set without pairs, after one with them, gets a single even row again. Measured set-backs stay with as many strings as
 * they were measured of.
 */
export function withStringSet(text: DesignText, set: StringSet): DesignText {
  const { strings, pins, action } = text;
  const count = set.strings.length;
  const tuning = TUNINGS.find(({ name }) => name === set.tuning);
  const pairs = set.perCourse === 2;
  const others = Number(strings.count) !== count;
  const blank = set.strings.map(() => '');
  return {
    ...text,
    strings: {
      ...strings,
      set: set.name,
      count,
      notes: tuning?.notes ?? strings.notes,
      diameters: set.strings.map(({ diameterMm }) => inInches(diameterMm / 25.4)),
      cores: set.strings.map(({ coreMm }) => inInches(coreMm / 25.4)),
      // a plain string's is ready for the day it is wound
      wraps: set.strings.map(({ wound, wrapDensityKgM3 }) =>
        wound ? wrapDensityKgM3 : BRONZE_DENSITY_KG_M3,
      ),
      setbacks: others ? blank : strings.setbacks,
      courses: pairs ? 'pairs' : 'single',
    },
    action: { ...action, cents: others ? blank : action.cents },
    pins: pairs
      ? { ...pins, rows: 'two', spacing: 'strings' }
      : strings.courses === 'pairs'
        ? { ...pins, rows: 'one', spacing: 'equal' }
        : pins,
  };
}

/** Diameters this near are the same, mm: a hundredth of a gauge's step. */
const SAME = 0.0003;

/** Whether the design's strings are those of a set, whatever they are called and tuned to. */
export function isStrungWith({ strings }: DesignText, set: StringSet): boolean {
  const mm = (typed: number | string) => {
    const read = readQuantity(typed, 'length');
    return read.ok ? read.value : Number.NaN;
  };
  return (
    Number(strings.count) === set.strings.length &&
    (strings.courses === 'pairs') === (set.perCourse === 2) &&
    set.strings.every(({ diameterMm, coreMm, wound, wrapDensityKgM3 }, i) => {
      const near = (typed: number | string, wanted: number) => Math.abs(mm(typed) - wanted) < SAME;
      return (
        near(entryAt(strings.diameters, i), diameterMm) &&
        near(entryAt(strings.cores, i), coreMm) &&
        (!wound || Number(entryAt(strings.wraps, i)) === wrapDensityKgM3)
      );
    })
  );
}
