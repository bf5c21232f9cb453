import type { Remark } from '../../trade/fit/remarks.ts';
import { useAppStore } from '../store/useApp.ts';

/** What to know of the fit before cutting. Each line leads to its field. */
export function RemarkList({ remarks }: { remarks: readonly Remark[] }) {
  const store = useAppStore();
  if (remarks.length === 0) return null;
  return (
    <ul className="fit-remarks" aria-label="Remarks on the fit">
      {remarks.map(({ id, path, text }) => (
        <li key={id}>
          <button type="button" onClick={() => store.callTo(path)}>
            {text}
          </button>
        </li>
      ))}
    </ul>
  );
}
