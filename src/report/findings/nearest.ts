import { HUNDREDTH, type Knob } from './knob.ts';
import type { Worth } from './trial.ts';

/** A search that pauses before each trial, so that whoever runs it can do something else in between. */
export type Search<Found> = Generator<undefined, Found, undefined>;

/** How far from where it stands a number is tried, in steps: near ones closely, far ones by halves more. */
const AWAY = [1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64];

/**
 * The value of a knob, on a whole step, that passes and lies nearest to where it stands: tried further and further away
 * to both sides, then narrowed down between the last that failed and the first that passed. Beyond a value that can't be
 * made nothing is looked for, nor on the other side of one where the finding is gone. What the guitar asks for goes
 * before all.
 */
export function* nearest(
  { now, asked, field: { min, max } }: Knob,
  step: number,
  trial: (value: number) => Worth,
  passes: (worth: Worth) => boolean,
): Search<number | undefined> {
  function* asRefused(value: number): Search<Worth> {
    if (value < min || value > max) return 'refused';
    yield;
    return trial(value);
  }
  if (asked !== undefined) {
    const round = Math.round(asked / HUNDREDTH) * HUNDREDTH;
    if (passes(yield* asRefused(cleaned(round)))) return cleaned(round);
  }
  let sides = [1, -1].map((way) => {
    const from = way === 1 ? Math.floor(now / step + 1e-9) : Math.ceil(now / step - 1e-9);
    return { at: (steps: number) => cleaned((from + way * steps) * step), failed: 0 };
  });
  for (const away of AWAY) {
    for (const side of [...sides]) {
      if (!sides.includes(side)) continue;
      const tried = yield* asRefused(side.at(away));
      const worth = (steps: number) => asRefused(side.at(steps));
      const found = passes(tried)
        ? away
        : tried === 'refused'
          ? yield* beforeRefusal(side.failed, away, worth, passes)
          : undefined;
      if (found !== undefined) return side.at(yield* narrowed(side.failed, found, worth, passes));
      if (tried === 'refused') sides = sides.filter((one) => one !== side);
      else if (tried !== 'stays') sides = [side];
      side.failed = away;
    }
  }
  return undefined;
}

/** Without what binary fractions add: 0.1 · 3 is a little more than 0.3 to a computer. */
const cleaned = (value: number) => Math.round(value * 1e6) / 1e6;

/** Steps that pass between those that fail and those that can't be made: the last way before the latter. */
function* beforeRefusal(
  failed: number,
  refused: number,
  worth: (steps: number) => Search<Worth>,
  passes: (worth: Worth) => boolean,
): Search<number | undefined> {
  let [low, high] = [failed, refused];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const found = yield* worth(middle);
    if (passes(found)) return middle;
    if (found === 'refused') high = middle;
    else low = middle;
  }
  return undefined;
}

/** The fewest steps that pass, between those that fail and those that pass. */
function* narrowed(
  failed: number,
  passing: number,
  worth: (steps: number) => Search<Worth>,
  passes: (worth: Worth) => boolean,
): Search<number> {
  let [bad, good] = [failed, passing];
  while (good - bad > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (passes(yield* worth(middle))) good = middle;
    else bad = middle;
  }
  return good;
}
