import type { Paper } from '../../sheets/sheet.ts';

/**
 * While sheets are shown, printing gives them and nothing else, each filling a page of its own paper's size: so a
 * millimetre of the drawing is one on paper.
 */
export function PrintStyle({ paper: { width, height } }: { paper: Paper }) {
  return (
    <style>
      {`@page { size: ${width}mm ${height}mm; margin: 0; }
@media print { .page-paper { width: ${width}mm !important; height: ${height}mm !important; } }`}
    </style>
  );
}
