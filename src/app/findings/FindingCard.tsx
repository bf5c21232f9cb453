import type { Finding } from '../../report/findings/finding.ts';
import { severityWord } from '../../report/findings/severityWords.ts';
import type { Accepted } from '../store/judge.ts';
import { useAppStore } from '../store/useApp.ts';
import { RemedyButton } from './RemedyButton.tsx';

interface Props {
  readonly accepted: Accepted;
  readonly finding: Finding;
  readonly open: boolean;
}

/** One finding: what was found, and when it is chosen what it is held against, who says so, and what mends it. */
export function FindingCard({ accepted, finding, open }: Props) {
  const store = useAppStore();
  const { id, severity, text, found, limit, source, path, limitPath } = finding;
  const body = `finding-${id}`;
  const choose = () => {
    store.setSession(open ? { finding: undefined } : { finding: id, middle: 'part' });
    // one selection everywhere: its field and its dimension light up with its place
    store.select(open ? undefined : path);
  };
  return (
    <article className={open ? `finding ${severity} open` : `finding ${severity}`} data-finding={id}>
      <button
        type="button"
        className="finding-head"
        aria-expanded={open}
        aria-controls={body}
        onClick={choose}
      >
        <span className="severity">{severityWord(severity)}</span>
        <span className="finding-found">{found}</span>
        <span className="finding-text">{text}</span>
      </button>
      {open && (
        <div id={body} className="finding-body">
          <p>Held against: {limit}</p>
          <p className="source">{source}</p>
          <div className="finding-ways">
            <RemedyButton accepted={accepted} finding={finding} />
            <button type="button" className="link" onClick={() => store.callTo(path)}>
              Show its number
            </button>
            {limitPath !== undefined && (
              <button type="button" className="link" onClick={() => store.callTo(limitPath)}>
                Change the limit
              </button>
            )}
          </div>
        </div>
      )}
    </article>
  );
}
