import { useMemo } from 'react';
import { useApp } from '../store/useApp.ts';
import type { SheetsChoice } from './press.ts';

/** How the sheets on the board are drawn: paper and units as chosen for all papers, holes as the part is seen. */
export function useSheetsChoice(): SheetsChoice {
  const papers = useApp(({ session }) => session.papers);
  const holes = useApp(({ session }) => session.holes);
  return useMemo(() => ({ ...papers, holes }), [papers, holes]);
}
