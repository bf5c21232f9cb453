import { useAppStore } from '../store/useApp.ts';
import type { Figure } from './figure.ts';

/** Figures under one another; each opens to how it comes about. */
export function FigureList({ figures }: { figures: readonly Figure[] }) {
  const store = useAppStore();
  return (
    <div className="figure-list">
      {figures.map(({ label, value, unit, note, formula, source, path }) => (
        <details key={label}>
          <summary>
            <span className="figure-name">
              {label}
              {note !== undefined && <small>{note}</small>}
            </span>
            <span className="figure-value">
              {value}
              {unit !== '' && <span className="unit"> {unit}</span>}
            </span>
          </summary>
          <p>{formula}</p>
          {source !== undefined && <p className="source">{source}</p>}
          {path !== undefined && (
            <button type="button" className="link" onClick={() => store.callTo(path)}>
              Show its number
            </button>
          )}
        </details>
      ))}
    </div>
  );
}
