import { sameWood, WOODS, type Wood } from '../../trade/woods.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { plainText } from './plainText.ts';

/** The short list of woods: choosing one fills in its name, density and stiffness. */
export function TimberPicker() {
  const store = useAppStore();
  const timber = useApp((state) => state.history.present.timber);
  const chosen = WOODS.find((wood) => sameWood(wood, timber));
  const choose = (wood: Wood | undefined) => {
    if (!wood) return;
    const { present } = store.getState().history;
    store.replaceDesign({
      ...present,
      timber: {
        ...present.timber,
        name: wood.name,
        density: wood.densityKgM3,
        stiffness: wood.stiffnessGPa ?? present.timber.stiffness,
      },
    });
  };
  return (
    <div className="field">
      <label htmlFor="timber-list">From the list</label>
      <select
        id="timber-list"
        value={chosen?.name ?? ''}
        aria-describedby="timber-list-note"
        onChange={(event) => choose(WOODS.find((wood) => wood.name === event.target.value))}
      >
        {!chosen && <option value="">{plainText(timber.name)} (your own)</option>}
        {WOODS.map((wood) => (
          <option key={wood.name} value={wood.name}>
            {wood.name}
          </option>
        ))}
      </select>
      <p id="timber-list-note" className="field-note">
        {chosen ? `${chosen.spread} ${chosen.source}.` : 'Density and stiffness are your own.'}
        {chosen &&
          chosen.stiffnessGPa === undefined &&
          ' No source was found for its stiffness: the one below is left from before; set your own.'}
      </p>
    </div>
  );
}
