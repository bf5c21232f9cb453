import type { Weighed } from '../../report/compare/comparison.ts';
import { StringTable } from '../fit/StringTable.tsx';
import { useShown } from '../fit/useShown.ts';
import { reportOf } from '../store/reportOf.ts';
import { loadColumns } from './loadColumns.ts';
import { whyNoLoad } from './whyNoLoad.ts';

interface Props {
  readonly bench: Weighed;
  readonly reference: Weighed;
  /** The reference's name. */
  readonly name: string;
}

/** What each string does to saddle, slot and pin hole, and why one does nothing. */
export function LoadTables({ bench: { accepted, figures }, reference, name }: Props) {
  const { strings } = accepted.fit;
  const [shown, show] = useShown(strings.length);
  const report = reportOf(accepted);
  const { loads } = figures;
  const columns = loadColumns(loads, report, { name, loads: reference.figures.loads });
  const table = { strings, shown, onShow: show };
  return (
    <>
      <StringTable name="Load on the saddle by string" columns={columns.saddle} {...table} />
      <StringTable name="Load on slot and pin holes by string" columns={columns.wood} {...table} />
      {loads.strings.map(
        (one, i) =>
          !one && (
            <p key={strings[i]?.x} className="aside">
              – String {i + 1}: no load, since {whyNoLoad(report, i)}.
            </p>
          ),
      )}
    </>
  );
}
