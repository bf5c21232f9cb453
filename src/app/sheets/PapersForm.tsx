import { rememberPapers } from '../keep/papers.ts';
import type { PapersChoice } from '../store/state.ts';
import { useApp, useAppStore } from '../store/useApp.ts';

const PAPER = [
  ['A4', 'A4'],
  ['Letter', 'Letter'],
] as const;
const UNITS = [
  ['mm', 'mm'],
  ['in', 'inches'],
] as const;

/** Paper and units of everything that is set in type; remembered in this browser. */
export function PapersForm() {
  const store = useAppStore();
  const choice = useApp(({ session }) => session.papers);
  const choose = (part: Partial<PapersChoice>) => {
    const papers = { ...choice, ...part };
    store.setSession({ papers });
    rememberPapers(papers);
  };
  return (
    <div className="papers-form">
      <fieldset className="choice">
        <legend className="unseen">Paper</legend>
        <div className="segments">
          {PAPER.map(([value, words]) => (
            <label key={value}>
              <input
                type="radio"
                name="papers-paper"
                checked={choice.paper === value}
                onChange={() => choose({ paper: value })}
              />
              {words}
            </label>
          ))}
        </div>
      </fieldset>
      <fieldset className="choice">
        <legend className="unseen">Units on the sheets</legend>
        <div className="segments">
          {UNITS.map(([value, words]) => (
            <label key={value}>
              <input
                type="radio"
                name="papers-units"
                checked={choice.units === value}
                onChange={() => choose({ units: value })}
              />
              {words}
            </label>
          ))}
        </div>
      </fieldset>
    </div>
  );
}
