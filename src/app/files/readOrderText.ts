import type { Holes } from '../../../models/curves/curves.ts';
import { DesignError, type Problem } from '../../design/problem.ts';
import { readQuantity } from '../../design/quantity.ts';
import { type Order, readOrder } from '../../making/order.ts';
import type { OrderText } from '../store/state.ts';

export type ReadOrder =
  | { readonly ok: true; readonly order: Order }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** An order as typed, placed on a day (ISO): quantity and allowance as a person types them (`0.2`, `0.2 mm`, `1/64 in`). */
export function readOrderText(text: OrderText, holes: Holes, day: string): ReadOrder {
  const { quantity, sandingAllowance, deadline, remarks } = text;
  try {
    return {
      ok: true,
      order: readOrder(
        {
          quantity: number(quantity, 'count'),
          sandingAllowance: sandingAllowance.trim() === '' ? 0 : number(sandingAllowance, 'length'),
          deadline: deadline.trim(),
          remarks,
          holes,
        },
        day,
      ),
    };
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    return { ok: false, problems: error.problems };
  }
}

function number(typed: string, kind: 'count' | 'length'): number {
  const read = readQuantity(typed, kind);
  return read.ok ? read.value : Number.NaN;
}
