import { assumedCore } from './assumedCore.ts';
import { plainString, type StringSpec, woundString } from './stringSpec.ts';

/** Strings as they are sold together, treble to bass. */
export interface StringSet {
  readonly name: string;
  /** Name of the tuning the set is made for; see `TUNINGS`. */
  readonly tuning: string;
  /** 2 where strings stand in pairs, one beside the other in the list. */
  readonly perCourse: 1 | 2;
  readonly strings: readonly StringSpec[];
  /** Whether wound strings' cores are guesses: then so are their tension and set-back. */
  readonly coresAssumed: boolean;
}

const mm = (thousandths: number) => (thousandths * 25.4) / 1000;

/** Strings by their gauges in thousandths of an inch, the wound ones as the trade writes them: `24w`. */
function gauges(written: string): StringSpec[] {
  return written.split(' ').map((gauge) => {
    const outside = Number.parseFloat(gauge);
    return gauge.endsWith('w')
      ? woundString(mm(outside), mm(assumedCore(outside)))
      : plainString(mm(outside));
  });
}

const single = (name: string, written: string, tuning = 'Standard'): StringSet => ({
  name,
  tuning,
  perCourse: 1,
  strings: gauges(written),
  coresAssumed: true,
});

/** Generic sets by gauge (common practice), bronze on steel; every core is assumed. */
export const STRING_SETS: readonly StringSet[] = [
  single('Extra light', '10 14 23w 30w 39w 47w'),
  single('Custom light', '11 15 22w 32w 42w 52w'),
  single('Light', '12 16 24w 32w 42w 53w'),
  single('Medium', '13 17 26w 35w 45w 56w'),
  single('Baritone', '16 24w 30w 42w 53w 70w', 'Baritone B'),
  single('Light, seven strings', '12 16 24w 32w 42w 53w 70w', 'Seven strings, low B'),
  {
    name: 'Light, twelve strings',
    tuning: 'Twelve strings',
    perCourse: 2,
    strings: gauges('10 10 14 14 23w 8 30w 12 39w 18 47w 27w'),
    coresAssumed: true,
  },
];
