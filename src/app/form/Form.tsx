import { GROUPS } from '../../design/fields.ts';
import { useAppStore } from '../store/useApp.ts';
import { BenchNote } from './BenchNote.tsx';
import { GroupSection } from './GroupSection.tsx';
import './form.css';

/** The left column: every number and choice of the design, by groups of the bench. */
export function Form() {
  const store = useAppStore();
  return (
    <form
      className="form"
      aria-label="Design"
      onSubmit={(event) => event.preventDefault()}
      onFocus={({ target }) => {
        const row = target.closest<HTMLElement>('[data-path]');
        if (row) store.select(row.dataset.path);
      }}
      onBlur={() => store.closeStep()}
    >
      <div className="groups">
        {GROUPS.map((group) => (
          <GroupSection key={group} group={group} />
        ))}
      </div>
      <BenchNote />
    </form>
  );
}
