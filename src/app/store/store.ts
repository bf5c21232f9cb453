import { createStore, type StoreApi } from 'zustand/vanilla';
import type { DesignText, Typed } from '../../design/design.ts';
import { enoughStrings } from '../../design/enoughStrings.ts';
import type { GROUPS } from '../../design/fields.ts';
import { aimingAtPresent } from './aimingAtPresent.ts';
import { placeOf, typedAt, withTyped } from './fieldAt.ts';
import { begin, change, closeStep, type History, hold, redo, replace, undo } from './history.ts';
import { judge } from './judge.ts';
import { numberOf } from './solvedOrSet.ts';
import type {
  AppState,
  Benches,
  DesignFile,
  PapersChoice,
  Part,
  Reference,
  Session,
  Theme,
} from './state.ts';

/** The one store: document, session and part. Everything else is derived by selectors. */
export interface AppStore extends StoreApi<AppState> {
  /** Types one field anew. Never refused: what can't be made is kept as typed, with its problems. */
  readonly edit: (path: string, typed: Typed) => void;
  /** Types several fields anew that go together. In quick succession, changes at one path are one step. */
  readonly revise: (path: string, anew: (text: DesignText) => DesignText) => void;
  /** Puts another document in the place of the present one, as one step that can be undone. */
  readonly replaceDesign: (text: DesignText) => void;
  /** Opens another bridge's document, as one step that can be undone. */
  readonly open: (text: DesignText) => void;
  /** Until `closeStep`, all changes of this field are one step. */
  readonly hold: (path: string) => void;
  readonly closeStep: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Selects a field everywhere, and opens its group. */
  readonly select: (path: string | undefined) => void;
  /** Selects a field and puts the caret into it. */
  readonly callTo: (path: string) => void;
  readonly toggleGroup: (group: (typeof GROUPS)[number]) => void;
  readonly setSession: (part: Partial<Session>) => void;
  readonly setPart: (part: Partial<Part>) => void;
}

export interface Beginning {
  readonly text: DesignText;
  /** The last design that could be made, if the present one can't. */
  readonly good?: DesignText | undefined;
  readonly theme?: Theme;
  readonly file?: DesignFile | undefined;
  readonly reference?: Reference | undefined;
  readonly papers?: PapersChoice;
  readonly benches?: Benches;
}

/** @param now the clock by which quick changes are joined, ms */
export function createAppStore(beginning: Beginning, now: () => number = () => performance.now()): AppStore {
  const good = judge(beginning.text).accepted ?? (beginning.good && judge(beginning.good).accepted);
  const store = createStore<AppState>()(() => ({
    history: begin(beginning.text),
    lastGood: good,
    goodIsAnother: false,
    session: {
      selected: undefined,
      call: { path: '', count: 0 },
      openGroups: new Set(['top']),
      holes: 'drilled',
      theme: beginning.theme ?? 'auto',
      figuresInFront: false,
      rightTab: 'fit',
      finding: undefined,
      reference: beginning.reference,
      shownString: 0,
      middle: 'part',
      papers: beginning.papers ?? { paper: 'A4', units: 'mm' },
      sheet: '',
      zoom: 'page',
      benches: beginning.benches ?? {},
      order: { quantity: '1', deadline: '', remarks: '', sandingAllowance: '0' },
      share: 0.56,
      keeping: 'writing',
      file: beginning.file,
      notice: undefined,
    },
    part: { draft: undefined, solid: undefined, newest: undefined, trouble: undefined },
    kernel: { kernel: 'starting', threads: undefined, heapBytes: 0, trouble: undefined },
  }));
  const { getState, setState } = store;

  const setHistory = (history: History) => {
    const good = judge(history.present).accepted;
    setState(good ? { history, lastGood: good, goodIsAnother: false } : { history });
  };
  const setSession = (part: Partial<Session>) =>
    setState(({ session }) => ({ session: { ...session, ...part } }));
  const select = (path: string | undefined) => {
    const { session } = getState();
    const place = path === undefined ? undefined : rowOf(path);
    if (session.selected === place?.path && (!place || session.openGroups.has(place.group))) return;
    const openGroups = place ? new Set(session.openGroups).add(place.group) : session.openGroups;
    setSession({ selected: place?.path, openGroups });
  };

  const revise = (path: string, anew: (text: DesignText) => DesignText) => {
    const { history } = getState();
    const text = anew(history.present);
    if (text !== history.present) setHistory(change(history, text, path, now()));
  };

  return Object.assign(store, {
    edit: (path: string, typed: Typed) => {
      const place = placeOf(path);
      if (!place) return;
      revise(place.path, (text) => {
        if (typedAt(text, place) === typed) return text;
        const changed = withTyped(text, place, typed);
        // every string added has a place in each list at once
        if (place.path === 'strings.count') return enoughStrings(changed);
        return place.path === 'aim.of' ? aimingAtPresent(changed, judge(text).accepted) : changed;
      });
    },
    revise,
    replaceDesign: (text: DesignText) => setHistory(replace(getState().history, text)),
    open: (text: DesignText) => {
      setHistory(replace(getState().history, text));
      if (!judge(text).ok) setState({ goodIsAnother: true });
    },
    hold: (path: string) => setHistory(hold(closeStep(getState().history), path, now())),
    closeStep: () => setHistory(closeStep(getState().history)),
    undo: () => setHistory(undo(getState().history)),
    redo: () => setHistory(redo(getState().history)),
    select,
    callTo: (path: string) => {
      select(path);
      const { session } = getState();
      const place = rowOf(path);
      if (place)
        setSession({ call: { path: place.path, count: session.call.count + 1 }, figuresInFront: false });
    },
    toggleGroup: (group: (typeof GROUPS)[number]) => {
      const { session } = getState();
      const openGroups = new Set(session.openGroups);
      if (!openGroups.delete(group)) {
        setSession({ openGroups: openGroups.add(group) });
        return;
      }
      // what can't be seen any more is let go of
      const selected = session.selected?.startsWith(`${group}.`) ? undefined : session.selected;
      setSession({ openGroups, selected });
    },
    setSession,
    setPart: (part: Partial<Part>) => setState((state) => ({ part: { ...state.part, ...part } })),
  });
}

/** The place whose row in the form stands for a path: a choice between solved and set by hand stands in its number's. */
function rowOf(path: string) {
  const place = placeOf(path);
  return place && (numberOf(place) ?? place);
}
