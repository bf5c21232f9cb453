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

/** How a cut square to an axis lies, what it shows, and from where its place is measured. */
const CUTS = {
  x: { word: 'across', shows: 'from front to back', from: 'from the centre line' },
  y: { word: 'lengthwise', shows: 'from tip to tip', from: 'from the slot' },
  z: { word: 'level', shows: 'flat, like the glue face', from: 'over the glue plane' },
} as const satisfies Record<Axis, { word: string; shows: string; from: string }>;

/** Where the part is cut open, and which side stays. */
export function SectionStrip({ section, box, onAxis, onChange, onFace }: Props) {
  const { min, max } = reachOf(box, section.axis);
  const move = (at: number) => onChange({ ...section, at });
  return (
    <section className="viewport-section" aria-label="Section">
      <fieldset className="viewport-group" aria-label="Cut">
        <span className="viewport-word">Cut:</span>
        {AXES.map((axis) => (
          <button
            type="button"
            key={axis}
            aria-pressed={section.axis === axis}
            title={`Cut the part ${CUTS[axis].shows}`}
            onClick={() => onAxis(axis)}
          >
            {CUTS[axis].word}
          </button>
        ))}
      </fieldset>
      <input
        type="range"
        aria-label={`Place of the cut, mm ${CUTS[section.axis].from}`}
        min={Math.ceil(10 * min) / 10}
        max={Math.floor(10 * max) / 10}
        step={0.1}
        value={section.at}
        onChange={(event) => move(event.target.valueAsNumber)}
      />
      <PlaceField value={section.at} min={min} max={max} from={CUTS[section.axis].from} onChange={move} />
      <span className="viewport-group">
        <button
          type="button"
          title="Keep the other half of the part"
          onClick={() => onChange({ ...section, keep: section.keep > 0 ? -1 : 1 })}
        >
          Other half
        </button>
        <button type="button" title="Look straight at the cut" onClick={onFace}>
          Face the cut
        </button>
      </span>
    </section>
  );
}
