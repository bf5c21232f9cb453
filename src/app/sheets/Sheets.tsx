import { useRef } from 'react';
import { fingerprint } from '../../sheets/fingerprint.ts';
import { PAPERS } from '../../sheets/sheet.ts';
import { useSize } from '../drawing/useSize.ts';
import { useApp } from '../store/useApp.ts';
import { PageList } from './PageList.tsx';
import { PageView } from './PageView.tsx';
import { PrintStyle } from './PrintStyle.tsx';
import { SheetTools } from './SheetTools.tsx';
import { usePages } from './usePages.ts';
import { usePress } from './usePress.ts';
import { useSheetsChoice } from './useSheetsChoice.ts';
import { ZoomTools } from './ZoomTools.tsx';
import { zoomOf } from './zoomOf.ts';
import './sheets.css';

/** The drawing and the templates as paper on the board: of the present design, or of the last one that could be made. */
export function Sheets() {
  const lastGood = useApp((state) => state.lastGood);
  const stale = useApp(({ lastGood, history }) => lastGood?.text !== history.present);
  const choice = useSheetsChoice();
  const chosen = useApp(({ session }) => session.sheet);
  const wantedZoom = useApp(({ session }) => session.zoom);
  const board = useRef<HTMLElement>(null);
  const room = useSize(board);
  const { press, trouble, again } = usePress();
  const { pages, settling } = usePages(press, lastGood, choice);
  const front = pages?.find(({ sheet }) => sheet.id === chosen) ?? pages?.[0];
  const paper = front?.sheet.paper ?? PAPERS[choice.paper];
  const letters = lastGood && pages ? press?.letters(lastGood) : undefined;
  const zoom = zoomOf(wantedZoom, paper, room);
  return (
    <section
      className="sheets"
      aria-label="Sheets"
      data-state={stale ? 'stale' : settling ? 'settling' : 'current'}
    >
      <PrintStyle paper={paper} />
      {lastGood && (
        <p className="not-current" aria-hidden="true">
          Not the design on the form: sheets of design {fingerprint(lastGood.text)}
        </p>
      )}
      <SheetTools press={press} accepted={lastGood} front={front} off={stale || !front} settling={settling} />
      <PageList pages={pages ?? []} front={front} />
      <section ref={board} className="sheets-board" aria-label={front?.sheet.title ?? 'No sheet yet'}>
        {trouble !== undefined && (
          <p className="sheets-word amiss" role="alert">
            {trouble}{' '}
            <button type="button" className="link" onClick={again}>
              Try again
            </button>
          </p>
        )}
        {!lastGood && (
          <p className="sheets-word">There is no design yet that can be made, so there are no sheets.</p>
        )}
        {lastGood && !pages && trouble === undefined && <p className="sheets-word">Drawing the sheets …</p>}
        {pages?.map((page) => (
          <PageView key={page.sheet.id} page={page} zoom={zoom} front={page === front} />
        ))}
      </section>
      <div className="sheets-foot">
        <span role="status" className={stale ? 'stamp stale' : 'stamp'}>
          {lastGood && pages && standing(stale, settling, fingerprint(lastGood.text))}
        </span>
        {letters !== undefined && <span className="stamp">{letters}</span>}
        <ZoomTools zoom={zoom} />
      </div>
    </section>
  );
}

function standing(stale: boolean, settling: boolean, print: string): string {
  if (stale) return `sheets of the last good design, ${print}: the present one can’t be made`;
  return settling ? 'being drawn anew …' : `design ${print}, as typed`;
}
