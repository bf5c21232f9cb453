import { partName } from '../../files/partName.ts';
import { useSaving } from '../files/useSaving.ts';
import type { Accepted } from '../store/judge.ts';
import { PapersForm } from './PapersForm.tsx';
import type { Page, Press } from './press.ts';
import { useSheetsChoice } from './useSheetsChoice.ts';

interface SheetToolsProps {
  readonly press: Press | undefined;
  readonly accepted: Accepted | undefined;
  readonly front: Page | undefined;
  /** Nothing can be written: there is no sheet, or it is of an older design. */
  readonly off: boolean;
  readonly settling: boolean;
}

/** Paper and units, and what is done with the sheets: saved whole, saved singly, printed. */
export function SheetTools({ press, accepted, front, off, settling }: SheetToolsProps) {
  const choice = useSheetsChoice();
  const { saving, outcome, save } = useSaving();
  const name = partName(accepted?.design.guitar.name ?? '', choice.holes);
  const none = off || !press || !accepted || !front || saving !== undefined;

  const savePdf = () =>
    press &&
    accepted &&
    save('the sheets', async () => ({
      name: `${name}_sheets.pdf`,
      bytes: await press.sheetsPdf(accepted, choice, 'all'),
    }));
  const saveSvg = () =>
    front &&
    save('this sheet', async () => ({
      name: `${name}_${front.sheet.id}.svg`,
      bytes: new TextEncoder().encode(front.svg),
    }));
  return (
    <div className="sheet-tools">
      <PapersForm />
      <span
        role="status"
        className={outcome && !saving ? `sheet-outcome ${outcome.ok ? 'well' : 'amiss'}` : 'sheet-outcome'}
      >
        {saving === undefined ? outcome?.words : `Writing ${saving} …`}
      </span>
      <div className="sheet-actions">
        <button type="button" disabled={none || settling} onClick={() => void saveSvg()}>
          Save this sheet as SVG
        </button>
        <button
          type="button"
          disabled={none || settling}
          onClick={() => print()}
          title="At full size, each sheet a page"
        >
          Print
        </button>
        <button type="button" className="main" disabled={none} onClick={() => void savePdf()}>
          Save all as PDF
        </button>
      </div>
    </div>
  );
}
