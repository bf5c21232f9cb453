import { useMemo } from 'react';
import { sensitivity } from '../../report/sensitivity.ts';
import { sourced } from '../fit/sourced.ts';
import type { Accepted } from '../store/judge.ts';
import { useAppStore } from '../store/useApp.ts';
import { tenthRows } from './tenthRows.ts';
import { useSettled } from './useSettled.ts';
import './plain-table.css';

/** How long a design rests before it is drawn with each dimension changed, ms: that takes longer than a frame. */
const REST = 400;

/** What a tenth of a millimetre of each dimension does to mass and stiffness. A row leads to its field. */
export function TenthTable({ accepted }: { accepted: Accepted }) {
  const store = useAppStore();
  const settled = useSettled(accepted, REST);
  const rows = useMemo(() => settled && tenthRows(sensitivity(settled.design, settled.curves)), [settled]);
  const { formula, source } = sourced(['sensitivity']);
  return (
    <>
      <h3>What a tenth of a millimetre more does</h3>
      {!rows && <p className="aside">Worked out when the design rests …</p>}
      <table className={settled === accepted ? 'plain-table tenths' : 'plain-table tenths settling'}>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Dimension</span>
            </th>
            <th scope="col">
              now <span className="unit">mm</span>
            </th>
            <th scope="col">
              mass <span className="unit">g</span>
            </th>
            <th scope="col">
              stiffness <span className="unit">%</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows?.map(({ path, label, now, grams, percent }) => (
            <tr key={path}>
              <th scope="row">
                <button type="button" onClick={() => store.callTo(path)}>
                  {label}
                </button>
              </th>
              <td>{now}</td>
              <td>{grams}</td>
              <td>{percent}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <details className="table-how">
        <summary>How that is worked out</summary>
        <p>{formula} Mass of the wood as reamed; stiffness in the middle. Solved numbers stay as they are.</p>
        <p className="source">{source}</p>
      </details>
    </>
  );
}
