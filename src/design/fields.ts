import { action } from './fields/action.ts';
import { aim } from './fields/aim.ts';
import { footprint } from './fields/footprint.ts';
import { guitar } from './fields/guitar.ts';
import type { Field } from './fields/kinds.ts';
import { limits } from './fields/limits.ts';
import { pins } from './fields/pins.ts';
import { saddle } from './fields/saddle.ts';
import { strings } from './fields/strings.ts';
import { timber } from './fields/timber.ts';
import { top } from './fields/top.ts';
import { underside } from './fields/underside.ts';

/**
 * The one table of what a design is made of. Form, command line, file loader, help and generator all read it.
 * Lengths are millimetres, angles degrees.
 */
export const FIELDS = {
  guitar,
  action,
  strings,
  footprint,
  underside,
  top,
  saddle,
  pins,
  timber,
  aim,
  limits,
} as const satisfies Readonly<Record<string, Readonly<Record<string, Field>>>>;

export type Fields = typeof FIELDS;
export type Group = keyof Fields;

/** Every field of a group, by name, without the precise types of the table: for walking it. */
export function fieldsOf(group: Group): Readonly<Record<string, Field>> {
  return FIELDS[group];
}

export const GROUPS = Object.keys(FIELDS) as readonly Group[];
