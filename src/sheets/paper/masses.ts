import { massG, surfaceFigures } from '../../../models/surface/figures.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';

/** Mass of the finished bridge with its holes as drilled and as reamed, g. */
export function masses({ curves, design }: AcceptedDesign): readonly [number, number] {
  const mass = (holes: 'drilled' | 'reamed') =>
    massG(surfaceFigures(curves, holes).volumeMm3, design.timber.density);
  return [mass('drilled'), mass('reamed')];
}
