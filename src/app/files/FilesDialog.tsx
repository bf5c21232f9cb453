import { useState } from 'react';
import { Dialog } from '../header/Dialog.tsx';
import { judge } from '../store/judge.ts';
import { useApp } from '../store/useApp.ts';
import { DataKinds } from './DataKinds.tsx';
import { HolesChoice } from './HolesChoice.tsx';
import { PacketForm } from './PacketForm.tsx';
import { PaperKinds } from './PaperKinds.tsx';
import { SolidKinds } from './SolidKinds.tsx';
import { useSaving } from './useSaving.ts';
import './files.css';

/** Files for whoever makes the bridge: all that a CNC shop needs at once, or each by itself. */
export function FilesDialog({ onClose }: { onClose: () => void }) {
  const makeable = useApp((state) => judge(state.history.present).ok);
  // as they are seen; chosen otherwise here, the view stays as it is
  const seen = useApp(({ session }) => session.holes);
  const [holes, setHoles] = useState(seen);
  const { saving, outcome, save } = useSaving();
  const common = { off: !makeable || saving !== undefined, save };
  return (
    <Dialog title="Files for the shop" wide onClose={onClose}>
      {!makeable && (
        <p className="amiss">
          The design can’t be made as typed. Mend it first: files are written of the present design only.
        </p>
      )}
      <HolesChoice holes={holes} onChoose={setHoles} />
      <PacketForm {...common} holes={holes} />
      <h3>Single files</h3>
      <div className="file-kinds">
        <SolidKinds {...common} holes={holes} />
        <PaperKinds {...common} holes={holes} />
        <DataKinds {...common} />
      </div>
      <div className="file-outcome" role="status">
        {saving !== undefined && <progress aria-label={`Writing ${saving}`} />}
        {saving !== undefined && <p>Writing {saving} …</p>}
        {saving === undefined && outcome && <p className={outcome.ok ? 'well' : 'amiss'}>{outcome.words}</p>}
      </div>
    </Dialog>
  );
}
