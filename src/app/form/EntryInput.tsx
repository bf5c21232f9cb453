import type { ListField } from '../../design/fields/kinds.ts';
import { kept } from '../store/fieldAt.ts';
import { fieldId } from './fieldId.ts';
import { keySteps } from './keySteps.ts';
import { stepEntry } from './stepEntry.ts';

interface EntryInputProps {
  /** Of the list: `strings.notes`. */
  readonly path: string;
  readonly field: ListField;
  /** Which entry, from 0. */
  readonly at: number;
  /** `String 3, note`. */
  readonly name: string;
  readonly typed: number | string;
  readonly invalid: boolean;
  /** Id of what is said to be wrong. */
  readonly describedBy: string;
  /** What is computed where nothing is typed. */
  readonly placeholder?: string | undefined;
  readonly onType: (typed: number | string) => void;
}

/** One entry of a list, in a cell of a table. Arrow keys step it, Enter goes to the next string's. */
export function EntryInput(props: EntryInputProps) {
  const { path, field, at, typed, invalid, onType } = props;
  const id = (entry: number) => `${fieldId(path).input}${entry === 0 ? '' : `-${entry + 1}`}`;
  return (
    <input
      id={id(at)}
      className="entry"
      type="text"
      value={typed}
      placeholder={props.placeholder}
      autoComplete="off"
      spellCheck={false}
      aria-label={props.name}
      aria-invalid={invalid}
      aria-describedby={invalid ? props.describedBy : undefined}
      onFocus={(event) => event.target.select()}
      onChange={(event) => onType(kept(event.target.value))}
      onKeyDown={(event) => {
        if (event.key === 'Enter') document.getElementById(id(at + (event.shiftKey ? -1 : 1)))?.focus();
        const steps = keySteps(event);
        if (steps !== undefined) onType(stepEntry(typed, field, steps));
      }}
    />
  );
}
