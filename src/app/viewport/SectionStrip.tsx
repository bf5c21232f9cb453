import type { Box } from './meshFigures.ts';
import { PlaceField } from './PlaceField.tsx';
import { AXES, reachOf, type Section } from './section.ts';
import type { Axis } from './sliceMesh.ts';

interface Props {
  readonly section: Section;
  readonly box: Box;
  readonly onAxis: (axis: Axis) => void;
  readonly onChange: (section: Section) => void;
  /** Look straight at the cut. */
  readonly onFace: () => void;
}

const RUNS_ALONG = { x: 'length', y: 'depth', z: 'height' } as const;

/** Where the part is cut open, and which side stays. */
export function SectionStrip({ section, box, onAxis, onChange, onFace }: Props) {
  const { min, max } = reachOf(box, section.axis);
  const move = (at: number) => onChange({ ...section, at });
  return (
    <section className="viewport-section" aria-label="Section">
      <fieldset className="viewport-group" aria-label="Cut across">
        {AXES.map((axis) => (
          <button
            type="button"
            key={axis}
            aria-pressed={section.axis === axis}
            title={`Cut square to the ${RUNS_ALONG[axis]}`}
            onClick={() => onAxis(axis)}
          >
            {axis} <small>{RUNS_ALONG[axis]}</small>
          </button>
        ))}
      </fieldset>
      <input
        type="range"
        aria-label={`Place of the cut on ${section.axis}`}
        min={Math.ceil(10 * min) / 10}
        max={Math.floor(10 * max) / 10}
        step={0.1}
        value={section.at}
        onChange={(event) => move(event.target.valueAsNumber)}
      />
      <PlaceField value={section.at} min={min} max={max} onChange={move} />
      <span className="viewport-group">
        <button
          type="button"
          title="Keep the other side"
          onClick={() => onChange({ ...section, keep: section.keep > 0 ? -1 : 1 })}
        >
          Flip side
        </button>
        <button type="button" title="Look straight at the cut" onClick={onFace}>
          Face the cut
        </button>
      </span>
    </section>
  );
}
