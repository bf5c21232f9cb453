import { useState } from 'react';
import type { Step } from '../../making/step.ts';
import { jobByHandPdf } from '../files/jobByHandPdf.ts';
import { useSaving } from '../files/useSaving.ts';
import type { Accepted } from '../store/judge.ts';
import type { Bench } from '../store/state.ts';
import { useAppStore } from '../store/useApp.ts';
import type { Verdict } from './measuredIn.ts';

interface JobHeadProps {
  readonly accepted: Accepted;
  readonly fingerprint: string;
  readonly steps: readonly Step[];
  readonly bench: Bench;
  readonly verdicts: ReadonlyMap<string, Verdict>;
  readonly stale: boolean;
  /** The workshop can't be as typed, so no pages can be written for it. */
  readonly off: boolean;
  readonly onClear: () => void;
}

/** How far the job is, and what is done with it as a whole. */
export function JobHead(props: JobHeadProps) {
  const { accepted, fingerprint, steps, bench, verdicts, stale, off, onClear } = props;
  const store = useAppStore();
  const { saving, outcome, save } = useSaving();
  const [sure, setSure] = useState(false);
  const done = steps.filter(({ id }) => bench.ticked.includes(id)).length;
  const outside = [...verdicts.values()].filter((one) => one.ok && one.judgement.within === false).length;
  const nothing = bench.ticked.length === 0 && Object.keys(bench.measured).length === 0;
  const savePdf = () => save('the job by hand', () => jobByHandPdf(accepted, store.getState().session));
  return (
    <div className="job-head">
      <p className="job-state">
        {stale && (
          <span className="stamp stale">of the last good design: the present one can’t be made · </span>
        )}
        <span>
          {done} of {steps.length} steps done
        </span>
        {outside > 0 && <span className="amiss"> · {outside} outside tolerance</span>}
        <span className="soft" title={`Ticks, measured values and workshop: for design ${fingerprint}`}>
          {' '}
          · kept in this browser
        </span>
      </p>
      <span
        role="status"
        className={outcome && !saving ? `sheet-outcome ${outcome.ok ? 'well' : 'amiss'}` : 'sheet-outcome'}
      >
        {saving === undefined ? outcome?.words : `Writing ${saving} …`}
      </span>
      <button
        type="button"
        disabled={nothing}
        onBlur={() => setSure(false)}
        onClick={() => {
          if (sure) onClear();
          setSure(!sure);
        }}
      >
        {sure ? 'Clear all ticks and values' : 'Begin anew'}
      </button>
      <button
        type="button"
        className="main"
        disabled={stale || off || saving !== undefined}
        onClick={() => void savePdf()}
      >
        Job by hand as PDF
      </button>
    </div>
  );
}
