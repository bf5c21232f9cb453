import { type CautionId, cautionFor } from '../../trade/cautions.ts';

interface StepCautionsProps {
  readonly cautions: readonly CautionId[];
  readonly inFull: readonly CautionId[];
  readonly timber: string;
}

/** What can hurt at a step: in full where it first comes up, then by name, to be opened. */
export function StepCautions({ cautions, inFull, timber }: StepCautionsProps) {
  if (cautions.length === 0) return null;
  // what comes before everything said here names no danger of its own
  const named = cautions.filter((id) => id !== 'first');
  const titles = (named.length > 0 ? named : cautions).map((id) =>
    cautionFor(id, timber).title.toLowerCase(),
  );
  return (
    <details className="take-care" open={inFull.length > 0}>
      <summary>Take care: {titles.join(', ')}</summary>
      <dl>
        {cautions.map((id) => {
          const { title, text } = cautionFor(id, timber);
          return (
            <div key={id}>
              <dt>{title}</dt>
              <dd>{text}</dd>
            </div>
          );
        })}
      </dl>
    </details>
  );
}
