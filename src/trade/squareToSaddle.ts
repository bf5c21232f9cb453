/**
 * The part of one string's load that is square to its saddle, toward the nut: H′ = H·cos τ − V·sin τ. A saddle that leans
 * back by τ has its face's normal at (cos τ toward the nut, sin τ up), and the load is H toward the nut and V down. At 0
 * the load runs along the saddle into the slot's floor; negative, it tips the saddle back. Derived.
 *
 * @param down V, @param forward H: see `saddleLoad`, in one unit
 * @param tilt τ, degrees toward the pins
 */
export function squareToSaddle(down: number, forward: number, tilt: number): number {
  const lean = (tilt * Math.PI) / 180;
  return forward * Math.cos(lean) - down * Math.sin(lean);
}
