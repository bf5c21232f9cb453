import type { ChoiceField } from '../../design/fields/kinds.ts';
import { useAppStore } from '../store/useApp.ts';
import { fieldId } from './fieldId.ts';
import type { InputProps } from './inputProps.ts';
import { plainText } from './plainText.ts';

/** Choices this short, in letters, stand side by side; others drop down. */
const SIDE_BY_SIDE = 20;

/** One of a few named choices. */
export function ChoiceInput(props: InputProps<ChoiceField>) {
  const words = Object.values(props.field.choices);
  const short = words.length <= 3 && words.join('').length <= SIDE_BY_SIDE;
  return short ? <SideBySide {...props} /> : <DropDown {...props} />;
}

function SideBySide({ path, field, typed, describedBy }: InputProps<ChoiceField>) {
  const store = useAppStore();
  const id = fieldId(path).input;
  return (
    <fieldset className="choice" aria-describedby={describedBy}>
      <legend>{field.label}</legend>
      <div className="segments">
        {Object.entries(field.choices).map(([value, words]) => (
          <label key={value}>
            <input
              type="radio"
              name={id}
              value={value}
              checked={typed === value}
              onChange={() => store.edit(path, value)}
            />
            {words}
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function DropDown({ path, field, typed, invalid, describedBy }: InputProps<ChoiceField>) {
  const store = useAppStore();
  const id = fieldId(path).input;
  const unknown = !Object.hasOwn(field.choices, plainText(typed));
  return (
    <>
      <label htmlFor={id}>{field.label}</label>
      <select
        id={id}
        value={plainText(typed)}
        aria-invalid={invalid}
        aria-describedby={describedBy}
        onChange={(event) => store.edit(path, event.target.value)}
      >
        {unknown && <option value={plainText(typed)}>{plainText(typed)}</option>}
        {Object.entries(field.choices).map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </>
  );
}
