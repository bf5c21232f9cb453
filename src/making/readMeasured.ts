import type { NumberField } from '../design/fields/kinds.ts';
import { DesignError, type Problem } from '../design/problem.ts';
import { ACCEPTED, readQuantity } from '../design/quantity.ts';
import { describe } from '../design/read.ts';
import { fixed, measure } from '../report/said.ts';
import type { Measured } from './meaning.ts';
import { isPlausible, plausible } from './plausible.ts';
import type { Setting, Step } from './step.ts';

const KIND: Readonly<Record<Setting['unit'], NumberField['kind']>> = {
  mm: 'length',
  '°': 'angle',
  g: 'mass',
  '': 'ratio',
};

/**
 * Measured values from plain JSON: by the id of their setting, a number in its unit or text with a unit (`7/32 in`); blank
 * is not measured. What no such setting can be is refused: `plausible`. Throws `DesignError`, paths `measured.…`, with every problem found.
 */
export function readMeasured(json: unknown, steps: readonly Step[]): Measured {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    const [allowed, remedy] = ['values by the id of their setting', 'Give a group of them, or nothing.'];
    throw new DesignError([
      { code: 'not-a-value', path: 'measured', value: describe(json), allowed, remedy },
    ]);
  }
  const settings = new Map(steps.flatMap((step) => step.settings.map((one) => [one.id, one])));
  const problems: Problem[] = [];
  const measured: Record<string, number> = {};
  for (const [id, given] of Object.entries(json)) {
    const setting = settings.get(id);
    const read = setting ? one(id, setting, given) : unknown(id);
    if (typeof read === 'number') measured[id] = read;
    else if (read) problems.push(read);
  }
  if (problems.length > 0) throw new DesignError(problems);
  return measured;
}

/** A value, nothing for a blank, or what is wrong with it. */
function one(id: string, setting: Setting, given: unknown): number | undefined | Problem {
  if (given === null || (typeof given === 'string' && given.trim() === '')) return undefined;
  const kind = KIND[setting.unit];
  const read =
    typeof given === 'number' || typeof given === 'string'
      ? readQuantity(given, kind)
      : { ok: false as const };
  const number = read.ok && Number.isFinite(read.value);
  if (number && isPlausible(setting, read.value)) return read.value;
  const allowed = number ? rangeText(setting) : `${ACCEPTED[kind]}, ${rangeText(setting)}`;
  return {
    code: number ? 'out-of-range' : 'not-a-value',
    path: `measured.${id}`,
    value: describe(given),
    allowed,
    remedy: number
      ? `Measure again and type ${allowed}, with its unit where it isn’t ${setting.unit || 'a count'}; or leave it blank.`
      : `Type ${allowed}, or leave it blank.`,
  };
}

function rangeText(setting: Setting): string {
  const { least, most } = plausible(setting);
  const top = measure(most, setting.unit, 0);
  return least === undefined ? `more than 0 and at most ${top}` : `from ${fixed(least, 0)} to ${top}`;
}

function unknown(id: string): Problem {
  return {
    code: 'unknown-field',
    path: `measured.${id.replace(/\p{Cc}/gu, '·').slice(0, 60)}`,
    value: 'an unknown field',
    allowed: 'the ids of this design’s settings',
    remedy: 'Check its spelling, or take it out.',
  };
}
