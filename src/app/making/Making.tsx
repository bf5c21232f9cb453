import { useApp } from '../store/useApp.ts';
import { JobByHand } from './JobByHand.tsx';
import './making.css';

/** The job by hand of the present design, or of the last one that could be made. */
export function Making() {
  const lastGood = useApp((state) => state.lastGood);
  const stale = useApp(({ lastGood, history }) => lastGood?.text !== history.present);
  return (
    <section className="making" aria-label="Making">
      {lastGood ? (
        <JobByHand accepted={lastGood} stale={stale} />
      ) : (
        <p className="making-word">There is no design yet that can be made, so there are no steps.</p>
      )}
    </section>
  );
}
