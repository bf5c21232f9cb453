import type { Underside } from '../../../models/curves/curves.ts';
import type { DesignText } from '../../design/design.ts';
import { readQuantity } from '../../design/quantity.ts';

/** The guitar's top under the bridge as typed, or undefined while its radius can't be read. */
export function soundboardOf({ guitar }: DesignText): Underside | undefined {
  const { soundboard: shape, soundboardRadius: typed } = guitar;
  if (shape === 'flat') return { shape };
  if (shape !== 'cylinder' && shape !== 'sphere') return undefined;
  const read =
    typeof typed === 'number' || typeof typed === 'string' ? readQuantity(typed, 'length') : undefined;
  // less than a half turn must do under the bridge
  return read?.ok && read.value > 500 ? { shape, radius: read.value } : undefined;
}
