import { useDeferredValue, useState } from 'react';
import { differences } from '../../report/compare/differences.ts';
import { LOAD_CAUTION } from '../../trade/loadCaution.ts';
import { figuresOf } from '../figures/figuresOf.ts';
import { pairsOf } from '../figures/pairs.ts';
import { StiffnessPlot } from '../figures/StiffnessPlot.tsx';
import { useReference } from '../figures/useReference.ts';
import { Key } from '../picture/Key.tsx';
import { Picture } from '../picture/Picture.tsx';
import { judge } from '../store/judge.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { ChooseReference } from './ChooseReference.tsx';
import './compare.css';
import { DifferenceTable } from './DifferenceTable.tsx';
import { HEIGHTS, planOverlay, profileOverlay } from './overlay.ts';
import { PairTable } from './PairTable.tsx';
import { takeReference } from './takeReference.ts';

/** The design on the bench against the reference design: shape, dimensions, weight, stiffness and loads. */
export function Compare() {
  const store = useAppStore();
  // a drag goes on while they are worked out
  const accepted = useDeferredValue(useApp((state) => state.lastGood));
  const current = useApp((state) => judge(state.history.present).ok);
  const { name, reference } = useReference();
  const [choosing, setChoosing] = useState(false);
  const take = () => {
    const { present } = store.getState().history;
    takeReference(store, { name: String(present.guitar.name).trim(), text: present });
  };
  return (
    <section className="panel compare" aria-labelledby="compare-title">
      <h2 id="compare-title">Against {name}</h2>
      <div className="compare-choice">
        <button type="button" onClick={() => setChoosing(true)}>
          Choose another reference
        </button>
        <button type="button" disabled={!current} onClick={take}>
          Take this design as the reference
        </button>
      </div>
      {choosing && <ChooseReference onClose={() => setChoosing(false)} />}
      {!current && accepted && <p className="aside">Of the last good design, not of what is typed now.</p>}
      {accepted ? (
        <Compared name={name} bench={figuresOf(accepted)} reference={reference} />
      ) : (
        <p className="aside">Compared as soon as the dimensions fit together.</p>
      )}
    </section>
  );
}

type Side = ReturnType<typeof figuresOf>;

function Compared({ name, bench, reference }: { name: string; bench: Side; reference: Side }) {
  const strung = [bench, reference].some(({ accepted }) => accepted.design.timber.weighed === 'strung');
  const figures = [...pairsOf(reference, bench).values()].filter(
    ({ id }) => strung || id !== 'mass-together',
  );
  const [here, there] = [bench.accepted.curves, reference.accepted.curves];
  return (
    <>
      <h3>In plan, to scale, the nut upward</h3>
      <Picture
        name="overlay-plan"
        drawn={planOverlay(here, there)}
        label={`Outlines, slots and pins of this design over those of ${name}, the middles of the slots on one another`}
      />
      <h3>From the front, heights ×{HEIGHTS}</h3>
      <Picture
        name="overlay-profile"
        drawn={profileOverlay(here, there)}
        label={`Long profile of this design over that of ${name}, heights ${HEIGHTS} times larger`}
      />
      <Key
        items={[
          { pen: 'outline', words: 'this design' },
          { pen: 'hidden', words: name },
        ]}
      />
      <h3>Differences</h3>
      <DifferenceTable differences={differences(reference.accepted.design, bench.accepted.design)} />
      <h3>Weight and stiffness</h3>
      <PairTable name="Weight and stiffness side by side" pairs={figures.filter(({ load }) => !load)} />
      <StiffnessPlot bench={bench} reference={reference} name={name} />
      <h3>Loads</h3>
      <p className="caution">{LOAD_CAUTION}</p>
      <PairTable name="Loads side by side" pairs={figures.filter(({ load }) => load)} />
    </>
  );
}
