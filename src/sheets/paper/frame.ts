import type { Ink, Paper } from '../sheet.ts';
import type { Box } from './box.ts';
import { path } from './inks.ts';

/** Margin that every printer can keep clear, mm. */
export const MARGIN = 10;
/** Height of the title strip, mm. */
export const STRIP = 18;

/** The frame round everything on a sheet. */
export function frameBox({ width, height }: Pick<Paper, 'width' | 'height'>): Box {
  return { left: MARGIN, bottom: MARGIN, right: width - MARGIN, top: height - MARGIN };
}

/** What of the frame the title strip leaves. */
export function contentBox(paper: Pick<Paper, 'width' | 'height'>): Box {
  const frame = frameBox(paper);
  return { ...frame, bottom: frame.bottom + STRIP };
}

export function boxLines(box: Box, pen: 'frame' | 'detail' = 'frame'): Ink {
  return path(
    'frame',
    pen,
    [
      [box.left, box.bottom],
      [box.right, box.bottom],
      [box.right, box.top],
      [box.left, box.top],
    ],
    true,
  );
}
