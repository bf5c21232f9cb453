import { type Chain, nearestOn, type Point } from '../../../models/curves/segment.ts';

/** The place of a chain that lies nearest to a point, and how far it is, mm. */
export function nearestPlace(chain: Chain, p: Point): { readonly point: Point; readonly distance: number } {
  return chain
    .map((segment) => nearestOn(segment, p))
    .reduce((best, one) => (one.distance < best.distance ? one : best));
}
