import { Fragment } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { FIELDS } from '../../../design/fields.ts';
import { given, mend, type Problem } from '../../../design/problem.ts';
import { judge, problemsAt } from '../../store/judge.ts';
import { useApp, useAppStore } from '../../store/useApp.ts';
import { EntryInput } from '../EntryInput.tsx';
import { readable } from '../readable.ts';
import { stringCount } from '../stringCount.ts';
import { useCall } from '../useCall.ts';
import './strings.css';
import { entryAt, isPlain, LISTS, type List, withString, withWoundOrPlain } from './stringLists.ts';
import { TuningPicker } from './TuningPicker.tsx';

const HEADS: Readonly<Record<List, string>> = {
  notes: 'note',
  diameters: 'diameter',
  cores: 'core',
  wraps: 'wrap',
  setbacks: 'set-back',
};
const PATHS = LISTS.map((list) => `strings.${list}`);
const FAULTS = 'strings-faults';

/** The strings, one a row, treble first. */
export function StringTable() {
  const count = useApp(stringCount);
  const strings = useApp(({ history }) => history.present.strings);
  const faults = useApp(
    useShallow(({ history }) => PATHS.flatMap((path) => problemsAt(history.present, path))),
  ).filter((problem) => isShown(problem, strings));
  const selected = useApp(({ session }) => session.selected);
  const table = useCall(...PATHS);
  const measured = Array.from({ length: count }, (_, at) => entryAt(strings.setbacks, at)).some(
    (m) => m !== '',
  );
  return (
    <div className="entries" ref={table}>
      <TuningPicker />
      <table className="string-table">
        <caption className="unseen">Strings, treble first</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">String</span>
            </th>
            {LISTS.map((list) => (
              <Fragment key={list}>
                {list === 'cores' && (
                  <th scope="col" className="make">
                    <span className="unseen">wound or plain</span>
                  </th>
                )}
                <th scope="col" className={`${list}${selected === `strings.${list}` ? ' selected' : ''}`}>
                  {HEADS[list]}
                </th>
              </Fragment>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: count }, (_, at) => at).map((at) => (
            <StringRow key={at} at={at} faults={faults} />
          ))}
        </tbody>
      </table>
      <div id={FAULTS} className="problems" aria-live="polite">
        {faults.map((problem) => (
          <p key={`${problem.code} ${problem.path} ${problem.allowed}`}>{sayFault(problem)}</p>
        ))}
      </div>
      <p className="field-note">
        <b>w</b> wound, <b>p</b> plain: press to change. Wraps in kg/m³. A set-back in grey is computed; one
        that you type, measured on a guitar that plays in tune, goes before it.
        {measured && <ClearSetbacks />}
      </p>
      <Pull />
    </div>
  );
}

function StringRow({ at, faults }: { at: number; faults: readonly Problem[] }) {
  const store = useAppStore();
  const strings = useApp(({ history }) => history.present.strings);
  const computed = useApp(({ history }) => judge(history.present).accepted?.fit.slot.wanted[at]?.saddleMm);
  const plain = isPlain(strings, at);
  const cell = (list: List) => {
    const path = `strings.${list}`;
    return (
      <td key={list} data-path={path}>
        <EntryInput
          path={path}
          field={FIELDS.strings[list]}
          at={at}
          name={`String ${at + 1}, ${HEADS[list]}`}
          typed={entryAt(strings[list], at)}
          invalid={faults.some((problem) => problem.path === `${path}.${at + 1}`)}
          describedBy={FAULTS}
          placeholder={list === 'setbacks' && computed !== undefined ? readable(computed) : undefined}
          onType={(typed) => store.revise(path, (text) => withString(text, list, at, typed))}
        />
      </td>
    );
  };
  return (
    <tr>
      <th scope="row">{at + 1}</th>
      {cell('notes')}
      {cell('diameters')}
      <td>
        <button
          type="button"
          className="make"
          title={plain ? 'Plain; press to make it wound' : 'Wound; press to make it plain'}
          onClick={() => store.replaceDesign(withWoundOrPlain(store.getState().history.present, at))}
        >
          <span aria-hidden="true">{plain ? 'p' : 'w'}</span>
          <span className="unseen">
            String {at + 1}: {plain ? 'plain, press to make it wound' : 'wound, press to make it plain'}
          </span>
        </button>
      </td>
      {plain ? (
        <td colSpan={2} className="plain">
          plain
        </td>
      ) : (
        [cell('cores'), cell('wraps')]
      )}
      {cell('setbacks')}
    </tr>
  );
}

/** What is wrong with a plain string's core was said of its diameter. */
function isShown({ path }: Problem, strings: Parameters<typeof isPlain>[0]): boolean {
  const [, list, string] = path.split('.');
  return list !== 'cores' || string === undefined || !isPlain(strings, Number(string) - 1);
}

function sayFault(problem: Problem): string {
  const [, list = '', string] = problem.path.split('.');
  const head = HEADS[list as List];
  const where = string === undefined ? `The ${head}s` : `String ${string}, ${head}`;
  return `${where}: ${given(problem)}. ${mend(problem)}`;
}

function ClearSetbacks() {
  const store = useAppStore();
  return (
    <>
      {' '}
      <button
        type="button"
        className="link"
        onClick={() => {
          const { present } = store.getState().history;
          const setbacks = Array.from({ length: stringCount(store.getState()) }, () => '');
          store.replaceDesign({ ...present, strings: { ...present.strings, setbacks } });
        }}
      >
        Compute them all
      </button>
    </>
  );
}

/** How hard the strings pull, and what that asks of whoever strings the guitar. */
function Pull() {
  const strings = useApp(({ history }) => judge(history.present).accepted?.fit.strings);
  const pulls = strings?.map(({ tensionN }) => tensionN) ?? [];
  const all = pulls.reduce((sum, pull) => sum + pull, 0);
  return (
    <p className="field-note">
      {pulls.length > 0 &&
        `They pull ${Math.min(...pulls).toFixed(0)} to ${Math.max(...pulls).toFixed(0)} N each, ${all.toFixed(0)} N together. `}
      Wear eye protection, and slacken strings before cutting them; local rules come first.
    </p>
  );
}
