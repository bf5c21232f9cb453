import { useState } from 'react';
import type { Pair } from '../../report/compare/comparison.ts';
import { fixed } from '../../report/said.ts';
import { percent } from '../figures/figure.ts';
import { sourced } from '../fit/sourced.ts';
import '../figures/plain-table.css';

interface Props {
  /** What the table tells, for those who listen to the page. */
  readonly name: string;
  readonly pairs: readonly Pair[];
}

/** Figures of two designs side by side. A figure's name opens to its formula and source. */
export function PairTable({ name, pairs }: Props) {
  const [open, setOpen] = useState<string>();
  return (
    <table className="plain-table">
      <caption className="unseen">{name}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">Figure</span>
          </th>
          <th scope="col">reference</th>
          <th scope="col">here</th>
          <th scope="col">share</th>
        </tr>
      </thead>
      {pairs.map(({ id, label, unit, decimals, a, b, share, formula, estimate }) => {
        const opened = id === open && sourced([formula]);
        return (
          <tbody key={id}>
            <tr data-figure={id}>
              <th scope="row">
                <button
                  type="button"
                  aria-expanded={id === open}
                  onClick={() => setOpen(id === open ? undefined : id)}
                >
                  {label}
                  {unit !== '' && <span className="unit">{`\u00a0${unit}`}</span>}
                  {estimate && <span className="unit"> · estimate</span>}
                </button>
              </th>
              <td>{fixed(a, decimals)}</td>
              <td>{fixed(b, decimals)}</td>
              <td>{share === undefined ? '–' : percent(share)}</td>
            </tr>
            {opened && (
              <tr className="opened">
                <td colSpan={4}>
                  <p>{opened.formula}</p>
                  <p className="source">{opened.source}</p>
                </td>
              </tr>
            )}
          </tbody>
        );
      })}
    </table>
  );
}
