/** How a formula or a number in it is known. `memory`: recalled and not looked up, so never shown as sourced. */
export type Known = 'read' | 'quoted' | 'memory' | 'derived' | 'practice';

/** One leg that a formula stands on. */
export interface Ground {
  readonly known: Known;
  /** What it is that is known in this way. */
  readonly what: string;
}

/** One formula of the trade, as it is shown beside the figures that come from it. */
export interface Formula {
  readonly name: string;
  readonly text: string;
  readonly grounds: readonly Ground[];
}

/** A leg of a formula, in short. */
export const ground = (known: Known, what: string): Ground => ({ known, what });
