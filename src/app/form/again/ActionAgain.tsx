import type { CorrectedSaddle } from '../../../trade/correctedSaddle.ts';
import { middleOf } from '../../../trade/middleOf.ts';
import { type Place, placeOf } from '../../store/fieldAt.ts';
import { howFound } from '../../store/solvedOrSet.ts';
import { useApp, useAppStore } from '../../store/useApp.ts';
import { EntryInput } from '../EntryInput.tsx';
import { readable } from '../readable.ts';
import { entryAt, withEntry } from '../strings/stringLists.ts';
import type { AgainProps } from './againProps.ts';
import { withShowingTaken } from './takenOver.ts';
import { useMeasured } from './useMeasured.ts';

const PATH = 'action.measured';
const SHOWING = placeOf('saddle.showing') as Place;

/** The action as the guitar has it at the two outer strings, and what the saddle must become for the one that is wanted. */
export function ActionAgain({ field, isFaulty, faults }: AgainProps) {
  const store = useAppStore();
  const action = useApp(({ history }) => history.present.action);
  const saddles = useMeasured()?.report.measured.saddles ?? [];
  const { measured } = action;
  // a list of one entry for each string ends with the last string
  const last = Array.isArray(measured) && measured.length > 2 ? measured.length - 1 : 1;
  const changes = [saddles[0]?.change, saddles[saddles.length - 1]?.change];
  return (
    <>
      <table className="again-table">
        <caption>Measure the action over the 12th fret once more.</caption>
        <thead>
          <tr>
            <th scope="col">string</th>
            <th scope="col">action</th>
            <th scope="col">wanted</th>
            <th scope="col">saddle</th>
          </tr>
        </thead>
        <tbody>
          {(
            [
              ['first', 0],
              ['last', last],
            ] as const
          ).map(([string, at]) => (
            <tr key={string}>
              <th scope="row">{string}</th>
              <td data-path={PATH}>
                <EntryInput
                  path={PATH}
                  field={field}
                  at={at}
                  name={`Action as measured, ${string} string`}
                  typed={entryAt(measured, at)}
                  invalid={isFaulty(`${PATH}.${at + 1}`)}
                  describedBy={faults}
                  onType={(entry) =>
                    store.edit(PATH, withEntry(store.getState().history.present.action.measured, at, entry))
                  }
                />
              </td>
              <td>{String(at === 0 ? action.treble : action.bass)}</td>
              <td className="worked-out">{sayChange(changes[at === 0 ? 0 : 1])}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {saddles.length > 0 && <TakeOver saddles={saddles} />}
    </>
  );
}

/** Changes of the saddle smaller than this are none at the bench, mm. */
const NONE = 0.02;

function sayChange(change: number | undefined): string {
  if (change === undefined) return '';
  if (Math.abs(change) < NONE) return 'leave it';
  return `${readable(Math.abs(change))} ${change < 0 ? 'off' : 'higher'}`;
}

function TakeOver({ saddles }: { saddles: readonly CorrectedSaddle[] }) {
  const store = useAppStore();
  const how = useApp(({ history }) => howFound(history.present, SHOWING));
  const fit = useMeasured()?.accepted.fit;
  if (!fit) return null;
  const places = fit.strings.map(({ x }) => x);
  const middle = middleOf(
    places,
    saddles.map(({ rise }) => rise),
  );
  const under = saddles.some(({ showing }) => showing <= 0);
  const { used } = fit.solved['saddle.showing'];
  return (
    <p className="take-over">
      {how === 'set' && !under && Math.abs(middle) >= NONE && (
        <button
          type="button"
          onClick={() =>
            store.replaceDesign(withShowingTaken(store.getState().history.present, used, middle))
          }
        >
          Let the saddle show {readable(used + middle)} instead of {readable(used)}
        </button>
      )}
      <span>
        {under
          ? 'So low a saddle would put a string on the bridge: the bridge’s top or the neck must give way.'
          : how === 'set'
            ? 'That is for the middle; between the outer strings the change goes straight across.'
            : sayFile(saddles)}
      </span>
    </p>
  );
}

/** What to do at the bench where the design's showing is no number to change: it follows the action already. */
function sayFile(saddles: readonly CorrectedSaddle[]): string {
  const changes = saddles.map(({ change }) => change);
  const [least, most] = [Math.min(...changes), Math.max(...changes)];
  if (most < NONE && least > -NONE) return 'The saddle is as it should be.';
  const work =
    most < NONE
      ? 'File that much off the saddle’s top'
      : least > -NONE
        ? 'Make a saddle that is that much higher'
        : 'Make a saddle that is higher on one side and lower on the other';
  return `${work}, straight across between the outer strings. The design’s own showing already follows the action that is wanted, and stays.`;
}
