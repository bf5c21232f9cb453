import { useState } from 'react';
import type { Field } from '../../design/fields/kinds.ts';
import type { Problem } from '../../design/problem.ts';
import { usualWorkshop, WORKSHOP } from '../../making/workshop.ts';
import { inchFraction } from '../../sheets/inchFraction.ts';
import { WorkshopField } from './WorkshopField.tsx';

interface WorkshopFormProps {
  readonly typed: Readonly<Record<string, string>>;
  /** mm */
  readonly slotWidth: number;
  readonly problems: readonly Problem[];
  readonly onType: (key: string, value: string) => void;
}

const FIELDS: readonly (readonly [string, Field])[] = Object.entries(WORKSHOP);

/** The tools that the job is worked out for. */
export function WorkshopForm({ typed, slotWidth, problems, onType }: WorkshopFormProps) {
  const [open, setOpen] = useState(false);
  const shown = (key: string, field: Field) =>
    typed[key] ?? (key === 'cutter' ? usualCutter(slotWidth) : String(field.default));
  const essence = FIELDS.flatMap(([key, field]) =>
    field.kind === 'choice' && key !== 'shimSide' && key !== 'reamBy' ? field.choices[shown(key, field)] : [],
  ).join(' · ');
  return (
    <details
      className="workshop"
      open={open || problems.length > 0}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <h2>Workshop</h2>
        <span className="essence">{essence}</span>
      </summary>
      <div className="workshop-fields">
        {FIELDS.map(([key, field]) => (
          <WorkshopField
            key={key}
            name={key}
            field={field}
            typed={shown(key, field)}
            problems={problems.filter(({ path }) => path === `workshop.${key}`)}
            onType={(value) => onType(key, value)}
          />
        ))}
      </div>
      {problems.length > 0 && (
        <p className="amiss" role="status">
          The steps below are worked out for the last workshop that could be.
        </p>
      )}
    </details>
  );
}

/** Cutters are sold by fractions of an inch, or by millimetres. */
function usualCutter(slotWidth: number): string {
  const { cutter } = usualWorkshop(slotWidth);
  const fraction = inchFraction(cutter);
  return fraction === undefined ? String(cutter) : `${fraction} in`;
}
