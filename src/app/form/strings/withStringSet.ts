import type { DesignText, Typed } from '../../../design/design.ts';
import { FIELDS } from '../../../design/fields.ts';
import { readQuantity } from '../../../design/quantity.ts';
import type { StringSet } from '../../../trade/stringSets.ts';
import { BRONZE_DENSITY_KG_M3 } from '../../../trade/stringSpec.ts';
import { TUNINGS } from '../../../trade/tunings.ts';
import { entryAt, inInches } from './stringLists.ts';

/**
 * The design strung with a set, tuned as the set is made for. Pairs get two rows of pins that stand as the strings do,
 * half a row's distance before and behind where the one row stood; a set without pairs, after one with them, gets a single
 * even row again. Measured set-backs stay with as many strings as they were measured of.
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
      ? { ...inRows(pins, 'two'), spacing: 'strings' }
      : strings.courses === 'pairs'
        ? { ...inRows(pins, 'one'), spacing: 'equal' }
        : pins,
  };
}

/** The pins in one row or two, their middle staying where it was; rows whose place can't be read stay. */
function inRows(pins: DesignText['pins'], rows: 'one' | 'two'): DesignText['pins'] {
  const [behind, gap] = [mmOf(pins.behindSlot), mmOf(pins.rowGap)];
  if (pins.rows === rows || Number.isNaN(behind + gap)) return { ...pins, rows };
  const { min, max } = FIELDS.pins.behindSlot;
  const moved = behind + ((rows === 'one' ? 1 : -1) * gap) / 2;
  return { ...pins, rows, behindSlot: Math.round(Math.min(max, Math.max(min, moved)) * 1e4) / 1e4 };
}

/** NaN if it can't be read. */
function mmOf(typed: Typed): number {
  const read = typeof typed === 'object' ? undefined : readQuantity(typed, 'length');
  return read?.ok ? read.value : Number.NaN;
}

/** Diameters this near are the same, mm: a hundredth of a gauge's step. */
const SAME = 0.0003;

/** Whether the design's strings are those of a set, whatever they are called and tuned to. */
export function isStrungWith({ strings }: DesignText, set: StringSet): boolean {
  return (
    Number(strings.count) === set.strings.length &&
    (strings.courses === 'pairs') === (set.perCourse === 2) &&
    set.strings.every(({ diameterMm, coreMm, wound, wrapDensityKgM3 }, i) => {
      const near = (typed: number | string, wanted: number) => Math.abs(mmOf(typed) - wanted) < SAME;
      return (
        near(entryAt(strings.diameters, i), diameterMm) &&
        near(entryAt(strings.cores, i), coreMm) &&
        (!wound || Number(entryAt(strings.wraps, i)) === wrapDensityKgM3)
      );
    })
  );
}
