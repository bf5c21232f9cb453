import { type NumberField, UNIT_OF } from '../../design/fields/kinds.ts';
import { kept } from '../store/fieldAt.ts';
import { useAppStore } from '../store/useApp.ts';
import { fieldId } from './fieldId.ts';
import type { InputProps } from './inputProps.ts';
import { stepByKey } from './stepByKey.ts';
import { useScrub } from './useScrub.ts';

/** A number with a unit, shown as typed. Arrow keys step it; its name can be dragged sideways. */
export function QuantityInput({ path, field, typed, invalid, describedBy }: InputProps<NumberField>) {
  const store = useAppStore();
  const id = fieldId(path).input;
  const shown = Array.isArray(typed) ? '' : (typed as number | string);
  const scrub = useScrub(path, shown, field);
  // millimetres are said once, at the head of the form; what was typed with its unit says it itself
  const unit = field.kind === 'length' || /[^\d\s.,/+-]/.test(String(shown)) ? '' : UNIT_OF[field.kind];
  return (
    <>
      <label htmlFor={id} className="scrub" {...scrub}>
        {field.label}
      </label>
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
            const next = stepByKey(event, shown, field);
            if (next !== undefined) store.edit(path, next);
          }}
        />
        {unit !== '' && <span className="unit">{unit}</span>}
      </span>
    </>
  );
}
