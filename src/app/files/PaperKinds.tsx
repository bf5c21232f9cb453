import type { Holes } from '../../../models/curves/curves.ts';
import { partName } from '../../files/partName.ts';
import { safeName } from '../../files/safeName.ts';
import { loadPress } from '../sheets/loadPress.ts';
import type { SheetsPart } from '../sheets/press.ts';
import { useAppStore } from '../store/useApp.ts';
import { FileKind } from './FileKind.tsx';
import type { FilesProps } from './filesProps.ts';
import { jobByHandPdf } from './jobByHandPdf.ts';
import { makeable } from './makeable.ts';

/** What is printed and taken to the bench. */
export function PaperKinds({ holes, off, save }: FilesProps & { readonly holes: Holes }) {
  const store = useAppStore();
  const sheets = (what: string, part: SheetsPart) =>
    save(what, async () => {
      const accepted = makeable(store);
      const press = await loadPress();
      const choice = { ...store.getState().session.papers, holes };
      const { name } = accepted.design.guitar;
      // templates show no finished holes
      const called = part === 'templates' ? safeName(name) : partName(name, holes);
      return { name: `${called}_${part}.pdf`, bytes: await press.sheetsPdf(accepted, choice, part) };
    });
  const pictures = () =>
    save('the sheets', async () => {
      const accepted = makeable(store);
      const press = await loadPress();
      const choice = { ...store.getState().session.papers, holes };
      const called = partName(accepted.design.guitar.name, holes);
      return { name: `${called}_sheets-svg.zip`, bytes: press.sheetsZip(accepted, choice, called) };
    });
  return (
    <>
      <FileKind
        title="Drawing, PDF"
        what="Plan, elevations and sections with every dimension and tolerance: what a shop checks the piece against."
        act="Write the drawing"
        off={off}
        onWrite={() => sheets('the drawing', 'drawing')}
      />
      <FileKind
        title="Templates, PDF"
        what="Outline, drilling, crown, saddle and gauges at full size, to glue on or cut out. Print without scaling and measure the 100 mm bar."
        act="Write the templates"
        off={off}
        onWrite={() => sheets('the templates', 'templates')}
      />
      <FileKind
        title="All sheets, SVG"
        what="Drawing and templates as pictures of lines at full size, a file for each sheet in one ZIP: for a laser or a drawing program."
        act="Write the SVGs"
        off={off}
        onWrite={pictures}
      />
      <FileKind
        title="Job by hand, PDF"
        what="Step by step for the workshop under Making, with boxes to tick and to fill in."
        act="Write the job by hand"
        off={off}
        onWrite={() => save('the job by hand', () => jobByHandPdf(makeable(store), store.getState().session))}
      />
    </>
  );
}
