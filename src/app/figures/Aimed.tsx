import { MEASURES } from '../../report/aim/measures.ts';
import { fixed } from '../../report/said.ts';
import { placeName } from '../form/placeName.ts';
import type { Accepted } from '../store/judge.ts';
import { useAppStore } from '../store/useApp.ts';

/** What the design aims at, what it reaches, and the dimension that follows. */
export function Aimed({ aimed }: { aimed: NonNullable<Accepted['aimed']> }) {
  const store = useAppStore();
  const { of, path, asked, reached, value } = aimed;
  const { unit } = MEASURES[of];
  return (
    <dl className="aimed" aria-label="Aim">
      <dt>
        <button type="button" className="link" onClick={() => store.callTo(`aim.${of}`)}>
          {placeName(`aim.${of}`)}
        </button>
      </dt>
      <dd data-aim="asked">
        {fixed(asked, 2)} <span className="unit">{unit}</span>
      </dd>
      <dt>reached</dt>
      <dd data-aim="reached">
        {fixed(reached, 2)} <span className="unit">{unit}</span>
      </dd>
      <dt>
        <button type="button" className="link" onClick={() => store.callTo(path)}>
          {placeName(path)}
        </button>{' '}
        follows
      </dt>
      <dd data-aim="follows">
        {fixed(value, 2)} <span className="unit">mm</span>
      </dd>
    </dl>
  );
}
