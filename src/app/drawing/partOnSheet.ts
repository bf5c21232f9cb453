import { polygon } from '../../../models/curves/chain.ts';
import type { Point } from '../../../models/curves/segment.ts';
import type { Box } from './label.ts';
import type { Shape } from './shape.ts';
import type { ViewName } from './view.ts';

/** What a layout has to know of one view of the part, mm. */
export interface ViewExtent {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
  /** Outlines as closed polygons that stray less than a pixel: labels keep clear of them. */
  readonly outlines: readonly (readonly Point[])[];
}

export type PartExtent = Readonly<Record<ViewName, ViewExtent>>;

/** How far chords may stray from an outline, mm: about half a pixel on a large screen. */
const STRAY = 0.06;

/** The extent of every view's outlines. */
export function partExtent(shapes: readonly Shape[]): PartExtent {
  const of = (view: ViewName): ViewExtent => {
    const outlines = shapes
      .filter((s) => s.view === view && s.name === 'body')
      .map((s) => polygon(s.chain, STRAY));
    const points = outlines.flat();
    const [as, bs] = [points.map(([a]) => a), points.map(([, b]) => b)];
    return {
      outlines,
      left: Math.min(...as),
      right: Math.max(...as),
      low: Math.min(...bs),
      high: Math.max(...bs),
    };
  };
  return { plan: of('plan'), elevation: of('elevation'), section: of('section') };
}

/** The whole of a sheet, px. */
export function sheetBox(width: number, height: number): Box {
  return { left: 0, top: 0, right: width, bottom: height };
}
