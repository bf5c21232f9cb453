import type { Curves } from '../../../models/curves/curves.ts';
import type { Telling } from '../viewport/section.ts';

/** Where a cut shows most: across through the pin nearest to the middle, lengthwise along the row of pins; mm. */
export function tellingCuts({ pins }: Curves): Telling {
  const [first] = pins;
  const last = pins[pins.length - 1];
  if (!first || !last) return {};
  const nearest = pins.reduce((best, pin) => (Math.abs(pin.at[0]) < Math.abs(best.at[0]) ? pin : best));
  return { x: nearest.at[0], y: (first.at[1] + last.at[1]) / 2 };
}
