import type { Point, Segment } from '../../../models/curves/segment.ts';
import type { Ink } from '../sheet.ts';

/** How a drawing in the part's millimetres stands on paper: its scale, and where its origin lies, mm. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export function onPaper({ scale, x, y }: View, [a, b]: Point): Point {
  return [x + scale * a, y + scale * b];
}

/** Inks drawn in the part's millimetres, as they stand on paper. Text keeps its height. */
export function placed(view: View, inks: readonly Ink[]): readonly Ink[] {
  const at = (p: Point) => onPaper(view, p);
  return inks.map((ink): Ink => {
    if (ink.kind === 'text') return { ...ink, at: at(ink.at) };
    if (ink.kind === 'circle') return { ...ink, centre: at(ink.centre), radius: view.scale * ink.radius };
    return { ...ink, chain: ink.chain.map((s) => placedSegment(s, view)) };
  });
}

export function placedSegment(s: Segment, view: View): Segment {
  const ends = { from: onPaper(view, s.from), to: onPaper(view, s.to) };
  return s.kind === 'line'
    ? { ...s, ...ends }
    : { ...s, ...ends, centre: onPaper(view, s.centre), radius: view.scale * s.radius };
}
