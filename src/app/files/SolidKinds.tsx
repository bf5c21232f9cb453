import { useState } from 'react';
import type { Holes } from '../../../models/curves/curves.ts';
import { DEVIATION_MM } from '../../../workers/protocol.ts';
import { bridgeDxf } from '../../files/bridgeDxf.ts';
import { partName, partTitle } from '../../files/partName.ts';
import { usePartSource } from '../part/partContext.ts';
import { loadPress } from '../sheets/loadPress.ts';
import { dayText, today } from '../sheets/today.ts';
import { useAppStore } from '../store/useApp.ts';
import { FileKind } from './FileKind.tsx';
import type { FilesProps } from './filesProps.ts';
import { makeable } from './makeable.ts';

const DEVIATIONS = ['0.1', '0.05', '0.02', '0.01', '0.005'] as const;

/** The bridge's own shape, for machines and other programs. */
export function SolidKinds({ holes, off, save }: FilesProps & { readonly holes: Holes }) {
  const store = useAppStore();
  const { client } = usePartSource();
  const [schema, setSchema] = useState<'AP214' | 'AP242'>('AP214');
  const [deviation, setDeviation] = useState(String(DEVIATION_MM.usual));
  const named = (end: string) => `${partName(makeable(store).design.guitar.name, holes)}${end}`;
  return (
    <>
      <FileKind
        title="STEP"
        what="The exact solid with its true curves, in millimetres: what a CNC shop cuts from, and other programs measure."
        act="Write STEP"
        off={off}
        onWrite={() =>
          save('STEP', () => client.file(makeable(store).text, { format: 'step', holes, schema }))
        }
      >
        <label className="file-option">
          Standard{' '}
          <select
            value={schema}
            onChange={(event) => setSchema(event.target.value === 'AP242' ? 'AP242' : 'AP214')}
          >
            <option value="AP214">for most programs (AP214)</option>
            <option value="AP242">for newer programs (AP242)</option>
          </select>
        </label>
      </FileKind>
      <FileKind
        title="STL"
        what="The solid in flat facets, for a printed trial piece or simple milling programs. It holds no units: these are millimetres."
        act="Write STL"
        off={off}
        onWrite={() =>
          save('STL', () =>
            client.file(makeable(store).text, { format: 'stl', holes, deviationMm: Number(deviation) }),
          )
        }
      >
        <label className="file-option">
          Facets stray at most{' '}
          <select value={deviation} onChange={(event) => setDeviation(event.target.value)}>
            {DEVIATIONS.map((mm) => (
              <option key={mm} value={mm}>
                {mm} mm
              </option>
            ))}
          </select>
        </label>
      </FileKind>
      <FileKind
        title="3MF"
        what="The same facets with their unit, closed and named: for printing a trial piece."
        act="Write 3MF"
        off={off}
        onWrite={() =>
          save('3MF', async () => {
            const accepted = makeable(store);
            const mesh = await client.mesh(accepted.text, holes);
            return { name: named('.3mf'), bytes: (await loadPress()).threeMf(accepted, holes, mesh) };
          })
        }
      />
      <FileKind
        title="DXF"
        what="The plan in true arcs, in millimetres, on layers: outline, slot, pins, centre lines. For a laser, a router’s table or a plotter."
        act="Write DXF"
        off={off}
        onWrite={() =>
          save('DXF', async () => {
            const accepted = makeable(store);
            const title = partTitle(accepted, holes, dayText(today()));
            const bytes = new TextEncoder().encode(bridgeDxf(accepted, holes, title));
            return { name: named('_plan.dxf'), bytes };
          })
        }
      />
    </>
  );
}
