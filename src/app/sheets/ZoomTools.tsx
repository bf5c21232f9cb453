import { useApp, useAppStore } from '../store/useApp.ts';
import { steppedZoom } from './zoomOf.ts';

/** How large the sheet is shown. @param zoom times its own size, as it is now */
export function ZoomTools({ zoom }: { zoom: number }) {
  const store = useAppStore();
  const wanted = useApp(({ session }) => session.zoom);
  const choices = [
    ['page', 'whole sheet'],
    ['width', 'as wide as the board'],
    [1, 'true size'],
  ] as const;
  return (
    <div className="zoom-tools">
      <fieldset className="choice">
        <legend className="unseen">Size on the screen</legend>
        <div className="segments">
          {choices.map(([value, words]) => (
            <label key={value}>
              <input
                type="radio"
                name="sheet-zoom"
                checked={wanted === value}
                onChange={() => store.setSession({ zoom: value })}
              />
              {words}
            </label>
          ))}
        </div>
      </fieldset>
      <div className="zoom-steps">
        <button type="button" onClick={() => store.setSession({ zoom: steppedZoom(zoom, -1) })}>
          smaller
        </button>
        <output>{Math.round(100 * zoom)} %</output>
        <button type="button" onClick={() => store.setSession({ zoom: steppedZoom(zoom, 1) })}>
          larger
        </button>
      </div>
    </div>
  );
}
