import { fixed } from '../../report/said.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import { Key } from '../picture/Key.tsx';
import { Picture } from '../picture/Picture.tsx';
import type { Accepted } from '../store/judge.ts';
import { planPicture } from './planPicture.ts';
import { setbackPicture } from './setbackPicture.ts';
import { useShown } from './useShown.ts';

interface PartProps {
  readonly accepted: Accepted;
  readonly report: FitReport;
}

/** The strings over slot and pins in plan, and the set-backs larger under it. */
export function SlotPlan({ accepted: { design, curves, fit }, report: { crowns } }: PartProps) {
  const [shown] = useShown(fit.strings.length);
  const { times, ...larger } = setbackPicture(design, curves, fit, crowns, shown);
  const { line } = fit.slot;
  return (
    <>
      <h3>Strings and slot, to scale, the nut upward</h3>
      <Picture
        name="plan"
        drawn={planPicture(curves, fit, crowns, shown)}
        label={`Plan of ${fit.strings.length} strings over the slot to their pins; the slot lies ${fixed(line.centreMm, 2)} mm behind the scale line at the middle and leans by ${fixed(line.angleDeg, 2)}°`}
      />
      <h3>{times > 1 ? `Set-backs, ×${times} along the strings, mm` : 'Set-backs, mm'}</h3>
      <Picture
        name="setbacks"
        drawn={larger}
        label={`Set-backs ${times} times larger: ${fit.slot.wanted.map(({ saddleMm }, i) => `${fit.strings[i]?.note} ${fixed(saddleMm, 2)}`).join(', ')} mm`}
      />
      <Key
        items={[
          { pen: 'chain', words: `scale line, ${fixed(design.guitar.scale, 2)} from the nut` },
          { pen: 'blue', words: `slot, ${fixed(line.angleDeg, 2)}°` },
          { pen: 'blueHidden', words: `slot by α = 1, ${fixed(fit.slot.least.angleDeg, 2)}°` },
          { pen: 'outline', shape: 'ring', words: 'asked for' },
          { pen: 'blue', shape: 'dot', words: 'crown' },
        ]}
      />
    </>
  );
}
