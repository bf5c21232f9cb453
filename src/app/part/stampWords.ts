import type { ShownPart } from '../store/shownPart.ts';

/** Which part is on the screen, and how long it took: `exact solid, 0.31 s`. */
export function stampWords({ stamp, ms, trouble }: Pick<ShownPart, 'stamp' | 'ms' | 'trouble'>): string {
  switch (stamp) {
    case 'solid':
      return `exact solid${took(ms)}`;
    case 'draft':
      return trouble ? `draft${took(ms)}; no exact solid` : `draft${took(ms)}; the exact solid follows`;
    case 'stale':
      return 'the part shown is the last good design, not current';
    case 'none':
      return 'no part yet';
  }
}

function took(ms: number | undefined): string {
  return ms === undefined
    ? ''
    : `, ${ms < 1000 ? `${Math.max(1, Math.round(ms))} ms` : `${(ms / 1000).toFixed(2)} s`}`;
}
