/** Figures string by string, as page and command line set them: the first column in words, the others numbers. */
export interface MeaningTable {
  readonly title: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Measured values by the id of their setting. */
export type Measured = Readonly<Record<string, number>>;

/** What the measured values mean for one string. */
export interface StringMeaning {
  readonly note: string;
  /** How much higher its crown stands, mm. */
  readonly rise: number;
  /** Over the 12th fret, mm: as designed, and as it comes out. */
  readonly action: { readonly designed: number; readonly now: number };
  /** What the saddle must be for the action designed, on the bridge as measured, mm along it: over the top, foot to crown. */
  readonly saddle: { readonly showing: number; readonly height: number };
  /**
   * At the 12th fret, cents: as designed; as it comes out when the bridge is laid by the slot's middle; and when it is
   * laid by its back edge.
   */
  readonly cents: { readonly designed: number; readonly bySlot: number; readonly byEdge: number };
}

/** What the measured values mean, in figures. */
export interface MeaningFigures {
  readonly strings: readonly StringMeaning[];
  /** Of the bridge: how much thicker, and its slot deeper, than designed; of its blank, how much thicker than set. mm */
  readonly made: { readonly thicker: number; readonly deeper: number; readonly planed: number };
  /** How much further back than designed the slot's middle lies, mm, and how much more its angle is, degrees. */
  readonly slot: { readonly back: number; readonly turn: number };
  /** Bending stiffness of the block to that designed. */
  readonly stiffness: number;
  /** Least wood under the slot, mm. */
  readonly woodUnder: number;
  /** Of this piece of timber, kg/m³; undefined where its mass was not measured. */
  readonly density: number | undefined;
  /** How many of the measured values are outside their tolerance. */
  readonly outside: number;
}

/** What the measured values mean. */
export interface Meaning extends MeaningFigures {
  /** The same in words; empty where nothing was measured. */
  readonly text: readonly string[];
  /** What is said string by string; none where nothing was measured that tells. */
  readonly tables: readonly MeaningTable[];
}
