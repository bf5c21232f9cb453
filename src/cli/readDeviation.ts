import { DEVIATION_MM } from '../../workers/protocol.ts';
import { readQuantity } from '../design/quantity.ts';
import { UseError } from './exit.ts';

/** How far an STL's facets may stray, mm, as typed: `0.02`, `0.05 mm`, `0.001 in`. Throws `UseError`. */
export function readDeviation(typed: string | undefined): number {
  if (typed === undefined) return DEVIATION_MM.usual;
  const read = readQuantity(typed, 'length');
  const { least, most } = DEVIATION_MM;
  if (read.ok && read.value >= least && read.value <= most) return read.value;
  throw new UseError(`--deviation ${typed}: it must be a length of ${least} to ${most} mm.`);
}
