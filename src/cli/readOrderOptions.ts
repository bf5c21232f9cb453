import { DesignError } from '../design/problem.ts';
import { readQuantity } from '../design/quantity.ts';
import { describe } from '../design/read.ts';
import { type Order, readOrder } from '../making/order.ts';
import { UseError } from './exit.ts';

/** An order's options as typed, by the fields that they fill. */
type Typed = Readonly<Record<keyof Order, string | undefined>>;

const OPTION: Readonly<Record<keyof Order, string>> = {
  quantity: '--quantity',
  deadline: '--deadline',
  remarks: '--remarks',
  holes: '--as',
  sandingAllowance: '--allowance',
};

/** An order from the options of the command line, placed on a day (ISO). Throws `UseError` with each that is wrong. */
export function readOrderOptions(typed: Typed, day: string): Order {
  const { quantity, sandingAllowance, ...others } = typed;
  if (quantity === undefined) throw new UseError('--quantity N is missing: how many pieces are wanted?');
  const given = {
    ...others,
    quantity: number(quantity, 'count'),
    sandingAllowance: sandingAllowance === undefined ? undefined : number(sandingAllowance, 'length'),
  };
  try {
    return readOrder(Object.fromEntries(Object.entries(given).filter(([, one]) => one !== undefined)), day);
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    const lines = error.problems.map(({ path, allowed }) => {
      const key = path.replace('order.', '') as keyof Order;
      return `${OPTION[key]} ${shown(typed[key] ?? '')}: it must be ${allowed}.`;
    });
    throw new UseError(lines.join('\n'));
  }
}

function number(typed: string, kind: 'count' | 'length'): number {
  const read = readQuantity(typed, kind);
  return read.ok ? read.value : Number.NaN;
}

/** What was typed, as far as a line has room and a terminal should hear it. */
function shown(typed: string): string {
  return typed === '' || typed.length > 60 || /\p{Cc}/u.test(typed) ? describe(typed) : typed;
}
