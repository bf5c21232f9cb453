import type { Curves } from '../../../models/curves/curves.ts';
import { outlinePath } from './outlinePath.ts';

/** A small plan of a bridge: outline, slot and holes, all starters at one scale. */
export function StarterPicture({ curves: { outline, slot, pins } }: { curves: Curves }) {
  return (
    <svg className="starter-picture" viewBox="-92 -28 184 62" aria-hidden="true">
      <path className="outline" d={outlinePath(outline)} />
      <path d={outlinePath(slot.plan)} transform={`rotate(${(-slot.angle * 180) / Math.PI})`} />
      {pins.map(({ at: [x, y], reach }) => (
        <circle key={x} cx={x} cy={-y} r={reach} />
      ))}
    </svg>
  );
}
