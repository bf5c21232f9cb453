import type { Content } from '../paper/content.ts';
import { contentBox } from '../paper/frame.ts';
import { LEADING, noteLines, notes } from '../paper/notes.ts';
import { BAR, scaleBar } from '../paper/scaleBar.ts';
import { placed } from '../paper/view.ts';
import type { Ink, Paper, Typeface } from '../sheet.ts';
import type { Art } from './art.ts';
import { tiled } from './tiled.ts';

/** A template on one sheet, or on several with marks to join them by where it is too long for one. */
export function templateContents(art: Art, paper: Paper, typeface: Typeface): readonly Content[] {
  const frame = contentBox(paper);
  const room = frame.right - frame.left - BAR - 14;
  const foot = Math.max(12, LEADING * noteLines(art.notes, room, typeface) + 5);
  const area = {
    left: frame.left + 3,
    right: frame.right - 3,
    bottom: frame.bottom + foot,
    top: frame.top - 3,
  };
  const tiles = tiled(art, { width: area.right - area.left, height: area.top - area.bottom }, typeface);
  return tiles.map(({ inks, box, name }) => {
    const view = {
      scale: 1,
      x: (area.left + area.right - box.left - box.right) / 2,
      y: (area.bottom + area.top - box.bottom - box.top) / 2,
    };
    const under: readonly Ink[] = [
      ...notes(art.notes, [frame.left + 4, frame.bottom + foot - LEADING], room, typeface),
      ...scaleBar([frame.right - BAR - 5, frame.bottom + 4]),
    ];
    return {
      id: name === undefined ? art.id : `${art.id}-${name}`,
      title: name === undefined ? art.title : `${art.title}, part ${name}`,
      scale: 1,
      views: false,
      inks: [...placed(view, inks), ...under],
    };
  });
}
