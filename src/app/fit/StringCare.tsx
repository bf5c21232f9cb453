import type { TunedString } from '../../trade/fit/tunedStrings.ts';

/** What these strings can do, where their tension is told. */
export function StringCare({ strings }: { strings: readonly TunedString[] }) {
  const pulls = strings.map(({ tensionN }) => tensionN);
  const sum = pulls.reduce((all, n) => all + n, 0);
  return (
    <p className="fit-care">
      <strong>Take care.</strong> These strings pull {Math.min(...pulls).toFixed(0)} to{' '}
      {Math.max(...pulls).toFixed(0)} N each, {sum.toFixed(0)} N together: wear eye protection, and slacken a
      string before you cut it. These figures compare designs, they are no guarantee of strength. Local rules
      and a qualified person come first.
    </p>
  );
}
