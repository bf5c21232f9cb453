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
  /** The slot's lean toward the pins; depth is along its walls. */
  readonly tilt: number;
}

export interface SolvedDepth {
  /** The depth to cut at the slot's middle, along its walls, mm. */
  readonly depth: number;
  /** Least depth at which half of the saddle stands in the slot under every string. */
  readonly forHalf: number;
  /** Greatest depth that leaves the wanted wood; negative when the bridge is thinner than that. */
  readonly forWood: number;
  /** Whether both can hold. When not, the wood has been kept and the half rule given up. */
  readonly both: boolean;
}

/**
 * The slot's depth by rule: the least at which half of the saddle's height stands in the slot under every string, so
 * that most wood is left; and where that would leave less wood under the slot than wanted, as deep as leaves it.
 * Common practice; the bridge can be mended with a lower saddle, not with less wood.
 */
export function slotDepthFor(needs: SlotNeeds): SolvedDepth {
  const lean = Math.cos((needs.tilt * Math.PI) / 180);
  const upright = needs.showings.map((showing, i) => Math.max(0, showing) + (needs.shallower[i] ?? 0));
  const forHalf = Math.max(0, ...upright) / lean;
  const forWood = (needs.woodAtNoDepth - needs.wood) / lean;
  return { depth: Math.max(0, Math.min(forHalf, forWood)), forHalf, forWood, both: forHalf <= forWood };
}
