import { STRING_SETS, type StringSet } from '../../../trade/stringSets.ts';
import { useApp, useAppStore } from '../../store/useApp.ts';
import { isStrungWith, withStringSet } from './withStringSet.ts';

/** Generic sets of strings: choosing one fills in everything about the strings, their tuning included. */
export function StringSetPicker() {
  const store = useAppStore();
  const present = useApp(({ history }) => history.present);
  const chosen = STRING_SETS.find((set) => isStrungWith(present, set));
  return (
    <div className="field">
      <label htmlFor="string-sets">From the list</label>
      <select
        id="string-sets"
        value={chosen?.name ?? ''}
        aria-describedby="string-sets-note"
        onChange={(event) => {
          const set = STRING_SETS.find(({ name }) => name === event.target.value);
          if (set) store.replaceDesign(withStringSet(store.getState().history.present, set));
        }}
      >
        {!chosen && <option value="">your own strings</option>}
        {STRING_SETS.map((set) => (
          <option key={set.name} value={set.name}>
            {set.name}, {gauges(set)}
          </option>
        ))}
      </select>
      <p id="string-sets-note" className="field-note">
        {chosen?.coresAssumed
          ? 'The cores are assumed, as makers seldom say them; the slot’s angle moves by about 1.2° with them, for a light set. Measure them if you can.'
          : 'Choosing a set fills in the whole table, tuning included.'}
      </p>
    </div>
  );
}

/** Thinnest to thickest in thousandths of an inch, as sets are called in the trade. */
function gauges({ strings }: StringSet): string {
  const thousandths = strings.map(({ diameterMm }) => Math.round((diameterMm / 25.4) * 1000));
  return `${Math.min(...thousandths)}–${Math.max(...thousandths)}`;
}
