import type { Point } from '../../models/curves/segment.ts';
import { type Box, type OrientedBox, overlap, runsThrough } from '../../src/sheets/paper/box.ts';
import { inkLines } from '../../src/sheets/paper/inkLines.ts';
import type { Sheet, Typeface } from '../../src/sheets/sheet.ts';
import { labelBoxes } from './labelBoxes.ts';

/** Places of the views on a sheet: boxes round outlines that reach into each other. */
function viewBoxes({ inks }: Sheet): readonly Box[] {
  const all = inks.flatMap((ink): Box[] => {
    if (ink.kind === 'text' || ink.pen !== 'outline') return [];
    const points = inkLines(ink).flat();
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
    return [{ left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) }];
  });
  // the largest first: what lies in it is of it
  const size = (b: Box) => (b.right - b.left) * (b.top - b.bottom);
  const views: Box[] = [];
  for (const box of [...all].sort((a, b) => size(b) - size(a))) {
    const i = views.findIndex(
      (v) => box.left < v.right && v.left < box.right && box.bottom < v.top && v.bottom < box.top,
    );
    const view = views[i];
    if (!view) views.push(box);
    else
      views[i] = {
        left: Math.min(view.left, box.left),
        right: Math.max(view.right, box.right),
        bottom: Math.min(view.bottom, box.bottom),
        top: Math.max(view.top, box.top),
      };
  }
  return views;
}

const off = ([x, y]: Point, b: Box) =>
  Math.hypot(Math.max(b.left - x, 0, x - b.right), Math.max(b.bottom - y, 0, y - b.top));

const oriented = (b: Box): OrientedBox => ({
  centre: [(b.left + b.right) / 2, (b.bottom + b.top) / 2],
  along: [1, 0],
  halfLength: (b.right - b.left) / 2,
  halfHeight: (b.top - b.bottom) / 2,
});

/** Leaders whose line, shelf or text lies on another view than the one they point at, or hugs it. */
export function strayed(sheet: Sheet, typeface: Typeface): readonly string[] {
  const views = viewBoxes(sheet);
  const labels = labelBoxes(sheet, typeface);
  return sheet.inks.flatMap((ink) => {
    if (ink.kind !== 'line' || ink.layer !== 'dimensions' || ink.closed || ink.chain.length !== 2) return [];
    const [slant, shelf] = ink.chain;
    if (slant?.kind !== 'line' || shelf?.kind !== 'line' || shelf.from[1] !== shelf.to[1]) return [];
    const [least, most] = [Math.min(shelf.from[0], shelf.to[0]), Math.max(shelf.from[0], shelf.to[0])];
    const own = labels.find(
      ({ text }) =>
        Math.abs(text.at[1] - shelf.from[1] - 0.8) < 1e-6 &&
        text.at[0] > least - 0.1 &&
        text.at[0] < most + 0.1,
    );
    const home = [...views].sort((a, b) => off(slant.from, a) - off(slant.from, b))[0];
    const air = 1;
    return views
      .filter((view) => view !== home)
      .map(({ left, right, bottom, top }) =>
        oriented({ left: left - air, right: right + air, bottom: bottom - air, top: top + air }),
      )
      .filter(
        (view) =>
          (own && overlap(own.box, view)) || ink.chain.some(({ from, to }) => runsThrough(view, from, to)),
      )
      .map(() => `${sheet.id} on ${sheet.paper.name}: “${own?.text.text}” lies on another view`);
  });
}
