import { useAppStore } from '../store/useApp.ts';
import { type Figure, percent } from './figure.ts';

interface Props {
  readonly figures: readonly Figure[];
  /** Name of the design that shares are of. */
  readonly of?: string;
}

/** Figures under one another; each opens to how it comes about. Beside those that are compared, their share. */
export function FigureList({ figures, of }: Props) {
  const store = useAppStore();
  return (
    <div className={of === undefined ? 'figure-list' : 'figure-list compared'}>
      {of !== undefined && <p className="figure-of">% of {of}</p>}
      {figures.map(({ label, value, unit, note, formula, source, share, path }) => (
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
            {of !== undefined && (
              <span className="figure-share" title={share === undefined ? undefined : `of ${of}`}>
                {share === undefined ? '' : percent(share)}
                {share !== undefined && <span className="unseen"> of {of}</span>}
              </span>
            )}
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
