import type { Finding } from '../../report/findings/finding.ts';
import { useAppStore } from '../store/useApp.ts';

/** What to know of the fit before cutting. Each line leads to its field. */
export function RemarkList({ found }: { found: readonly Finding[] }) {
  const store = useAppStore();
  if (found.length === 0) return null;
  return (
    <ul className="fit-remarks" aria-label="Remarks on the fit">
      {found.map(({ id, path, text }) => (
        <li key={id}>
          <button type="button" onClick={() => store.callTo(path)}>
            {text}
          </button>
        </li>
      ))}
    </ul>
  );
}
