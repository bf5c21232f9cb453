import Fraction from 'fraction.js';
import type { NumberField } from './fields/kinds.ts';

const MM_PER: Readonly<Record<string, number>> = {
  '': 1,
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  inch: 25.4,
  inches: 25.4,
  '"': 25.4,
  '″': 25.4,
  ft: 304.8,
  "'": 304.8,
  '′': 304.8,
};

const UNITS: Readonly<Record<NumberField['kind'], Readonly<Record<string, number>>>> = {
  length: MM_PER,
  angle: { '': 1, '°': 1, deg: 1, degrees: 1 },
  count: { '': 1 },
  density: { '': 1, 'kg/m³': 1, 'kg/m3': 1, 'g/cm³': 1000, 'g/cm3': 1000 },
  modulus: { '': 1, gpa: 1, mpa: 0.001 },
  frequency: { '': 1, hz: 1 },
  ratio: { '': 1 },
  cents: { '': 1, cent: 1, cents: 1, ct: 1 },
  mass: { '': 1, g: 1, gram: 1, grams: 1, kg: 1000, oz: 28.349523125 },
  bending: { '': 1, 'n·m²': 1, n·m2: 1, 'nm²': 1, nm2: 1 },
};

export type Quantity =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly why: 'not-a-value' | 'wrong-unit'; readonly accepted: string };

/** The ways a quantity of this kind may be typed, for an error's "allowed". */
export const ACCEPTED: Readonly<Record<NumberField['kind'], string>> = {
  length: 'a length such as 9.5, 9.5 mm, 3/8 in, 1 1/2" or 25 ft',
  angle: 'an angle in degrees such as 2.5 or 2.5°',
  count: 'a whole number',
  density: 'a density in kg/m³ such as 849, or 0.849 g/cm³',
  modulus: 'a modulus in GPa such as 12.3',
  frequency: 'a frequency in Hz such as 440',
  ratio: 'a plain number such as 1.5',
  cents: 'cents such as 3 or -2.5',
  mass: 'a mass in g such as 26.5, or 0.9 oz',
  bending: 'a bending stiffness in N·m² such as 24.5',
};

// whole, fraction, or whole and fraction; decimals with point or comma; then an optional unit
const SHAPE =
  /^([+\-−]?)\s*(?:(\d+)[\s-]+(\d+)\s*\/\s*(\d+)|(\d+)\s*\/\s*(\d+)|(\d+(?:[.,]\d*)?|[.,]\d+)(e[+-]?\d+)?)\s*(.*)$/i;

/**
 * Reads a number with an optional unit as a person types it: `9.5`, `9,5 mm`, `3/8 in`, `1 1/2"`, `2.5°`.
 * Exact fractions are kept exact until the unit is applied (1 in = 25.4 mm exactly, since 1959).
 */
export function readQuantity(typed: number | string, kind: NumberField['kind']): Quantity {
  const accepted = ACCEPTED[kind];
  if (typeof typed === 'number') {
    return Number.isFinite(typed) ? { ok: true, value: typed } : { ok: false, why: 'not-a-value', accepted };
  }
  const found = SHAPE.exec(typed.trim());
  if (!found) return { ok: false, why: 'not-a-value', accepted };
  const [, sign, whole, above, below, above2, below2, decimal, exponent = '', unit = ''] = found;
  if (Number(below ?? below2 ?? 1) === 0) return { ok: false, why: 'not-a-value', accepted };
  const size = decimal
    ? Number(decimal.replace(',', '.') + exponent)
    : new Fraction(`${whole ?? 0}`).add(new Fraction(`${above ?? above2}/${below ?? below2}`)).valueOf();
  const named = unit.trim().toLowerCase();
  const factor = Object.hasOwn(UNITS[kind], named) ? UNITS[kind][named] : undefined;
  if (factor === undefined) return { ok: false, why: 'wrong-unit', accepted };
  const value = (sign === '-' || sign === '−' ? -size : size) * factor;
  return Number.isFinite(value) ? { ok: true, value } : { ok: false, why: 'not-a-value', accepted };
}
