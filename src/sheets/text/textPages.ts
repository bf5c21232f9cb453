import { frameBox } from '../paper/frame.ts';
import type { Paper, Sheet } from '../sheet.ts';
import type { Row } from './row.ts';

interface Pages {
  /** Of the sheets: `job` gives `job-1`, `job-2` …, one page alone `job`. */
  readonly id: string;
  readonly title: string;
  readonly paper: Paper;
  readonly rows: readonly Row[];
  /** What stands over each page. */
  readonly head: (page: number, of: number) => Row;
}

/** Rows laid one below the other onto as many pages as they take, a head over each. */
export function textPages({ id, title, paper, rows, head }: Pages): readonly Sheet[] {
  const { top, bottom } = frameBox(paper);
  const room = top - bottom - head(1, 1).height;
  const pages = torn(rows, room);
  return pages.map((onPage, i) => {
    const above = head(i + 1, pages.length);
    let y = top - above.height;
    const body = onPage.flatMap((row) => {
      const inks = row.inks(y);
      y -= row.height;
      return inks;
    });
    return {
      id: pages.length === 1 ? id : `${id}-${i + 1}`,
      title,
      paper,
      scale: 1,
      inks: [...above.inks(top), ...body],
    };
  });
}

/** Rows by pages; those that are to stay together start a new one rather than be torn, as far as a page holds them. */
function torn(rows: readonly Row[], room: number): readonly (readonly Row[])[] {
  const pages: Row[][] = [[]];
  let left = room;
  const put = (row: Row) => {
    pages[pages.length - 1]?.push(row);
    left -= row.height;
  };
  const turn = (next: Row) => {
    pages.push([]);
    left = room;
    if (next.again) put(next.again);
  };
  for (const group of together(rows)) {
    // a new page parts enough
    if (group.every(({ blank }) => blank) && (total(group) > left || pages[pages.length - 1]?.length === 0))
      continue;
    const height = total(group);
    if (height > left && height <= room) turn(group[0] as Row);
    for (const row of group) {
      if (row.height > left && pages[pages.length - 1]?.length) turn(row);
      put(row);
    }
  }
  return pages;
}

function together(rows: readonly Row[]): readonly (readonly Row[])[] {
  const groups: Row[][] = [];
  let open = false;
  for (const row of rows) {
    if (open) groups[groups.length - 1]?.push(row);
    else groups.push([row]);
    open = row.keep ?? false;
  }
  return groups;
}

const total = (rows: readonly Row[]): number => rows.reduce((sum, { height }) => sum + height, 0);
