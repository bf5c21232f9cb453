import type { Group } from '../../design/fields.ts';
import { placeOf, placesOf } from '../store/fieldAt.ts';
import { judge } from '../store/judge.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { essence } from './essence.ts';
import { FieldRow } from './FieldRow.tsx';
import { GROUP_NAMES } from './groupNames.ts';
import { TimberPicker } from './TimberPicker.tsx';

/** A group of fields that opens and closes; closed, it says its essence in one line. */
export function GroupSection({ group }: { group: Group }) {
  const store = useAppStore();
  const open = useApp((state) => state.session.openGroups.has(group));
  const line = useApp((state) => essence(group, state.history.present));
  const faults = useApp(
    (state) => judge(state.history.present).problems.filter((p) => placeOf(p.path)?.group === group).length,
  );
  const fields = `group-${group}`;
  return (
    <section className="group">
      <h2>
        <button
          type="button"
          aria-expanded={open}
          aria-controls={fields}
          onClick={() => store.toggleGroup(group)}
        >
          <span className="group-name">{GROUP_NAMES[group]}</span>
          {faults > 0 ? (
            <span className="essence amiss">{faults} to mend</span>
          ) : (
            !open && <span className="essence">{line}</span>
          )}
        </button>
      </h2>
      {open && (
        <div id={fields} className="fields">
          {group === 'timber' && <TimberPicker />}
          {placesOf(group).map((place) => (
            <FieldRow key={place.path} place={place} />
          ))}
        </div>
      )}
    </section>
  );
}
