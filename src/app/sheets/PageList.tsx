import { useAppStore } from '../store/useApp.ts';
import type { Page } from './press.ts';

/** The sheets by name: a press brings one to the front. */
export function PageList({ pages, front }: { pages: readonly Page[]; front: Page | undefined }) {
  const store = useAppStore();
  return (
    <nav className="page-list" aria-label="Sheets by name">
      {pages.map((page) => (
        <button
          key={page.sheet.id}
          type="button"
          aria-current={page === front ? 'page' : undefined}
          onClick={() => store.setSession({ sheet: page.sheet.id })}
        >
          {page.sheet.title}
        </button>
      ))}
    </nav>
  );
}
