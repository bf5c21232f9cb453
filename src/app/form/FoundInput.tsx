import { type NumberField, UNIT_OF } from '../../design/fields/kinds.ts';
import { judge } from '../store/judge.ts';
import { useApp } from '../store/useApp.ts';
import { fieldId } from './fieldId.ts';
import type { InputProps } from './inputProps.ts';
import { readable } from './readable.ts';

interface Props extends InputProps<NumberField> {
  /** How it was found, in a word or two. */
  readonly mark: string;
  /** Of the last good design; undefined without one. */
  readonly value: number | undefined;
  /** Sets it by hand. */
  readonly onSet: () => void;
}

/** A number that nobody typed: it can be read, and a press of its mark sets it by hand. */
export function FoundInput({ path, field, mark, value, onSet, invalid, describedBy }: Props) {
  const current = useApp(({ history }) => judge(history.present).ok);
  const id = fieldId(path).input;
  const unit = UNIT_OF[field.kind];
  const beside = unit !== '' && unit !== 'mm';
  return (
    <>
      <span className="named">
        <label htmlFor={id}>{field.label}</label>{' '}
        <button type="button" className="solved-mark" title="Press to set it by hand" onClick={onSet}>
          {mark}
          <span className="unseen">: press to set it by hand</span>
        </button>
      </span>
      <span className={beside ? `quantity in-${field.kind}` : 'quantity'}>
        <input
          id={id}
          className={current ? 'solved' : 'solved earlier'}
          type="text"
          readOnly
          value={value === undefined ? '' : readable(value)}
          aria-invalid={invalid}
          aria-describedby={describedBy}
        />
        {beside && <span className="unit">{unit}</span>}
      </span>
    </>
  );
}
