import { useState } from 'react';
import type { TunedString } from '../../trade/fit/tunedStrings.ts';
import { useAppStore } from '../store/useApp.ts';
import type { Column } from './column.ts';

interface StringTableProps {
  readonly name: string;
  readonly columns: readonly Column[];
  readonly strings: readonly TunedString[];
  readonly shown: number;
  onShow(i: number): void;
}

/** Figures by string. A column's head opens to its formula, the shown string's inputs and the source. */
export function StringTable({ name, columns, strings, shown, onShow }: StringTableProps) {
  const store = useAppStore();
  const [open, setOpen] = useState<string>();
  const column = columns.find(({ key }) => key === open);
  const said = column?.sourced(shown);
  return (
    <div className="fit-table">
      <table>
        <caption className="unseen">{name}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">String</span>
            </th>
            {columns.map(({ key, head, unit, name: whole }) => (
              <th key={key} scope="col">
                <button
                  type="button"
                  aria-expanded={key === open}
                  aria-label={`${whole}${unit && `, ${unit}`}: how it comes about`}
                  title={whole}
                  onClick={() => setOpen(key === open ? undefined : key)}
                >
                  {head}
                  <span className="unit">{unit}</span>
                </button>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {strings.map(({ note, x }, i) => (
            <tr key={x} className={i === shown ? 'shown' : undefined}>
              <th scope="row">
                <button type="button" aria-label={`Show string ${i + 1}, ${note}`} onClick={() => onShow(i)}>
                  {i + 1} {note}
                </button>
              </th>
              {columns.map(({ key, values, amiss }) => (
                <td key={key} data-column={key} className={amiss?.[i] ? 'amiss' : undefined}>
                  {values[i]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {column && said && (
        <div className="fit-opened" aria-live="polite">
          <p>
            <strong>{column.name}</strong>, of string {shown + 1} ({strings[shown]?.note})
          </p>
          <p>{said.formula}</p>
          <p className="source">{said.source}</p>
          <button type="button" className="link" onClick={() => store.callTo(column.path)}>
            Show its number
          </button>
        </div>
      )}
    </div>
  );
}
