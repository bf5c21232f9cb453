import { TUNINGS } from '../../../trade/tunings.ts';
import { useApp, useAppStore } from '../../store/useApp.ts';
import { stringCount } from '../stringCount.ts';
import { isTunedTo, withTuning } from './tunedTo.ts';

/** Tunings for as many strings as there are: choosing one fills in the notes. Nothing where there is none. */
export function TuningPicker() {
  const store = useAppStore();
  const count = useApp(stringCount);
  const present = useApp(({ history }) => history.present);
  const fitting = TUNINGS.filter(({ notes }) => notes.length === count);
  const chosen = fitting.find((tuning) => isTunedTo(present, tuning));
  if (fitting.length === 0) return null;
  return (
    <div className="field">
      <label htmlFor="tunings">Tuning</label>
      <select
        id="tunings"
        value={chosen?.name ?? ''}
        onChange={(event) => {
          const tuning = fitting.find(({ name }) => name === event.target.value);
          if (tuning) store.replaceDesign(withTuning(store.getState().history.present, tuning));
        }}
      >
        {!chosen && <option value="">your own</option>}
        {fitting.map(({ name }) => (
          <option key={name}>{name}</option>
        ))}
      </select>
    </div>
  );
}
