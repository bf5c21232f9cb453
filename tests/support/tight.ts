import type { Point } from '../../models/curves/segment.ts';
import { type OrientedBox, runsThrough } from '../../src/sheets/paper/box.ts';
import { TEXT } from '../../src/sheets/paper/inks.ts';
import type { Sheet, Typeface } from '../../src/sheets/sheet.ts';
import { labelBoxes } from './labelBoxes.ts';

/** A dimension's text stands as far over its own line, or beside it, mm. */
const OWN = [0.8, 1.2];

/** Dimension lines: straights between two arrowheads, or past both. */
function dimensionLines({ inks }: Sheet): readonly (readonly [Point, Point])[] {
  const lines = inks.flatMap((ink) =>
    ink.kind === 'line' && ink.layer === 'dimensions' && ink.fill === undefined && ink.chain.length === 1
      ? [[ink.chain[0]?.from ?? [0, 0], ink.chain[0]?.to ?? [0, 0]] as const]
      : [],
  );
  const tips = inks.flatMap((ink) =>
    ink.kind === 'line' && ink.layer === 'dimensions' && ink.fill === 'ink' ? [ink.chain[0]?.from] : [],
  );
  return lines.filter(
    (line) => tips.filter((tip) => tip !== undefined && offLine(tip, line) < 1e-6).length > 1,
  );
}

function offLine(p: Point, [a, b]: readonly [Point, Point]): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy);
}

/** Dimensions' texts that stand nearer to another dimension's line than half their height. */
export function tight(sheet: Sheet, typeface: Typeface): readonly string[] {
  const lines = dimensionLines(sheet);
  return labelBoxes(sheet, typeface).flatMap(({ text, box }) => {
    if (text.layer !== 'dimensions') return [];
    const air = TEXT / 2 - 0.01;
    const wide: OrientedBox = {
      ...box,
      halfLength: box.halfLength + air,
      halfHeight: box.halfHeight + air,
    };
    const near = lines.filter((line) => runsThrough(wide, ...line) && !isOwn(text, line));
    return near.map(() => `${sheet.id} on ${sheet.paper.name}: “${text.text}” up against another's line`);
  });

  function isOwn(text: { readonly at: Point; readonly angle: number }, [a, b]: readonly [Point, Point]) {
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const off = Math.abs((b[0] - a[0]) * (text.at[1] - a[1]) - (b[1] - a[1]) * (text.at[0] - a[0])) / long;
    return OWN.some((own) => Math.abs(off - own) < 1e-6);
  }
}
