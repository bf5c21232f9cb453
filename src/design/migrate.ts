import { assumedCore } from '../trade/assumedCore.ts';
import type { Field } from './fields/kinds.ts';
import { fieldsOf, GROUPS } from './fields.ts';
import { readQuantity } from './quantity.ts';

type Group = Readonly<Record<string, unknown>>;

/** A string thicker than this was taken for a wound one when a design did not say yet, mm. */
const THICKEST_PLAIN = 0.5;

/**
 * A design of an older version as the present one writes it; anything else as it is, for the reader to judge. Version 1
 * knew no strings but their diameters and solved nothing: every number stays as it was set, what is new is the default.
 */
export function migrate(json: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  if (json.version !== 1) return json;
  const groups = GROUPS.map((group) => {
    const given = json[group];
    if (given === undefined && group === 'action') return [group, defaults(group)];
    return [group, isGroup(given) ? { ...defaults(group), ...lists(group, given), ...given } : given];
  });
  return { ...json, ...Object.fromEntries(groups.filter(([, value]) => value !== undefined)), version: 2 };
}

/** The fields that version 1 did not have. */
function defaults(group: (typeof GROUPS)[number]): Group {
  const fresh = Object.entries(fieldsOf(group)).filter(
    ([key]) => NEW.has(`${group}.${key}`) || group === 'action',
  );
  return Object.fromEntries(fresh.map(([key, field]) => [key, asWas(key, field)]));
}

/** What was not solved is set. */
function asWas(key: string, field: Field) {
  return key.endsWith('By') && field.kind === 'choice' && 'set' in field.choices ? 'set' : field.default;
}

const NEW: ReadonlySet<string> = new Set([
  ...['set', 'notes', 'cores', 'wraps', 'setbacks', 'pitch', 'modulus', 'courses', 'pairGap'].map(
    (key) => `strings.${key}`,
  ),
  'top.thicknessBy',
  ...['rule', 'line', 'firmEnds', 'filed', 'crownMargin', 'woodUnder'].map((key) => `saddle.${key}`),
  ...['angleBy', 'setbackBy', 'depthBy', 'showingBy'].map((key) => `saddle.${key}`),
  ...['spacing', 'rows', 'rowGap'].map((key) => `pins.${key}`),
]);

/** Lists for as many strings as there were: each as the defaults go on, cores guessed from the diameters. */
function lists(group: string, given: Group): Group {
  const count = Number(given.count);
  if (group !== 'strings' || !(count >= 4 && count <= 12)) return {};
  const fill = (key: string, made?: (i: number) => unknown) => {
    const field = fieldsOf('strings')[key]?.default as readonly unknown[];
    return Array.from({ length: count }, (_, i) => made?.(i) ?? field[Math.min(i, field.length - 1)]);
  };
  const given6 = Array.isArray(given.diameters) ? given.diameters : [];
  const diameters = fill('diameters', (i) => given6[i]);
  return {
    diameters,
    notes: fill('notes'),
    wraps: fill('wraps'),
    setbacks: fill('setbacks'),
    cores: diameters.map(coreOf),
  };
}

function coreOf(diameter: unknown): unknown {
  if (typeof diameter !== 'number' && typeof diameter !== 'string') return 0.3;
  const read = readQuantity(diameter, 'length');
  if (!read.ok || read.value <= THICKEST_PLAIN) return diameter;
  return (
    Math.round(Math.min(read.value, (assumedCore((read.value / 25.4) * 1000) * 25.4) / 1000) * 1e4) / 1e4
  );
}

function isGroup(value: unknown): value is Group {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
