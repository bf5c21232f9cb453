import type { Curves, Pin } from '../../../models/curves/curves.ts';

/** The pin that the section across goes through: the one nearest to the centre line, of two the left one. */
export function sectionPin({ pins }: Curves): Pin {
  return pins.reduce((best, pin) => {
    const [now, least] = [Math.abs(pin.at[0]), Math.abs(best.at[0])];
    return now < least - 1e-6 || (now < least + 1e-6 && pin.at[0] < best.at[0]) ? pin : best;
  });
}
