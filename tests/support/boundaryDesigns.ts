import { type AcceptedDesign, acceptDesign } from '../../src/design/acceptDesign.ts';
import { applies } from '../../src/design/applies.ts';
import { isNumberField } from '../../src/design/fields/kinds.ts';
import { change, problemsOf } from './change.ts';
import { acceptedDesigns } from './designs.ts';
import { PATHS, tableField } from './draws.ts';

/** A design that is only just accepted: one step further in one field and it is refused. */
export interface BoundaryDesign extends AcceptedDesign {
  /** The field that stands at its limit. */
  readonly path: string;
}

/**
 * `count` designs at the very edge of what validation accepts, the same for the same seed: random ones, each with one
 * field pushed up or down until the last value that is still accepted (within a ten-thousandth of its range). Where the
 * field's own end is accepted it stands there.
 */
export function boundaryDesigns(count: number, seed: number): readonly BoundaryDesign[] {
  return acceptedDesigns(count, seed).accepted.map(({ text }, i) => {
    const paths = PATHS.filter((path) => isNumberField(tableField(path)) && applies(path, text));
    // two numbers with no common measure walk over fields and directions without favour
    const path = paths[Math.floor(i * 7.3) % paths.length] ?? '';
    const field = tableField(path);
    if (!isNumberField(field)) throw new Error(`${path} is no number`);
    const [group = '', key = ''] = path.split('.');
    const groups = acceptDesign(text).design as unknown as Readonly<
      Record<string, Readonly<Record<string, number>>>
    >;
    const allowed = (value: number) => problemsOf(change(text, { [path]: value })).length === 0;
    let inside = groups[group]?.[key] ?? Number.NaN;
    let outside = i % 2 === 0 ? field.max : field.min;
    if (allowed(outside)) inside = outside;
    const whole = field.kind === 'count';
    while (Math.abs(outside - inside) > (whole ? 1 : (field.max - field.min) / 10_000)) {
      const middle = whole ? Math.round((inside + outside) / 2) : (inside + outside) / 2;
      if (allowed(middle)) inside = middle;
      else outside = middle;
    }
    return { ...acceptDesign(change(text, { [path]: inside })), path };
  });
}
