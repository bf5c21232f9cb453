import type { TextField } from '../../design/fields/kinds.ts';
import { useAppStore } from '../store/useApp.ts';
import { fieldId } from './fieldId.ts';
import type { InputProps } from './inputProps.ts';
import { plainText } from './plainText.ts';

/** A name. */
export function TextInput({ path, field, typed, invalid, describedBy }: InputProps<TextField>) {
  const store = useAppStore();
  const id = fieldId(path).input;
  return (
    <>
      <label htmlFor={id}>{field.label}</label>
      <input
        id={id}
        className="words"
        type="text"
        value={typeof typed === 'string' ? typed : plainText(typed)}
        maxLength={field.maxLength}
        autoComplete="off"
        aria-invalid={invalid}
        aria-describedby={describedBy}
        onChange={(event) => store.edit(path, event.target.value)}
      />
    </>
  );
}
