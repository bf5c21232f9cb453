import { PAPERS } from '../../sheets/sheet.ts';
import type { PapersChoice } from '../store/state.ts';

const KEY = 'pinbridge-papers';
const USUAL: PapersChoice = { paper: 'A4', units: 'mm' };

/** Paper and units as chosen before in this browser. */
export function rememberedPapers(): PapersChoice {
  try {
    const { paper, units } = Object(JSON.parse(localStorage.getItem(KEY) ?? 'null')) as {
      readonly paper?: unknown;
      readonly units?: unknown;
    };
    return {
      paper:
        typeof paper === 'string' && Object.hasOwn(PAPERS, paper)
          ? (paper as PapersChoice['paper'])
          : USUAL.paper,
      units: units === 'in' ? 'in' : 'mm',
    };
  } catch {
    // storage refused, or something else in its place: the usual will do
    return USUAL;
  }
}

export function rememberPapers(papers: PapersChoice): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(papers));
  } catch {
    // refused: it holds until the page is left
  }
}
