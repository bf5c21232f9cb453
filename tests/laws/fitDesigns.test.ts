import { describe, expect, test } from 'vitest';
import type { Curves } from '../../models/curves/curves.ts';
import { mirrored, reversed } from '../../models/curves/segment.ts';
import { type DesignFit, fitOf } from '../../src/cli/fitOf.ts';
import { type AcceptedDesign, acceptDesign } from '../../src/design/acceptDesign.ts';
import type { DesignText } from '../../src/design/design.ts';
import { DesignError } from '../../src/design/problem.ts';
import type { SolvablePath } from '../../src/trade/fit/placeDesign.ts';
import { type Changes, change, designText } from '../support/change.ts';
import { acceptedDesigns } from '../support/designs.ts';
import { tableField } from '../support/draws.ts';

/* What must be true of how any accepted design fits its guitar (derived). */
const SEED = 3117;
const { accepted } = acceptedDesigns(160, SEED);

/** The design if it can be made. */
function made(text: DesignText): AcceptedDesign | undefined {
  try {
    return acceptDesign(text);
  } catch (error) {
    if (error instanceof DesignError) return undefined;
    throw error;
  }
}

/** Tries designs and says which one fails, so that it can be drawn again. A check tells how often it was tried. */
function everyDesign(least: number, check: (one: AcceptedDesign, i: number) => number | undefined): void {
  let tried = 0;
  for (const [i, one] of accepted.entries()) {
    try {
      tried += check(one, i) ?? 0;
    } catch (error) {
      throw new Error(`design ${i} of seed ${SEED}: ${JSON.stringify(one.text)}`, { cause: error });
    }
  }
  expect(tried, 'how often it could be tried').toBeGreaterThan(least);
}

/** The largest difference of two values of one shape; everything but numbers must be the same. */
function apart(a: unknown, b: unknown): number {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b);
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) {
    return a === b ? 0 : Number.POSITIVE_INFINITY;
  }
  const keys = Object.keys(a);
  if (keys.join() !== Object.keys(b).join()) return Number.POSITIVE_INFINITY;
  const at = (value: object, key: string) => (value as Readonly<Record<string, unknown>>)[key];
  return Math.max(0, ...keys.map((key) => apart(at(a, key), at(b, key))));
}

const everyNumber = (value: unknown): readonly number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value
      ? Object.values(value).flatMap(everyNumber)
      : [];

/** The numbers that a design uses, typed as set by hand. */
function setByHand({ fit }: AcceptedDesign, paths: readonly SolvablePath[]): Changes {
  return Object.fromEntries(
    paths.flatMap((path) => {
      const field = tableField(path);
      if (!('by' in field) || field.by === undefined) throw new Error(`${path} is not solvable`);
      return [
        [path, fit.solved[path].used],
        [`${path.split('.')[0]}.${field.by}`, 'set'],
      ];
    }),
  );
}

const PATHS: readonly SolvablePath[] = [
  'saddle.angle',
  'saddle.setback',
  'saddle.depth',
  'saddle.showing',
  'top.thickness',
  'top.crownRadius',
];

/** Whether a number may be typed: a fretboard may be flatter than any crown that is set by hand. */
const typeable = ({ fit }: AcceptedDesign, path: SolvablePath) =>
  path !== 'top.crownRadius' || fit.solved[path].used <= 5000;

test('every report is of finite numbers, and no string breaks over wood unsaid', () => {
  everyDesign(900, (one) => {
    const fit = fitOf(one);
    expect(everyNumber(fit).every(Number.isFinite)).toBe(true);
    expect(JSON.stringify(fit)).not.toMatch(/NaN|undefined|Infinity/);
    const said = (id: string) => fit.remarks.find((remark) => remark.id === id)?.text ?? '';
    for (const [i, s] of fit.strings.entries()) {
      const name = `string ${i + 1} (${s.note})`;
      if (!s.straightToPin) expect(said('string-over-wood'), name).toContain(name);
      if (s.saddleShowingMm < 0) expect(said('string-under-top'), name).toContain(name);
      else if ((s.breakAngleDeg ?? 0) <= 0) expect(said('string-lifts'), name).toContain(name);
    }
    if (!fit.saddle.blankMm) expect(said('saddle-too-short')).not.toBe('');
    return fit.strings.length;
  });
});

/**
 * Whether the nut is cut as nuts are, about a fifth of the action over the 1st fret, or at least stays where it is: with a
 * nut far too high, whose own set-back is solved too, a string is so sharp at the low frets that it asks for less at the
 * saddle the stiffer it is.
 */
function usualNut({ design: { action } }: AcceptedDesign): boolean {
  const shares = [action.firstTreble / action.treble, action.firstBass / action.bass];
  return action.nut !== 'solved' || Math.max(...shares) < 0.29;
}

describe('action', () => {
  /** Slot, thickness and depth kept where they are, the saddle free to follow the action. */
  const kept = (one: AcceptedDesign): Changes => ({
    ...setByHand(one, ['saddle.angle', 'saddle.setback', 'saddle.depth', 'top.thickness']),
    'saddle.showingBy': 'solved',
  });
  const raised = ({ design: { action } }: AcceptedDesign, more: number, nutMore: number): Changes => ({
    'action.treble': action.treble + more,
    'action.bass': action.bass + more,
    'action.firstTreble': action.firstTreble + nutMore,
    'action.firstBass': action.firstBass + nutMore,
  });

  test('more over the 12th fret at one height of the nut lifts every string twice as much', () => {
    everyDesign(400, (one) => {
      const now = made(change(one.text, kept(one)));
      if (!now) return 0;
      const more = 0.1;
      // a string straight from nut to saddle passes the 1st fret at 2 − 2^(11/12) of its height over the 12th
      const atFirst = 2 * (1 - 2 ** (-1 / 12)) * more;
      const then = made(change(now.text, raised(now, more, atFirst)));
      if (!then) return 0;
      const up = then.fit.height.undersides.map((z, i) => z - (now.fit.height.undersides[i] as number));
      for (const [i, dz] of up.entries()) expect(dz / more, `string ${i + 1}`).toBeCloseTo(2, 9);
      const showing = then.fit.height.showing - now.fit.height.showing;
      expect(Math.abs(showing - 2 * more), 'the saddle shows as much more').toBeLessThan(1.1e-4);
      return up.length;
    });
  });

  test('more over the 12th fret asks more set-back of every string that is not measured, and lifts it', () => {
    everyDesign(500, (one) => {
      const now = usualNut(one) ? made(change(one.text, kept(one))) : undefined;
      const then = now && made(change(now.text, raised(now, 0.15, 0)));
      if (!then) return 0;
      let tried = 0;
      for (const [i, { measured, saddleMm }] of then.fit.slot.wanted.entries()) {
        const before = now.fit.slot.wanted[i];
        if (!measured) expect(saddleMm, `string ${i + 1}`).toBeGreaterThan(before?.saddleMm ?? 99);
        else expect(saddleMm, `string ${i + 1}`).toBe(before?.saddleMm);
        expect(then.fit.height.undersides[i]).toBeGreaterThan(now.fit.height.undersides[i] ?? 99);
        tried++;
      }
      return tried;
    });
  });
});

test('a thicker core asks for more set-back', () => {
  everyDesign(500, (one) => {
    const { cores, diameters } = one.design.strings;
    const thicker = cores.map((core) => core * 1.06);
    // a plain string grows with its core
    const around = diameters.map((d, i) => ((cores[i] ?? 0) >= d - 0.005 ? (thicker[i] ?? d) : d));
    const thick = { 'strings.cores': thicker, 'strings.diameters': around };
    const then = usualNut(one) ? made(change(one.text, thick)) : undefined;
    if (!then) return 0;
    let tried = 0;
    for (const [i, { measured, saddleMm }] of then.fit.slot.wanted.entries()) {
      if (measured) continue;
      tried++;
      expect(saddleMm, `string ${i + 1}`).toBeGreaterThan(one.fit.slot.wanted[i]?.saddleMm ?? 99);
    }
    return tried;
  });
});

test('with ends that don’t clamp, the least action and the least stiffness the slot is all but the scale line', () => {
  // as near to nothing as the table allows: the thinnest string near its breaking point, the softest steel
  const text = designText({
    'saddle.firmEnds': 0,
    'saddle.angleBy': 'solved',
    'saddle.setbackBy': 'solved',
    'strings.modulus': 150,
    'strings.notes': Array(6).fill('466 Hz'),
    'strings.diameters': Array(6).fill(0.15),
    'strings.cores': Array(6).fill(0.15),
    'action.treble': 0.8,
    'action.bass': 0.8,
    'action.firstTreble': 0.12,
    'action.firstBass': 0.12,
  });
  const { fit } = acceptDesign(text);
  const usual = { 'saddle.firmEnds': 2, 'action.treble': 2, 'action.bass': 2 };
  const firm = acceptDesign(
    change(text, { ...usual, 'action.firstTreble': 0.4, 'action.firstBass': 0.4 }),
  ).fit;
  expect(Math.abs(fit.slot.line.angleDeg)).toBeLessThan(1e-4);
  expect(Math.abs(fit.slot.line.centreMm)).toBeLessThan(0.1);
  expect(firm.slot.line.centreMm).toBeGreaterThan(5 * Math.abs(fit.slot.line.centreMm));
});

describe('the solved slot', () => {
  /** What the angle's and the set-back's rounding to a ten-thousandth may leave. */
  const ROUNDING = 0.51e-4;

  test('by least squares leaves residuals that sum to nothing, and don’t lean', () => {
    everyDesign(15, ({ design, fit }) => {
      const { line, setbackBy, angleBy } = design.saddle;
      if (line !== 'squares' || setbackBy !== 'solved') return 0;
      const left = fit.slot.residuals.map(({ residualMm }) => residualMm);
      const mean = left.reduce((sum, r) => sum + r, 0) / left.length;
      expect(Math.abs(mean), 'mean residual, mm').toBeLessThan(ROUNDING);
      if (angleBy !== 'solved') return 0;
      const xs = fit.strings.map(({ x }) => x);
      const xx = xs.reduce((sum, x) => sum + x * x, 0);
      const lean = xs.reduce((sum, x, i) => sum + x * (left[i] as number), 0) / xx;
      const xMean = Math.abs(xs.reduce((sum, x) => sum + x, 0)) / xx;
      const slope = (ROUNDING * Math.PI) / 180 / Math.cos((design.saddle.angle * Math.PI) / 180) ** 2;
      expect(Math.abs(lean), 'lean of the residuals').toBeLessThan(slope + ROUNDING * xMean);
      return 1;
    });
  });

  test('for the smallest largest error has its largest on both sides', () => {
    everyDesign(25, ({ design, fit }) => {
      if (design.saddle.line !== 'largest' || design.saddle.setbackBy !== 'solved') return 0;
      const left = fit.slot.residuals.map(({ residualMm }) => residualMm);
      expect(Math.abs(Math.max(...left) + Math.min(...left)) / 2, 'mm').toBeLessThan(ROUNDING);
      return 1;
    });
  });
});

describe('the other hand', () => {
  const flip = ([x, y]: readonly [number, number]) => [-x, y] as const;

  /** The drawing seen in a mirror. Outline and profile are the same on both sides. */
  const mirrorCurves = (curves: Curves) => ({
    ...curves,
    slot: { ...curves.slot, angle: -curves.slot.angle },
    pins: curves.pins.map((pin) => ({ ...pin, at: flip(pin.at) })),
    channels: curves.channels.map((c) => ({ ...c, at: flip(c.at), direction: flip(c.direction) })),
  });

  const mirrorFit = (fit: DesignFit) => ({
    ...fit,
    hand: fit.hand === 'left' ? 'right' : 'left',
    strings: fit.strings.map((s) => ({ ...s, xMm: -s.xMm, sideAngleDeg: -s.sideAngleDeg })),
    saddle: {
      ...fit.saddle,
      topMm: fit.saddle.topMm && [...fit.saddle.topMm].reverse().map((piece) => reversed(mirrored(piece))),
    },
  });

  test('is the mirror image, with the same numbers', () => {
    everyDesign(150, (one) => {
      const hand = one.design.guitar.hand === 'left' ? 'right' : 'left';
      const other = acceptDesign(change(one.text, { 'guitar.hand': hand }));
      expect(apart(other.curves, mirrorCurves(one.curves)), 'curves').toBeLessThan(1e-9);
      const fits = [fitOf(other), mirrorFit(fitOf(one))].map((fit) => ({
        ...fit,
        remarks: fit.remarks.length,
      }));
      expect(apart(fits[0], fits[1]), 'fit').toBeLessThan(1e-6);
      return 1;
    });
  });
});

describe('from solved to set', () => {
  const solvedIn = (one: AcceptedDesign) =>
    PATHS.filter((path) => one.fit.solved[path].by === 'solved' && typeable(one, path));

  test.each(PATHS)('%s as solved, then set by hand, changes nothing', (path) => {
    everyDesign(30, (one) => {
      if (!solvedIn(one).includes(path)) return 0;
      const set = acceptDesign(change(one.text, setByHand(one, [path])));
      expect(set.fit.solved[path].by).toBe('set');
      expect(JSON.stringify(set.curves)).toBe(JSON.stringify(one.curves));
      return 1;
    });
  });

  test('all that is solved at once, too', () => {
    everyDesign(120, (one) => {
      const paths = solvedIn(one);
      const set = acceptDesign(change(one.text, setByHand(one, paths)));
      expect(paths.map((path) => set.fit.solved[path].by)).toEqual(paths.map(() => 'set'));
      expect(JSON.stringify(set.curves)).toBe(JSON.stringify(one.curves));
      return paths.length > 0 ? 1 : 0;
    });
  });

  test('a thickness solved from a wanted showing, then set, gives that showing back', () => {
    everyDesign(50, (one) => {
      if (one.design.top.thicknessBy !== 'solved') return 0;
      const set = acceptDesign(
        change(one.text, { ...setByHand(one, ['top.thickness']), 'saddle.showingBy': 'solved' }),
      );
      expect(Math.abs(set.design.saddle.showing - one.design.saddle.showing)).toBeLessThan(1.01e-4);
      expect(set.fit.height.undersides).toEqual(one.fit.height.undersides);
      return 1;
    });
  });
});
