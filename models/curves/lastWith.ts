/** The largest number up to `most` for which something holds that holds at 0 and, once it ends, holds no more. */
export function lastWith(holds: (n: number) => boolean, most: number): number {
  let [low, high] = [0, most];
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}
