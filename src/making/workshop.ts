import { choice, type Field, length } from '../design/fields/kinds.ts';
import { DesignError, type Problem } from '../design/problem.ts';
import { describe, readField } from '../design/read.ts';

/** What a builder works with: one table for form, command line and reader, as the design has one. mm */
export const WORKSHOP = {
  drill: choice(
    'Pin holes',
    { press: 'drill press', hand: 'hand drill and guide block' },
    'press',
    'What the pin holes are drilled with.',
  ),
  slot: choice(
    'Saddle slot',
    { router: 'router and jig', hand: 'knife, saw and chisel' },
    'router',
    'What the saddle slot is cut with.',
  ),
  outline: choice(
    'Outline and wings',
    { machine: 'bandsaw and sander', hand: 'hand saw and files' },
    'machine',
    'What the outline and the wings are cut with.',
  ),
  cutter: length(
    'Cutter',
    [0.8, 8],
    '3/32 in',
    0.1,
    'Diameter of the router’s cutter; no wider than the slot.',
  ),
  baseWidth: length(
    'Router’s base',
    [30, 250],
    90,
    1,
    'Its width, or its diameter; the cutter in the middle.',
  ),
  jigLength: length(
    'Jig’s rail, length',
    [100, 1000],
    300,
    5,
    'Length over which the shim lies between rail and bridge.',
  ),
  shimSide: choice(
    'Shim lies',
    { front: 'along the front edge', back: 'along the back edge' },
    'front',
    'Which edge of the bridge is held off the jig’s rail.',
  ),
  greatestPass: length('Depth of a pass', [0.2, 4], 1.2, 0.1, 'The greatest that is cut at once.'),
  blankAllowance: length(
    'Wood round the outline',
    [0.5, 20],
    3,
    0.5,
    'Wood beyond the outline on every side of the blank.',
  ),
  topAllowance: length(
    'Wood over the crown',
    [0.05, 5],
    0.3,
    0.05,
    'How much thicker than finished the blank is planed: the crown takes it off.',
  ),
  finishAllowance: length(
    'Wood left for finishing',
    [0, 0.5],
    0.1,
    0.05,
    'Wood left on top and edges for the finer grits.',
  ),
  reamBy: choice(
    'Pin holes reamed by',
    { depth: 'depth', diameter: 'diameter' },
    'diameter',
    'What tells at set-up that a hole is reamed.',
  ),
} as const satisfies Readonly<Record<string, Field>>;

type Table = typeof WORKSHOP;

/** A workshop as checked values: lengths in mm. */
export type Workshop = {
  readonly [K in keyof Table]: Table[K] extends { readonly choices: infer C } ? keyof C & string : number;
};

/** Cutters that are sold for slots, mm: 1/16, 3/32 and 1/8 in, and whole and half millimetres. Common practice. */
const CUTTERS = [1, 1.5, 1.5875, 2, 2.38125, 2.5, 3, 3.175, 4, 5, 6] as const;

/** The workshop of all defaults, with the widest usual cutter that a slot of this width (mm) takes. */
export function usualWorkshop(slotWidth: number): Workshop {
  const fitting = CUTTERS.filter((cutter) => cutter <= slotWidth + 1e-9);
  return readWorkshop({ cutter: fitting[fitting.length - 1] });
}

/**
 * Reads a workshop from plain JSON; what is left out is as by default. Lengths may be typed with a unit (`1/8 in`).
 * Throws `DesignError`, paths `workshop.…`, with every problem found.
 */
export function readWorkshop(json: unknown): Workshop {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    const remedy = 'Give a group of fields, or nothing.';
    throw new DesignError([
      { code: 'not-a-value', path: 'workshop', value: describe(json), allowed: 'a group of fields', remedy },
    ]);
  }
  const given = json as Readonly<Record<string, unknown>>;
  const problems: Problem[] = Object.keys(given)
    .filter((key) => !Object.hasOwn(WORKSHOP, key))
    .map((key) => ({
      code: 'unknown-field',
      path: `workshop.${key.slice(0, 60)}`,
      value: 'an unknown field',
      allowed: Object.keys(WORKSHOP).join(', '),
      remedy: 'Check its spelling, or take it out.',
    }));
  const values: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(WORKSHOP)) {
    const read = readField(`workshop.${key}`, field, given[key] === undefined ? field.default : given[key]);
    if (Array.isArray(read)) problems.push(...read);
    else values[key] = read.value;
  }
  if (problems.length > 0) throw new DesignError(problems);
  const workshop = values as Workshop;
  const { topAllowance, finishAllowance } = workshop;
  if (topAllowance < finishAllowance) {
    throw new DesignError([
      {
        code: 'does-not-fit',
        path: 'workshop.topAllowance',
        value: `${topAllowance}`,
        allowed: `at least the ${finishAllowance} mm that are left for finishing`,
        remedy: 'Plane the blank thicker, or leave less for finishing.',
      },
    ]);
  }
  return workshop;
}
