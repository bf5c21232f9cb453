import type { ChoiceField, MeasuresField, NotesField, NumbersField, TextField } from './fields/kinds.ts';
import type { Fields } from './fields.ts';

type ValueOf<F> = F extends ChoiceField
  ? keyof F['choices'] & string
  : F extends TextField
    ? string
    : F extends NumbersField
      ? readonly number[]
      : F extends MeasuresField
        ? readonly (number | undefined)[]
        : F extends NotesField
          ? readonly string[]
          : number;

/** A checked design: every field a plain value, lengths in mm, angles in degrees, E in GPa, densities in kg/m³. */
export type Design = {
  readonly [G in keyof Fields]: { readonly [K in keyof Fields[G]]: ValueOf<Fields[G][K]> };
};

/** What a person typed for one field: a number, text such as `3/8 in`, or a list of either. */
export type Typed = number | string | readonly (number | string)[];

/** A design as it is written in a file and kept in the app: values as typed, so that they are shown as typed. */
export type DesignText = {
  readonly format: typeof FORMAT;
  readonly version: typeof VERSION;
} & { readonly [G in keyof Fields]: { readonly [K in keyof Fields[G]]: Typed } };

export const FORMAT = 'pinbridge-design';
export const VERSION = 3;
