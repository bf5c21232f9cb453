import type { Holes } from '../../../models/curves/curves.ts';

const HOLES: readonly (readonly [Holes, string])[] = [
  ['drilled', 'parallel, for the drill press or the mill; ream them later by hand'],
  ['reamed', 'tapered, as they stand when the pins go in'],
];

interface HolesChoiceProps {
  readonly holes: Holes;
  readonly onChoose: (holes: Holes) => void;
}

/** How the pin holes of the files' solid stand. */
export function HolesChoice({ holes, onChoose }: HolesChoiceProps) {
  return (
    <fieldset className="file-holes">
      <legend>Pin holes</legend>
      {HOLES.map(([value, words]) => (
        <label key={value}>
          <input type="radio" name="file-holes" checked={holes === value} onChange={() => onChoose(value)} />
          <span>
            as {value} <small>{words}</small>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
