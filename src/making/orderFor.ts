import type { Design } from '../design/design.ts';
import { holeCuts } from './holes.ts';
import type { Order } from './order.ts';

/**
 * An order as it is for this design: a reamer that finds nothing to cut leaves the holes as drilled, whatever was ordered.
 * Names, titles and papers of an order are all by this.
 */
export function orderFor<O extends Pick<Order, 'holes'>>(design: Design, order: O): O {
  return holeCuts(design).travel > 0 ? order : { ...order, holes: 'drilled' };
}
