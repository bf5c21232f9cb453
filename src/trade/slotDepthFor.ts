/** What a slot's depth is solved from. Millimetres and degrees. */
export interface SlotNeeds {
  /** Under each string: what of the saddle shows over the top, upright. */
  readonly showings: readonly number[];
  /**
   * Under each string: how much less deep the slot is there than at its middle, upright. A flat floor under a crowned
   * top loses the crown's drop, a floor parallel to the crown nothing.
   */
  readonly shallower: readonly number[];
  /** Least wood that there would be under the floor if the slot had no depth; the thickness, for flat over flat. */
  readonly woodAtNoDepth: number;
  /** Wood wanted under the floor; 2–3 is common practice. */
  readonly wood: number;
  /** Share of the saddle's height that must stand in the slot, below 1; a half is common practice. */
  readonly held: number;
  /** The slot's lean toward the pins; depth is along its walls. */
  readonly tilt: number;
}

export interface SolvedDepth {
  /** The depth to cut at the slot's middle, along its walls, mm. */
  readonly depth: number;
  /** Least depth at which enough of the saddle stands in the slot under every string. */
  readonly forHold: number;
  /** Greatest depth that leaves the wanted wood; negative when the bridge is thinner than that. */
  readonly forWood: number;
  /** Whether both can hold. When not, the wood has been kept and the saddle's hold given up. */
  readonly both: boolean;
}

/**
 * The slot's depth by rule: the least at which the wanted share of the saddle's height stands in the slot under every
 * string, so that most wood is left; and where that would leave less wood under the slot than wanted, as deep as leaves it.
 * Common practice; the bridge can be mended with a lower saddle, not with less wood.
 */
export function slotDepthFor(needs: SlotNeeds): SolvedDepth {
  const lean = Math.cos((needs.tilt * Math.PI) / 180);
  // of what is held h shows (1 − h): in the slot stands h/(1 − h) of the showing
  const hold = needs.held / (1 - needs.held);
  const upright = needs.showings.map((showing, i) => Math.max(0, showing) * hold + (needs.shallower[i] ?? 0));
  const forHold = Math.max(0, ...upright) / lean;
  const forWood = (needs.woodAtNoDepth - needs.wood) / lean;
  return { depth: Math.max(0, Math.min(forHold, forWood)), forHold, forWood, both: forHold <= forWood };
}
