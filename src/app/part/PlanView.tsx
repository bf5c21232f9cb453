import { Drawing } from '../drawing/Drawing.tsx';
import { kept } from '../store/fieldAt.ts';
import { useApp, useAppStore } from '../store/useApp.ts';

/** The live drawing of the last good design, on which numbers can be changed. */
export function PlanView() {
  const store = useAppStore();
  const lastGood = useApp((state) => state.lastGood);
  const selected = useApp(({ session }) => session.selected);
  const holes = useApp(({ session }) => session.holes);
  const text = useApp(({ history }) => history.present);
  return (
    <Drawing
      curves={lastGood?.curves}
      aimed={lastGood?.aimed}
      selected={selected}
      text={text}
      holes={holes}
      stale={lastGood !== undefined && lastGood.text !== text}
      onSelect={store.select}
      onEdit={(path, typed) => store.edit(path, kept(typed))}
    />
  );
}
