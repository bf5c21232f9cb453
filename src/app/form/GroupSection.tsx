import type { ComponentType } from 'react';
import type { Group } from '../../design/fields.ts';
import { placeOf, placesOf } from '../store/fieldAt.ts';
import { goodHere } from '../store/goodHere.ts';
import { judge } from '../store/judge.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { MeasuredAgain } from './again/MeasuredAgain.tsx';
import { essence } from './essence.ts';
import { FieldRow } from './FieldRow.tsx';
import { GROUP_NAMES } from './groupNames.ts';
import { StringSetPicker } from './strings/StringSetPicker.tsx';
import { StringTable } from './strings/StringTable.tsx';
import { TimberPicker } from './TimberPicker.tsx';

/** Lists stand in tables of one row a string; a table stands where its first list does. */
const TABLES: Readonly<Record<string, ComponentType>> = {
  'strings.notes': StringTable,
  'action.cents': MeasuredAgain,
};

/** A group of fields that opens and closes; closed, it says its essence in one line. */
export function GroupSection({ group }: { group: Group }) {
  const store = useAppStore();
  const open = useApp((state) => state.session.openGroups.has(group));
  const line = useApp((state) => essence(group, state.history.present, goodHere(state)?.fit.solved));
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
          {group === 'strings' && <StringSetPicker />}
          {placesOf(group).map((place) => {
            const Table = TABLES[place.path];
            return Table ? <Table key={place.path} /> : <FieldRow key={place.path} place={place} />;
          })}
        </div>
      )}
    </section>
  );
}
