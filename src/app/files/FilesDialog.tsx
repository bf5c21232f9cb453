import { useState } from 'react';
import type { Holes } from '../../../models/curves/curves.ts';
import { DEVIATION_MM } from '../../../workers/protocol.ts';
import { Dialog } from '../header/Dialog.tsx';
import { judge } from '../store/judge.ts';
import { useApp } from '../store/useApp.ts';
import { useWriting } from './useWriting.ts';
import './files.css';

const HOLES: readonly (readonly [Holes, string])[] = [
  ['drilled', 'parallel, for the drill press or the mill; ream them later by hand'],
  ['reamed', 'tapered, as they stand when the pins go in'],
];

const DEVIATIONS = ['0.1', '0.05', '0.02', '0.01', '0.005'] as const;

/** Files of the exact solid for whoever cuts the bridge. */
export function FilesDialog({ onClose }: { onClose: () => void }) {
  const makeable = useApp((state) => judge(state.history.present).ok);
  // as they are seen; chosen otherwise here, the view stays as it is
  const seen = useApp(({ session }) => session.holes);
  const [holes, setHoles] = useState<Holes>(seen);
  const [schema, setSchema] = useState<'AP214' | 'AP242'>('AP214');
  const [deviation, setDeviation] = useState(String(DEVIATION_MM.usual));
  const { writing, done, write } = useWriting();
  const off = !makeable || writing !== undefined;
  return (
    <Dialog title="Files for the shop" onClose={onClose}>
      {!makeable && (
        <p className="amiss">
          The design can’t be made as typed. Mend it first: files are written of the present design only.
        </p>
      )}
      <fieldset className="file-holes">
        <legend>Pin holes</legend>
        {HOLES.map(([value, words]) => (
          <label key={value}>
            <input
              type="radio"
              name="file-holes"
              checked={holes === value}
              onChange={() => setHoles(value)}
            />
            <span>
              as {value} <small>{words}</small>
            </span>
          </label>
        ))}
      </fieldset>
      <section className="file-kind">
        <h3>STEP</h3>
        <p>
          The exact solid with its true curves, in millimetres: what a CNC shop cuts from, and other programs
          measure.
        </p>
        <div className="file-line">
          <label>
            Standard{' '}
            <select
              value={schema}
              onChange={(event) => setSchema(event.target.value === 'AP242' ? 'AP242' : 'AP214')}
            >
              <option value="AP214">AP214, read everywhere</option>
              <option value="AP242">AP242, newer</option>
            </select>
          </label>
          <button
            type="button"
            className="main"
            disabled={off}
            onClick={() => write({ format: 'step', holes, schema })}
          >
            Write STEP
          </button>
        </div>
      </section>
      <section className="file-kind">
        <h3>STL</h3>
        <p>
          The solid in flat facets, for a printed trial piece or simple milling programs. It holds no units:
          these are millimetres.
        </p>
        <div className="file-line">
          <label>
            Facets stray at most{' '}
            <select value={deviation} onChange={(event) => setDeviation(event.target.value)}>
              {DEVIATIONS.map((mm) => (
                <option key={mm} value={mm}>
                  {mm} mm
                </option>
              ))}
            </select>
          </label>
          <button
            type="button"
            className="main"
            disabled={off}
            onClick={() => write({ format: 'stl', holes, deviationMm: Number(deviation) })}
          >
            Write STL
          </button>
        </div>
      </section>
      <div className="file-outcome" role="status">
        {writing && <progress aria-label={`Writing ${writing}`} />}
        {writing && <p>Writing {writing}: the exact solid is made and checked first.</p>}
        {!writing && done && <p className={done.ok ? 'well' : 'amiss'}>{done.words}</p>}
      </div>
    </Dialog>
  );
}
