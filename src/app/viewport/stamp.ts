/** What the shown mesh is: a draft, the exact solid, a part that the design has left behind, or nothing. */
export type Stamp = 'draft' | 'solid' | 'stale' | 'none';
