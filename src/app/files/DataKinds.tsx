import { dimensionCsv, dimensionJson, dimensionTable } from '../../files/dimensionTable.ts';
import { safeName } from '../../files/safeName.ts';
import { useAppStore } from '../store/useApp.ts';
import { FileKind } from './FileKind.tsx';
import type { FilesProps } from './filesProps.ts';
import { makeable } from './makeable.ts';
import { saveDesign } from './saveDesign.ts';

/** Numbers for tables and other programs, and the design itself. */
export function DataKinds({ off, save }: FilesProps) {
  const store = useAppStore();
  const table = (format: 'csv' | 'json') =>
    save(`the table of dimensions`, async () => {
      const accepted = makeable(store);
      const { name } = accepted.design.guitar;
      const rows = dimensionTable(accepted);
      const text = format === 'csv' ? dimensionCsv(rows) : dimensionJson(name, rows);
      return { name: `${safeName(name)}_dimensions.${format}`, bytes: new TextEncoder().encode(text) };
    });
  return (
    <>
      <FileKind
        title="Table of dimensions, CSV"
        what="Every number of the design, solved ones included, for a spreadsheet."
        act="Write CSV"
        off={off}
        onWrite={() => table('csv')}
      />
      <FileKind
        title="Table of dimensions, JSON"
        what="The same for other programs."
        act="Write JSON"
        off={off}
        onWrite={() => table('json')}
      />
      <FileKind
        title="The design"
        what="What you typed, to be opened here again, by you or by someone else."
        act="Save the design"
        off={false}
        onWrite={() => void saveDesign(store)}
      />
    </>
  );
}
