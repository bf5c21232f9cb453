import type { Drawn, Mark } from '../../../src/app/picture/mark.ts';

/** A mark of a picture by its name. */
export function markOf(drawn: Drawn, name: string): Mark {
  const mark = drawn.marks.find((one) => one.name === name);
  if (!mark) throw new Error(`no mark “${name}” among ${drawn.marks.map((one) => one.name).join(', ')}`);
  return mark;
}

/** A line's points. */
export function pointsOf(drawn: Drawn, name: string): readonly (readonly [number, number])[] {
  const mark = markOf(drawn, name);
  if (mark.kind !== 'line') throw new Error(`${name} is no line`);
  return mark.points;
}

/** Where a ring, a dot or a word stands. */
export function placeOf(drawn: Drawn, name: string): readonly [number, number] {
  const mark = markOf(drawn, name);
  if (mark.kind === 'line') throw new Error(`${name} is a line`);
  return mark.at;
}

/** Every point of every mark, and what its words cover at 7.3 px a character. */
export function extent(drawn: Drawn): { readonly xs: readonly number[]; readonly ys: readonly number[] } {
  const points = drawn.marks.flatMap((mark) => {
    if (mark.kind === 'line') return mark.points;
    const [x, y] = mark.at;
    if (mark.kind !== 'word')
      return [[x - mark.radius, y - mark.radius] as const, [x + mark.radius, y + mark.radius] as const];
    const width = 7.3 * [...mark.text].length;
    const left = mark.anchor === 'start' ? x : mark.anchor === 'end' ? x - width : x - width / 2;
    return [[left, y - 10] as const, [left + width, y + 2] as const];
  });
  return { xs: points.map(([x]) => x), ys: points.map(([, y]) => y) };
}
