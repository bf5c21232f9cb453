import type { About } from '../../report/findings/rule.ts';
import { RULES } from '../../report/findings/rules.ts';

const ABOUT: Readonly<Record<About, string>> = {
  fit: 'The fit to the guitar',
  wood: 'The wood that is left',
  making: 'The making',
  usual: 'What is usual',
};

/** What every rule watches, closed at first: so that nothing said against a design means something. */
export function Watched() {
  return (
    <details className="watched">
      <summary>What is watched</summary>
      {(Object.keys(ABOUT) as About[]).map((about) => (
        <section key={about}>
          <h3>{ABOUT[about]}</h3>
          <ul>
            {RULES.filter((rule) => rule.about === about).map(({ id, watches }) => (
              <li key={id}>{watches}</li>
            ))}
          </ul>
        </section>
      ))}
    </details>
  );
}
