import type { ReactNode } from 'react';
import { type NumberField, UNIT_OF } from '../../design/fields/kinds.ts';
import { kept } from '../store/fieldAt.ts';
import { useAppStore } from '../store/useApp.ts';
import { fieldId } from './fieldId.ts';
import type { InputProps } from './inputProps.ts';
import { keySteps } from './keySteps.ts';
import { stepTyped } from './typedForm.ts';
import { useScrub } from './useScrub.ts';

interface QuantityInputProps extends InputProps<NumberField> {
  /** What stands beside its name. */
  readonly children?: ReactNode;
}

/** A number with a unit, shown as typed. Arrow keys step it; its name can be dragged sideways. */
export function QuantityInput({ path, field, typed, invalid, describedBy, children }: QuantityInputProps) {
  const store = useAppStore();
  const id = fieldId(path).input;
  const shown = Array.isArray(typed) ? '' : (typed as number | string);
  const scrub = useScrub(path, shown, field);
  // millimetres are said once, at the head of the form; what was typed with its unit says it itself
  const unit = field.kind === 'length' || /[^\d\s.,/+-]/.test(String(shown)) ? '' : UNIT_OF[field.kind];
  return (
    <>
      <span className="named">
        <label htmlFor={id} className="scrub" {...scrub}>
          {field.label}
        </label>{' '}
        {children}
      </span>
      <span className={unit === '' ? 'quantity' : `quantity in-${field.kind}`}>
        <input
          id={id}
          type="text"
          inputMode="decimal"
          value={shown}
          autoComplete="off"
          spellCheck={false}
          aria-invalid={invalid}
          aria-describedby={describedBy}
          onFocus={(event) => event.target.select()}
          onChange={(event) => store.edit(path, kept(event.target.value))}
          onKeyDown={(event) => {
            const steps = keySteps(event);
            if (steps !== undefined) store.edit(path, stepTyped(shown, field, steps));
          }}
        />
        {unit !== '' && <span className="unit">{unit}</span>}
      </span>
    </>
  );
}
