import type { Difference } from '../../report/compare/differences.ts';
import { useAppStore } from '../store/useApp.ts';
import { differenceRows } from './differenceRows.ts';
import '../figures/plain-table.css';

/** Every dimension and choice in which the designs differ. A row leads to its field. */
export function DifferenceTable({ differences }: { differences: readonly Difference[] }) {
  const store = useAppStore();
  if (differences.length === 0) return <p className="aside">Every dimension and choice is the same.</p>;
  return (
    <table className="plain-table differences">
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">Dimension</span>
          </th>
          <th scope="col">reference</th>
          <th scope="col">here</th>
          <th scope="col">by</th>
        </tr>
      </thead>
      <tbody>
        {differenceRows(differences).map(({ path, label, unit, reference, here, by }) => (
          <tr key={path} data-path={path}>
            <th scope="row" colSpan={by === undefined ? 4 : 1}>
              <button type="button" onClick={() => store.callTo(path)}>
                {label}
                {unit !== '' && <span className="unit">{`\u00a0${unit}`}</span>}
              </button>
              {by === undefined && (
                <span className="in-words">
                  <span>{reference};</span>{' '}
                  <span>
                    <span className="unit">here:</span> {here}
                  </span>
                </span>
              )}
            </th>
            {by !== undefined && (
              <>
                <td>{reference}</td>
                <td>{here}</td>
                <td>{by}</td>
              </>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
