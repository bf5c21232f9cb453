import type { PartFigure } from '../../report/bendingFigures.ts';
import { fixed } from '../../report/said.ts';

/** What the lengths of a bridge are called, seen with the nut upward. */
export const PART_NAMES: Readonly<Record<PartFigure['name'], string>> = {
  leftWing: 'left wing',
  block: 'middle block',
  rightWing: 'right wing',
};

/** One length of the bridge, as shown. */
export interface PartRow {
  readonly name: string;
  /** g */
  readonly mass: string;
  /** Least bending stiffness in it, N·m². */
  readonly least: string;
  /** Of the bridge's whole give under a load in the middle, %. */
  readonly give: string;
}

export function partRows(parts: readonly PartFigure[]): readonly PartRow[] {
  return parts.map(({ name, massG, leastNm2, deflectionShare }) => ({
    name: PART_NAMES[name],
    mass: fixed(massG, 2),
    least: fixed(leastNm2, 2),
    give: fixed(100 * deflectionShare, 0),
  }));
}
