import { polygon } from '../../../models/curves/chain.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { topHeight } from '../../../models/curves/topHeight.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import { type Drawn, type Mark, type Pen, stroke, WIDTH } from '../picture/mark.ts';

/** Room round a picture, px. */
const SIDE = 4;
/** How far chords may stray from a curve, mm: less than a pixel. */
const STRAY = 0.05;
/** How many times heights are drawn larger than lengths, so that half a millimetre shows. */
export const HEIGHTS = 3;
/** Places at which heights are taken between the tips. */
const PLACES = 160;

/** The two designs as they are drawn over one another: back to front, the reference first. */
const PENS = [
  ['reference', 'hidden', 'hidden'],
  ['bench', 'outline', 'detail'],
] as const;

/** Outlines, slots and pin holes of two designs in plan, the middles of their slots on one another, the nut upward. */
export function planOverlay(bench: Curves, reference: Curves): Drawn {
  const outlines = [reference, bench].map(({ outline }) => polygon(outline, STRAY));
  const ys = outlines.flat().map(([, y]) => y);
  const scale = scaleOf(outlines.flat());
  const [top, low] = [Math.max(...ys), Math.min(...ys)];
  const at = ([x, y]: Point): Point => [WIDTH / 2 + scale * x, SIDE + scale * (top - y)];
  const marks = [reference, bench].flatMap((curves, k): readonly Mark[] => {
    const [name, outer, inner] = PENS[k] as (typeof PENS)[number];
    return [
      closed(`${name} outline`, outer, (outlines[k] as readonly Point[]).map(at)),
      closed(`${name} slot`, inner, slotOf(curves).map(at)),
      ...curves.pins.map(
        ({ at: middle, reach }, i): Mark => ({
          kind: 'ring',
          name: `${name} pin ${i + 1}`,
          pen: inner,
          at: at(middle),
          radius: scale * reach,
        }),
      ),
    ];
  });
  return { height: 2 * SIDE + scale * (top - low), marks: [...axes(at([0, top]), at([0, low])), ...marks] };
}

/**
 * Long profiles of two designs from the front, before their edges are rounded: top and glue face on the centre line, the
 * glue planes on one another, heights `HEIGHTS` times larger.
 */
export function profileOverlay(bench: Curves, reference: Curves): Drawn {
  const profiles = [reference, bench].map(profileOf);
  const scale = scaleOf(profiles.flat());
  const zs = profiles.flat().map(([, z]) => z);
  const [top, low] = [Math.max(...zs), Math.min(...zs)];
  const at = ([x, z]: Point): Point => [WIDTH / 2 + scale * x, SIDE + HEIGHTS * scale * (top - z)];
  const marks = profiles.map((profile, k) => {
    const [name, pen] = PENS[k] as (typeof PENS)[number];
    return closed(`${name} profile`, pen, profile.map(at));
  });
  return {
    height: 2 * SIDE + HEIGHTS * scale * (top - low),
    marks: [...axes(at([0, top]), at([0, low])), ...marks],
  };
}

/** px a millimetre of length: both pictures of two designs have the same. */
function scaleOf(points: readonly Point[]): number {
  return (WIDTH / 2 - SIDE) / Math.max(...points.map(([x]) => Math.abs(x)));
}

function closed(name: string, pen: Pen, points: readonly Point[]): Mark {
  return { kind: 'line', name, pen, points, closed: true };
}

function axes([x, top]: Point, [, low]: Point): readonly Mark[] {
  return [stroke('centre line', 'faint', [x, top - SIDE], [x, low + SIDE])];
}

/** The slot's plan on the top, mm. */
function slotOf({ slot }: Curves): readonly Point[] {
  const [c, s] = [Math.cos(slot.angle), Math.sin(slot.angle)];
  return polygon(slot.plan, STRAY).map(([u, v]): Point => [u * c - v * s, u * s + v * c]);
}

/** Top from left to right and glue face back again, (x, z) in mm. */
function profileOf({ outline, profile, underside }: Curves): readonly Point[] {
  const half = Math.max(...polygon(outline, STRAY).map(([x]) => x));
  const xs = Array.from({ length: PLACES + 1 }, (_, i) => half * ((2 * i) / PLACES - 1));
  return [
    ...xs.map((x): Point => [x, topHeight(profile, x)]),
    ...xs.reverse().map((x): Point => [x, undersideHeight(underside, x, 0)]),
  ];
}
