import type { DesignText, Typed } from '../../../design/design.ts';
import { readQuantity } from '../../../design/quantity.ts';
import { assumedCore } from '../../../trade/assumedCore.ts';
import { ALL_CORE_MM } from '../../../trade/stringSpec.ts';

/** The lists that have an entry for each string, in the order of the table's columns. */
export const LISTS = ['notes', 'diameters', 'cores', 'wraps', 'setbacks'] as const;
export type List = (typeof LISTS)[number];

/** An entry of a list as typed; '' where the list ends before. */
export function entryAt(typed: Typed, at: number): number | string {
  return (Array.isArray(typed) ? (typed as readonly (number | string)[])[at] : undefined) ?? '';
}

/** A list with one entry typed anew; entries that were missing before it are blank. */
export function withEntry(typed: Typed, at: number, entry: number | string): readonly (number | string)[] {
  const list = Array.isArray(typed) ? (typed as readonly (number | string)[]) : [];
  return Array.from({ length: Math.max(list.length, at + 1) }, (_, i) =>
    i === at ? entry : (list[i] ?? ''),
  );
}

/** Whether a string is plain: all core. */
export function isPlain({ diameters, cores }: DesignText['strings'], at: number): boolean {
  const [diameter, core] = [entryAt(diameters, at), entryAt(cores, at)];
  if (diameter === core) return true;
  const [d, c] = [readQuantity(diameter, 'length'), readQuantity(core, 'length')];
  return d.ok && c.ok && Math.abs(d.value - c.value) <= ALL_CORE_MM;
}

/** The design with one entry of a string typed anew. The core of a plain string goes with its diameter. */
export function withString(text: DesignText, list: List, at: number, entry: number | string): DesignText {
  const { strings } = text;
  if (entryAt(strings[list], at) === entry) return text;
  const cores = list === 'diameters' &&
    isPlain(strings, at) && { cores: withEntry(strings.cores, at, entry) };
  return { ...text, strings: { ...strings, [list]: withEntry(strings[list], at, entry), ...cores } };
}

/** The design with a plain string wound on an assumed core, or a wound one plain. */
export function withWoundOrPlain(text: DesignText, at: number): DesignText {
  const diameter = entryAt(text.strings.diameters, at);
  return withString(text, 'cores', at, isPlain(text.strings, at) ? coreFor(diameter) : diameter);
}

/** The core to assume, in inches or millimetres as the diameter is typed; the diameter itself if that can't be read. */
function coreFor(diameter: number | string): number | string {
  const read = readQuantity(diameter, 'length');
  if (!read.ok) return diameter;
  const inches = assumedCore((read.value / 25.4) * 1000) / 1000;
  return /in|["″]/i.test(String(diameter)) ? inInches(inches) : Math.round(inches * 25.4 * 1e4) / 1e4;
}

/** As gauges are written: `0.012 in`, and half a thousandth where there is one. */
export function inInches(inches: number): string {
  return `${inches.toFixed(4).replace(/0$/, '')} in`;
}
