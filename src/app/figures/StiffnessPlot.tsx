import { fixed } from '../../report/said.ts';
import { Key } from '../picture/Key.tsx';
import { Picture } from '../picture/Picture.tsx';
import type { Weighed } from './figuresOf.ts';
import { stiffnessPicture } from './stiffnessPicture.ts';

interface Props {
  readonly bench: Weighed;
  readonly reference: Weighed;
  /** The reference's name. */
  readonly name: string;
}

/** Bending stiffness along the bridge, against the reference's. */
export function StiffnessPlot({ bench, reference, name }: Props) {
  const middle = ({ figures }: Weighed) => fixed(figures.bending.midNm2, 2);
  return (
    <>
      <h3>Stiffness E·I along the bridge</h3>
      <Picture
        name="stiffness"
        drawn={stiffnessPicture(bench, reference)}
        label={`Bending stiffness from tip to tip: ${middle(bench)} N·m² in the middle, ${middle(reference)} of ${name}; under the axis the block, the slot and the pins`}
      />
      <Key
        items={[
          { pen: 'strong', words: 'this design' },
          { pen: 'hidden', words: name },
        ]}
      />
    </>
  );
}
