import { useMemo } from 'react';
import type { Accepted } from '../store/judge.ts';
import { JobHead } from './JobHead.tsx';
import { judgedJob } from './judgedJob.ts';
import { MeaningOf } from './MeaningOf.tsx';
import { StepItem } from './StepItem.tsx';
import { TakeOver } from './TakeOver.tsx';
import { useBench } from './useBench.ts';
import { useJob } from './useJob.ts';
import { WorkshopForm } from './WorkshopForm.tsx';

/** The steps of a design, to be ticked and filled in, for the workshop as typed. */
export function JobByHand({ accepted, stale }: { accepted: Accepted; stale: boolean }) {
  const { fingerprint, bench, change, before } = useBench(accepted);
  const { workshop, steps: designed, problems } = useJob(accepted, bench.workshop);
  const { measured, steps, verdicts } = useMemo(
    () => judgedJob(accepted, designed, bench.measured),
    [accepted, designed, bench.measured],
  );
  // a caution is said in full where it first comes up
  const said = new Set<string>();
  return (
    <>
      <JobHead
        accepted={accepted}
        fingerprint={fingerprint}
        steps={steps}
        bench={bench}
        verdicts={verdicts}
        stale={stale}
        off={problems.length > 0}
        onClear={() => change(() => ({ ticked: [], measured: {} }))}
      />
      <div className="making-list">
        {before && (
          <TakeOver
            fingerprint={before.fingerprint}
            bench={before.bench}
            onTake={() => change(() => ({ ticked: before.bench.ticked, measured: before.bench.measured }))}
          />
        )}
        <WorkshopForm
          typed={bench.workshop}
          slotWidth={accepted.design.saddle.slotWidth}
          problems={problems}
          onType={(key, value) => change(({ workshop }) => ({ workshop: { ...workshop, [key]: value } }))}
        />
        <ol className="steps">
          {steps.map((step, i) => {
            const first = step.cautions.filter((id) => !said.has(id));
            for (const id of first) said.add(id);
            return (
              <StepItem
                key={step.id}
                step={step}
                number={i + 1}
                timber={accepted.design.timber.name}
                inFull={first}
                ticked={bench.ticked.includes(step.id)}
                measured={bench.measured}
                verdicts={verdicts}
                onTick={(ticked) =>
                  change((now) => ({
                    ticked: [...now.ticked.filter((id) => id !== step.id), ...(ticked ? [step.id] : [])],
                  }))
                }
                onMeasure={(id, value) =>
                  change(({ measured }) => ({ measured: withValue(measured, id, value) }))
                }
              />
            );
          })}
        </ol>
        <MeaningOf accepted={accepted} workshop={workshop} measured={measured} />
      </div>
    </>
  );
}

function withValue(measured: Readonly<Record<string, string>>, id: string, value: string) {
  const others = Object.fromEntries(Object.entries(measured).filter(([key]) => key !== id));
  return value.trim() === '' ? others : { ...others, [id]: value };
}
