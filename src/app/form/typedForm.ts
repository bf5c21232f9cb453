import Fraction from 'fraction.js';
import type { NumberField } from '../../design/fields/kinds.ts';
import { readQuantity } from '../../design/quantity.ts';

/** How a quantity was typed, so that a new value can be written the same way. */
interface TypedForm {
  /** mm, °, kg/m³ or GPa for one of what was typed */
  readonly perUnit: number;
  /** Everything after the number, with the space before it. */
  readonly tail: string;
  /** Fractions of an inch are written as fractions. */
  readonly fraction: boolean;
  /** What one step adds, in the unit typed. */
  readonly step: number;
  readonly decimals: number;
  readonly comma: boolean;
  /** Whether it was a bare JSON number. */
  readonly bare: boolean;
}

/** The finest fraction of an inch on a bench rule. */
const FINEST = 64;

/**
 * A typed quantity moved by a number of steps, in the unit and manner in which it was typed: 9.5 → 9.6,
 * `3/8 in` → `25/64 in`, `0.375 in` → `0.38 in`. It stops at the ends of the field's range. What can't be read stays.
 */
export function stepTyped(typed: number | string, field: NumberField, steps: number): number | string {
  const read = readQuantity(typed, field.kind);
  if (!read.ok || steps === 0) return typed;
  const form = formOf(typed, field);
  return write(read.value / form.perUnit + steps * form.step, typed, field, form);
}

/** A value (mm, °, …) in the unit and manner of what was typed, on a whole step. */
export function likeTyped(value: number, typed: number | string, field: NumberField): number | string {
  const form = formOf(typed, field);
  return write(Math.round(value / form.perUnit / form.step) * form.step, typed, field, form);
}

function write(size: number, typed: number | string, field: NumberField, form: TypedForm): number | string {
  const least = field.min / form.perUnit;
  const most = field.max / form.perUnit;
  if (size < least - 1e-9 || size > most + 1e-9) {
    if (form.perUnit === 1) return write(Math.min(most, Math.max(least, size)), typed, field, form);
    // an inch rarely ends where the range does: the last whole step inside it
    const inside =
      size < least ? Math.ceil(least / form.step) * form.step : Math.floor(most / form.step) * form.step;
    return inside < least - 1e-9 || inside > most + 1e-9 ? typed : write(inside, typed, field, form);
  }
  const number = form.fraction ? asFraction(size) : asDecimal(size, form);
  return form.bare ? Number(number) : `${number}${form.tail}`;
}

function formOf(typed: number | string, field: NumberField): TypedForm {
  const text = String(typed).trim();
  const parts = /^([+-]?[\d.,\s/-]*\d[\d.,]*)(.*)$/.exec(text);
  const digits = parts?.[1] ?? '';
  const tail = parts?.[2] ?? '';
  const one = readQuantity(`1${tail}`, field.kind);
  const perUnit = one.ok ? one.value : 1;
  const fraction = digits.includes('/');
  const step = fraction
    ? fractionStep(field.step / perUnit)
    : perUnit === 1
      ? field.step
      : roundStep(field.step / perUnit);
  const shown = /[.,](\d+)/.exec(digits)?.[1]?.length ?? 0;
  const decimals = Math.max(shown, decimalsOf(step));
  return {
    perUnit,
    tail,
    fraction,
    step,
    decimals,
    comma: digits.includes(','),
    bare: typeof typed === 'number',
  };
}

/** The 1, 2 or 5 times a power of ten that lies nearest. */
function roundStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step));
  const [nearest = 1] = [1, 2, 5, 10].sort(
    (a, b) => Math.abs(Math.log((a * power) / step)) - Math.abs(Math.log((b * power) / step)),
  );
  return nearest * power;
}

/** The halving of an inch that lies nearest, down to a 64th. */
function fractionStep(step: number): number {
  const halvings = Math.round(-Math.log2(step));
  return 1 / Math.min(FINEST, Math.max(1, 2 ** halvings));
}

/** As many as it takes to write the step: 0.5 has one, the 0.0254 mm of a thousandth of an inch four. */
function decimalsOf(step: number): number {
  const decimals = [0, 1, 2, 3, 4, 5].find((n) => Math.abs(step - Number(step.toFixed(n))) < 1e-9);
  return decimals ?? 6;
}

function asDecimal(size: number, { decimals, comma }: TypedForm): string {
  const text = size.toFixed(decimals).replace(/^-(?=[0.]+$)/, '');
  return comma ? text.replace('.', ',') : text;
}

/** `1 3/8`, as a rule is read. */
function asFraction(size: number): string {
  const exact = new Fraction(Math.round(size * FINEST), FINEST);
  return exact.toFraction(true);
}
