import { useApp, useAppStore } from '../../store/useApp.ts';
import { EntryInput } from '../EntryInput.tsx';
import { readable } from '../readable.ts';
import { stringCount } from '../stringCount.ts';
import { entryAt, withEntry } from '../strings/stringLists.ts';
import type { AgainProps } from './againProps.ts';
import { withSetbacksTaken } from './takenOver.ts';
import { useMeasured } from './useMeasured.ts';

const PATH = 'action.cents';

/** Cents at the 12th fret, string by string, and the set-back that each asks for. */
export function CentsAgain({ field, isFaulty, faults }: AgainProps) {
  const store = useAppStore();
  const count = useApp(stringCount);
  const notes = useApp(({ history }) => history.present.strings.notes);
  const cents = useApp(({ history }) => history.present.action.cents);
  const fit = useMeasured();
  const setbacks = fit?.report.measured.setbacks ?? [];
  const strings = Array.from({ length: count }, (_, at) => at);
  return (
    <>
      <table className="again-table">
        <caption>
          Tune each string open, then read how sharp its 12th fret is against the octave; flat is negative.
        </caption>
        <thead>
          <tr>
            <th scope="col">string</th>
            <th scope="col">cents</th>
            <th scope="col">set-back</th>
            <th scope="col">corrected</th>
          </tr>
        </thead>
        <tbody>
          {strings.map((at) => {
            const [now, corrected] = [fit?.report.crowns[at]?.setback, setbacks[at]];
            const typed = entryAt(cents, at);
            return (
              <tr key={at}>
                <th scope="row">
                  {at + 1} {entryAt(notes, at)}
                </th>
                <td data-path={PATH}>
                  <EntryInput
                    path={PATH}
                    field={field}
                    at={at}
                    name={`String ${at + 1}, cents at the 12th fret`}
                    typed={typed}
                    invalid={isFaulty(`${PATH}.${at + 1}`)}
                    describedBy={faults}
                    onType={(entry) =>
                      store.edit(PATH, withEntry(store.getState().history.present.action.cents, at, entry))
                    }
                  />
                </td>
                <td>{now !== undefined && readable(now)}</td>
                <td className="worked-out">
                  {corrected !== undefined
                    ? readable(corrected)
                    : fit?.report.measured.misread[at] && 'misread'}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {setbacks.some((setback) => setback !== undefined) && (
        <p className="take-over">
          <button
            type="button"
            onClick={() =>
              store.replaceDesign(withSetbacksTaken(store.getState().history.present, { setbacks }))
            }
          >
            Take these set-backs over
          </button>
          <span>
            They count from where this design’s crown stands, and go into the strings’ measured set-backs.
            Tune and measure once more after the change.
          </span>
        </p>
      )}
    </>
  );
}
