import type { ListField, NumberField } from '../../design/fields/kinds.ts';
import { readQuantity } from '../../design/quantity.ts';
import { kept } from '../store/fieldAt.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { fieldId } from './fieldId.ts';
import type { InputProps } from './inputProps.ts';
import { stepByKey } from './stepByKey.ts';

/** What one press of an arrow key adds: to a string's diameter a thousandth of an inch, as strings are sold. */
const STEPS: Partial<Record<NumberField['kind'], number>> = { length: 0.0254, density: 100, cents: 0.5 };

/** A list with an entry for each string, treble first. */
export function ListInput({ path, field, typed, invalid, describedBy }: InputProps<ListField>) {
  const store = useAppStore();
  const list = Array.isArray(typed) ? (typed as readonly (number | string)[]) : [];
  const strings = useApp(({ history }) => stringCount(history.present.strings.count));
  const one: NumberField | undefined =
    field.kind === 'notes'
      ? undefined
      : { ...field, kind: field.of, step: STEPS[field.of] ?? 1, default: '' };
  const entries = list.map((entry, at) => ({ at, entry, name: `String ${at + 1}` }));
  const put = (at: number, value: number | string) => {
    store.edit(
      path,
      list.map((entry, i) => (i === at ? value : entry)),
    );
  };
  return (
    <fieldset className="lengths" aria-describedby={describedBy}>
      <legend>{field.label}</legend>
      <ol>
        {entries.map(({ at, entry, name }) => (
          <li key={name}>
            <input
              id={at === 0 ? fieldId(path).input : undefined}
              type="text"
              inputMode="decimal"
              value={entry}
              autoComplete="off"
              spellCheck={false}
              aria-label={name}
              aria-invalid={invalid}
              onFocus={(event) => event.target.select()}
              onChange={(event) => put(at, kept(event.target.value))}
              onKeyDown={(event) => {
                const next = one && stepByKey(event, entry, one);
                if (next !== undefined) put(at, next);
              }}
            />
          </li>
        ))}
      </ol>
      {strings !== undefined && strings !== list.length && (
        <button
          type="button"
          onClick={() =>
            store.edit(
              path,
              Array.from({ length: strings }, (_, i) => list[i] ?? list.at(-1) ?? field.default[0] ?? ''),
            )
          }
        >
          Make it {strings} strings
        </button>
      )}
    </fieldset>
  );
}

function stringCount(typed: unknown): number | undefined {
  if (typeof typed !== 'number' && typeof typed !== 'string') return undefined;
  const read = readQuantity(typed, 'count');
  return read.ok && Number.isInteger(read.value) && read.value > 0 && read.value <= 12
    ? read.value
    : undefined;
}
