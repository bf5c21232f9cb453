import type { PartFigure } from '../../report/bendingFigures.ts';
import { sourced } from '../fit/sourced.ts';
import { partRows } from './partRows.ts';
import './plain-table.css';

/** Mass and stiffness of wings and block, side by side. */
export function PartTable({ parts }: { parts: readonly PartFigure[] }) {
  const { formula, source } = sourced(['mass', 'W5', 'W6']);
  return (
    <>
      <table className="plain-table parts">
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Part</span>
            </th>
            <th scope="col">
              mass <span className="unit">g</span>
            </th>
            <th scope="col">
              least E·I <span className="unit">N·m²</span>
            </th>
            <th scope="col">
              of the give <span className="unit">%</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {partRows(parts).map(({ name, mass, least, give }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{mass}</td>
              <td>{least}</td>
              <td>{give}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <details className="table-how">
        <summary>How that is worked out</summary>
        <p>
          {formula} Pin holes reamed; the give is that under a load in the middle, on supports under both
          tips.
        </p>
        <p className="source">{source}</p>
      </details>
    </>
  );
}
