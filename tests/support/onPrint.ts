import { polygon } from '../../models/curves/chain.ts';
import type { Sheet } from '../../src/sheets/sheet.ts';
import { greatest } from './inkOf.ts';
import { inkRuns, raster } from './raster.ts';

/** 254 dpi are ten dots a millimetre. */
const DPI = 254;

/**
 * What a printed sheet measures, mm: its 100 mm bar, and on the outline template the bridge from tip to tip. The sheet
 * only tells where to look, within a millimetre; lengths are those of the ink, from middle to middle of the tips' lines.
 */
export function onPrint(file: string, page: number, sheet: Sheet): { bar: number; tips: number } {
  const r = raster(file, page, DPI);
  const runs = (y: number) => {
    const row = Math.round(10 * (sheet.paper.height - y) - 0.5);
    return inkRuns(Array.from({ length: r.width }, (_, x) => r.ink(x, row))).map((run) => ({
      ...run,
      middle: run.from + run.length / 2,
    }));
  };
  const words = sheet.inks.find((ink) => ink.kind === 'text' && ink.text.startsWith('100 mm'));
  if (words?.kind !== 'text') throw new Error(`no bar on ${sheet.id}`);
  const [barX, barY] = words.at;
  // the bar lies 4 mm under its words; its lower half, which the marks on it don't reach
  const bar = runs(barY - 4 - 0.06).find(({ from }) => Math.abs(from / 10 - barX) < 0.5);
  const points = polygon(greatest(sheet, 'outline').chain, 0.01);
  const xs = points.map(([x]) => x);
  const tip = (x: number) => {
    // a straight tip is met in its middle, a round one where it goes farthest
    const ys = points.filter(([one]) => Math.abs(one - x) < 1e-6).map(([, y]) => y);
    const y = (Math.min(...ys) + Math.max(...ys)) / 2;
    const found = runs(y).find(({ middle, length }) => Math.abs(middle / 10 - x) < 1 && length < 8);
    if (!found) throw new Error(`no tip's line near ${x}, ${y} of ${sheet.id}`);
    return found.middle;
  };
  return { bar: (bar?.length ?? 0) / 10, tips: (tip(Math.max(...xs)) - tip(Math.min(...xs))) / 10 };
}
