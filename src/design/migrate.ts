import { assumedCore } from '../trade/assumedCore.ts';
import { massPerLength } from '../trade/massPerLength.ts';
import { frequencyNumber, noteName } from '../trade/notes.ts';
import { coreAreaM2, plainString, woundString } from '../trade/stringSpec.ts';
import type { Field } from './fields/kinds.ts';
import { fieldsOf, GROUPS } from './fields.ts';
import { readQuantity } from './quantity.ts';

type Group = Readonly<Record<string, unknown>>;

/** A string thicker than this was taken for a wound one when a design did not say yet, mm. */
const THICKEST_PLAIN = 0.5;
/** What stands for a core that nothing is known of, mm. */
const PLAIN_CORE = 0.3;

type Json = Readonly<Record<string, unknown>>;

/** A design of an older version as the present one writes it; anything else as it is, for the reader to judge. */
export function migrate(json: Json): Json {
  const second = json.version === 1 ? fromFirst(json) : json;
  return second.version === 2 ? fromSecond(second) : second;
}

/** What version 2 did not have yet, beside the groups `aim` and `limits`. */
const SINCE_SECOND: Readonly<Record<string, readonly string[]>> = {
  footprint: ['cutter'],
  saddle: ['cutter'],
  timber: ['weighed', 'saddleDensity', 'pinMass', 'braceWidth', 'braceStiffness'],
};

/** Version 2 aimed at nothing and had no limits of its own: what is new is the default. */
function fromSecond(json: Json): Json {
  const grown = Object.entries(SINCE_SECOND).flatMap(([group, keys]) => {
    const given = json[group];
    if (!isGroup(given)) return [];
    const fresh = keys.map((key) => [key, fieldsOf(group as (typeof GROUPS)[number])[key]?.default]);
    return [[group, { ...Object.fromEntries(fresh), ...cutterOf(group, given), ...given }]];
  });
  const added = (['aim', 'limits'] as const).map((group) => [group, json[group] ?? wholeDefaults(group)]);
  return { ...json, ...Object.fromEntries([...grown, ...added]), version: 3 };
}

/** A narrow slot was made with a narrower cutter than the usual one. */
function cutterOf(group: string, given: Group): Group {
  const width = group === 'saddle' ? mmOf(given.slotWidth) : undefined;
  return width !== undefined && width < USUAL_CUTTER ? { cutter: given.slotWidth } : {};
}

/** 1/8 in */
const USUAL_CUTTER = 3.175;

function wholeDefaults(group: (typeof GROUPS)[number]): Group {
  return Object.fromEntries(Object.entries(fieldsOf(group)).map(([key, field]) => [key, field.default]));
}

/**
 * Version 1 knew no strings but their diameters and solved nothing: every number stays as it was set, what is new is the
 * default.
 */
function fromFirst(json: Json): Json {
  const groups = GROUPS.map((group) => {
    const given = json[group];
    if (given === undefined && group === 'action') return [group, defaults(group)];
    return [
      group,
      isGroup(given)
        ? {
            ...defaults(group),
            ...lists(group, given, isGroup(json.guitar) ? json.guitar.scale : undefined),
            ...given,
          }
        : given,
    ];
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
function lists(group: string, given: Group, scale: unknown): Group {
  const count = Number(given.count);
  if (group !== 'strings' || !(count >= 4 && count <= 12)) return {};
  const fill = (key: string, made?: (i: number) => unknown) => {
    const field = fieldsOf('strings')[key]?.default as readonly unknown[];
    return Array.from({ length: count }, (_, i) => made?.(i) ?? field[Math.min(i, field.length - 1)]);
  };
  const listed = Array.isArray(given.diameters) ? given.diameters : [];
  const diameters = fill('diameters', (i) => listed[i]);
  const cores = diameters.map(coreOf);
  return {
    diameters,
    notes: diameters.map((diameter, i) => noteOf(diameter, cores[i], scale)),
    wraps: fill('wraps'),
    setbacks: fill('setbacks'),
    cores,
  };
}

function coreOf(diameter: unknown): unknown {
  const mm = mmOf(diameter);
  // what can't be read is told of the diameter, not of the core
  if (mm === undefined || mm < 0.15 || mm > 2.5) return PLAIN_CORE;
  if (mm <= THICKEST_PLAIN) return diameter;
  return Math.round(Math.min(mm, (assumedCore((mm / 25.4) * 1000) * 25.4) / 1000) * 1e4) / 1e4;
}

/** The note at which a string of an old design pulls as strings do: that it was tuned is all that is known of it. */
function noteOf(diameter: unknown, core: unknown, scale: unknown): string {
  const [d, c, s] = [mmOf(diameter), mmOf(core), mmOf(scale)];
  if (d === undefined || c === undefined || s === undefined) return 'E3';
  const spec = d <= THICKEST_PLAIN ? plainString(d) : woundString(d, c);
  const newtons = Math.min(USUAL_PULL, USUAL_STRESS * coreAreaM2(spec));
  const hz = Math.sqrt(newtons / massPerLength(spec)) / ((2 * s) / 1000);
  // a scale or a diameter out of reason is told of itself
  return hz > 20 && hz < 1500 ? noteName(frequencyNumber(hz)) : 'E3';
}

/** N, Pa: common practice. */
const [USUAL_PULL, USUAL_STRESS] = [115, 1.8e9];

function mmOf(typed: unknown): number | undefined {
  const read =
    typeof typed === 'number' || typeof typed === 'string' ? readQuantity(typed, 'length') : undefined;
  return read?.ok && read.value > 0 ? read.value : undefined;
}

function isGroup(value: unknown): value is Group {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
