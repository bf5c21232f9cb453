import { useState } from 'react';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import { Key } from '../picture/Key.tsx';
import { Picture } from '../picture/Picture.tsx';
import type { Accepted } from '../store/judge.ts';
import { Honesty } from './Honesty.tsx';
import { intonationColumns } from './intonationColumns.ts';
import { intonationPicture } from './intonationPicture.ts';
import { StringChoice } from './StringChoice.tsx';
import { StringTable } from './StringTable.tsx';
import { useShown } from './useShown.ts';

interface PartProps {
  readonly accepted: Accepted;
  readonly report: FitReport;
}

/** Cents by fret as a plot, and string by string in a table, with what they are worth. */
export function Intonation({ accepted: { design, fit }, report }: PartProps) {
  const [shown, show] = useShown(fit.strings.length);
  const [all, setAll] = useState(false);
  const { strings } = fit;
  const measured = fit.slot.wanted.some((one) => one.measured);
  return (
    <>
      <h3>Intonation, cents by fret</h3>
      <StringChoice strings={strings} shown={shown} onChoose={show} />
      <label className="fit-all">
        <input type="checkbox" checked={all} onChange={(event) => setAll(event.target.checked)} /> draw all
        strings
      </label>
      <Picture
        name="intonation"
        drawn={intonationPicture(fit, report.crowns, shown, all)}
        label={`Cents by fret 1 to 12 of ${all ? 'all strings' : `string ${shown + 1}, ${strings[shown]?.note}`}; the figures stand in the table below`}
      />
      <Key
        items={[
          { pen: 'hidden', words: 'no compensation' },
          { pen: 'outline', words: 'on the slot’s middle' },
          {
            pen: 'strong',
            words: design.saddle.filed === 'each' ? 'with the filed crown' : 'where the crown stands',
          },
        ]}
      />
      <StringTable
        name="Intonation by string"
        columns={intonationColumns(design, fit, report)}
        strings={strings}
        shown={shown}
        onShow={show}
      />
      {measured && <p className="aside">* measured by you</p>}
      <Honesty firmEnds={design.saddle.firmEnds} />
    </>
  );
}
