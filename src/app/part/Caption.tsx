import { useShallow } from 'zustand/react/shallow';
import type { Holes } from '../../../models/curves/curves.ts';
import { shownPart } from '../store/shownPart.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { stampWords } from './stampWords.ts';

const HOLES: readonly (readonly [Holes, string])[] = [
  ['drilled', 'as drilled'],
  ['reamed', 'as reamed'],
];

/** Under the picture: what it shows, and how its pin holes stand. */
export function Caption() {
  const store = useAppStore();
  const shown = useApp(useShallow(shownPart));
  const holes = useApp(({ session }) => session.holes);
  return (
    <div className="caption">
      <span className={`stamp ${shown.stamp}`} role="status">
        {stampWords(shown)}
      </span>
      <fieldset className="choice">
        <legend>Pin holes</legend>
        <div className="segments">
          {HOLES.map(([value, words]) => (
            <label key={value}>
              <input
                type="radio"
                name="holes-shown"
                checked={holes === value}
                onChange={() => store.setSession({ holes: value })}
              />
              {words}
            </label>
          ))}
        </div>
      </fieldset>
    </div>
  );
}
