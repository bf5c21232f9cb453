import { type Field, isNumberField } from '../../design/fields/kinds.ts';
import { mend, type Problem } from '../../design/problem.ts';
import { keySteps } from '../form/keySteps.ts';
import { stepTyped } from '../form/typedForm.ts';

interface WorkshopFieldProps {
  readonly name: string;
  readonly field: Field;
  readonly typed: string;
  readonly problems: readonly Problem[];
  readonly onType: (value: string) => void;
}

/** One field of the workshop: a choice of tools, or a length that arrow keys step. */
export function WorkshopField({ name, field, typed, problems, onType }: WorkshopFieldProps) {
  const id = `workshop-${name}`;
  const common = {
    id,
    value: typed,
    'aria-invalid': problems.length > 0,
    'aria-describedby': problems.length > 0 ? `${id}-problem ${id}-help` : `${id}-help`,
  };
  return (
    <div className="field" title={field.help}>
      <label htmlFor={id}>{field.label}</label>
      {field.kind === 'choice' ? (
        <select {...common} onChange={(event) => onType(event.target.value)}>
          {!Object.hasOwn(field.choices, typed) && <option value={typed}>{typed}</option>}
          {Object.entries(field.choices).map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      ) : (
        <span className="quantity">
          <input
            {...common}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            spellCheck={false}
            onFocus={(event) => event.target.select()}
            onChange={(event) => onType(event.target.value)}
            onKeyDown={(event) => {
              const steps = keySteps(event);
              if (steps !== undefined && isNumberField(field)) onType(String(stepTyped(typed, field, steps)));
            }}
          />
        </span>
      )}
      <p id={`${id}-help`} className="unseen">
        {field.help}
      </p>
      <div id={`${id}-problem`} className="problems" aria-live="polite">
        {problems.map((problem) => (
          <p key={`${problem.code} ${problem.allowed}`}>{mend(problem)}</p>
        ))}
      </div>
    </div>
  );
}
