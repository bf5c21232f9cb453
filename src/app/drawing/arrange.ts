import { compose, isLegible, type Layout, type Pick } from './compose.ts';
import type { Dimension } from './dimension.ts';
import type { PartExtent } from './partOnSheet.ts';
import type { Size } from './placeViews.ts';

/** Dimensions may make the drawing smaller, but not below this share of what it could be without them. */
const LEAST_SHARE = 0.55;
/** A section that adds no dimension and costs none is still worth this share of the size without it. */
const WORTH = 0.88;

/**
 * The sheet for a drawing of this size: as many dimensions as can be read, the most wanted first, and the section where
 * it earns its room: a more wanted dimension is worth more than a larger drawing or several less wanted ones. The selected field's dimension is there whenever it can be at all. Undefined when there is no
 * room for the part itself.
 *
 * @param wanted the most wanted first
 */
export function arrange(
  size: Size,
  part: PartExtent,
  wanted: readonly Dimension[],
  selected: string | undefined,
): Layout | undefined {
  const layout = best(size, part, wanted);
  const isThere = (d: Dimension) => layout?.marks.some((m) => m.dimension === d);
  const missed = wanted.find((d) => d.path === selected && !isThere(d));
  if (!missed) return layout;
  return best(size, part, [missed, ...wanted.filter((d) => d !== missed)]);
}

function best(size: Size, part: PartExtent, wanted: readonly Dimension[]): Layout | undefined {
  const bare = compose(size, part, [], false);
  if (!bare) return undefined;
  const least = LEAST_SHARE * bare.views.plan.scale;
  const plain = fill(size, part, wanted, false, least) ?? bare;
  const sectioned = fill(size, part, wanted, true, least);
  if (!sectioned) return plain;
  const has = (layout: Layout, d: Dimension) => layout.marks.some((m) => m.dimension === d);
  const first = wanted.find((d) => has(sectioned, d) !== has(plain, d));
  if (first) return has(sectioned, first) ? sectioned : plain;
  const share = sectioned.views.plan.scale / plain.views.plan.scale;
  return share >= WORTH ? sectioned : plain;
}

/** Adds one dimension after another, each at the first of its places where all still can be read. */
function fill(
  size: Size,
  part: PartExtent,
  wanted: readonly Dimension[],
  withSection: boolean,
  least: number,
): Layout | undefined {
  const attempt = (picks: readonly Pick[]): Layout | undefined => {
    const layout = compose(size, part, picks, withSection);
    return layout && layout.views.plan.scale >= least && isLegible(layout, size, part) ? layout : undefined;
  };
  let layout = attempt([]);
  if (!layout) return undefined;
  let picks: readonly Pick[] = [];
  for (const dimension of wanted) {
    for (const place of dimension.places) {
      if (place.view === 'section' && !withSection) continue;
      const more = [...picks, { dimension, place }];
      const next = attempt(more);
      if (!next) continue;
      layout = next;
      picks = more;
      break;
    }
  }
  return layout;
}
