import { useState } from 'react';
import { safeName } from '../../files/safeName.ts';
import type { Step } from '../../making/step.ts';
import type { Workshop } from '../../making/workshop.ts';
import { useSaving } from '../files/useSaving.ts';
import { loadPress } from '../sheets/loadPress.ts';
import type { Accepted } from '../store/judge.ts';
import type { Bench } from '../store/state.ts';
import { useApp } from '../store/useApp.ts';
import type { Verdict } from './measuredIn.ts';

interface JobHeadProps {
  readonly accepted: Accepted;
  readonly workshop: Workshop;
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
  const { accepted, workshop, fingerprint, steps, bench, verdicts, stale, off, onClear } = props;
  const choice = useApp(({ session }) => session.papers);
  const { saving, outcome, save } = useSaving();
  const [sure, setSure] = useState(false);
  const done = steps.filter(({ id }) => bench.ticked.includes(id)).length;
  const outside = [...verdicts.values()].filter((one) => one.ok && one.judgement.within === false).length;
  const nothing = bench.ticked.length === 0 && Object.keys(bench.measured).length === 0;
  const savePdf = () =>
    save('the job sheet', async () => {
      const press = await loadPress();
      return {
        name: `${safeName(accepted.design.guitar.name)}_job-by-hand.pdf`,
        bytes: await press.jobPdf(accepted, workshop, choice),
      };
    });
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
        Job sheet as PDF
      </button>
    </div>
  );
}
