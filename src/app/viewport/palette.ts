/** The colours of the view, as written in CSS. `paper` is what a stale part fades into. */
export interface Palette {
  readonly paper: string;
  /** Edges of the exact solid, and of a draft. */
  readonly edge: string;
  readonly draftEdge: string;
  /** The edges of what is selected. */
  readonly mark: string;
  /** Where a finding is. */
  readonly found: string;
  /** The line around a cut, and its hatching. */
  readonly ink: string;
  /** Fresh wood in a cut. */
  readonly cut: string;
  /** Rosewood: its ground, its light and its dark streaks. */
  readonly wood: string;
  readonly woodLight: string;
  readonly woodDark: string;
  /** The same wood fresh from the cutter. */
  readonly woodFresh: string;
  /** Shadow on the board, and its centre lines. */
  readonly shadow: string;
  readonly centre: string;
  readonly shadowStrength: number;
  readonly exposure: number;
}

export const LIGHT: Palette = {
  paper: '#f6f3ec',
  edge: '#2b1a12',
  draftEdge: '#5c3d2e',
  mark: '#2b6fd1',
  found: '#e08a00',
  ink: '#22262b',
  cut: '#e6cfa6',
  wood: '#6f4a37',
  woodLight: '#8d6148',
  woodDark: '#3c251d',
  woodFresh: '#d6ad8a',
  shadow: '#4a3521',
  centre: '#8b8478',
  shadowStrength: 0.72,
  exposure: 1.15,
};

export const DARK: Palette = {
  paper: '#17191b',
  edge: '#20110b',
  draftEdge: '#4a2f22',
  mark: '#86b2ec',
  found: '#ffc14d',
  ink: '#1c140f',
  cut: '#d3b88b',
  wood: '#734d3a',
  woodLight: '#90644b',
  woodDark: '#3e271f',
  woodFresh: '#d6ad8a',
  shadow: '#000000',
  centre: '#6d7073',
  shadowStrength: 0.75,
  exposure: 1.1,
};
