import { useMemo } from 'react';
import { whatItMeans } from '../../making/whatItMeans.ts';
import type { Workshop } from '../../making/workshop.ts';
import type { Accepted } from '../store/judge.ts';
import type { Verdict } from './measuredIn.ts';

interface MeaningOfProps {
  readonly accepted: Accepted;
  readonly workshop: Workshop;
  readonly verdicts: ReadonlyMap<string, Verdict>;
}

/** What the measured values mean for action, intonation and strength. */
export function MeaningOf({ accepted, workshop, verdicts }: MeaningOfProps) {
  const lines = useMemo(() => {
    const measured = [...verdicts].flatMap(([id, one]) => (one.ok ? [[id, one.value] as const] : []));
    if (measured.length === 0) return undefined;
    return whatItMeans(accepted, workshop, Object.fromEntries(measured)).text;
  }, [accepted, workshop, verdicts]);
  return (
    <section className="meaning" aria-live="polite">
      <h2>What the measured values mean</h2>
      {!lines && <p className="soft">Nothing is measured yet: type what you measured beside its number.</p>}
      {lines?.length === 0 && <p className="well">All is as designed, as far as it is measured.</p>}
      {lines?.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </section>
  );
}
