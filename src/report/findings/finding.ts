import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';

/** What a design is judged by: itself, how it fits its guitar, and what it weighs. Made by `judgedOf`. */
export interface Judged {
  readonly accepted: AcceptedDesign;
  readonly report: FitReport;
  /** Of the wood, its pin holes reamed, g. Weighed when it is first asked for: it takes longer than all rules together. */
  readonly massG: number;
}

/** `error`: it can't work as designed; `warning`: beyond what is usual and sound; `note`: unusual, or good to know. */
export type Severity = 'error' | 'warning' | 'note';

/** A point of the part, mm. */
export type Spot = readonly [x: number, y: number, z: number];

/** One thing about a design that a builder should know before wood is cut. */
export interface Finding {
  /** Of its rule: stable, for programs. */
  readonly id: string;
  readonly severity: Severity;
  /** What was found and what it means, in a sentence or two. */
  readonly text: string;
  /** The number found, with its unit. */
  readonly found: string;
  /** What it is held against, in words: `at least 2 mm`. */
  readonly limit: string;
  /** Who says so. */
  readonly source: string;
  /** The field to look at. */
  readonly path: string;
  /** The field of the limit, when the builder may change it. */
  readonly limitPath?: string;
  /** Where on the part, as lines to be drawn over it; none when it is about the whole. */
  readonly place: readonly (readonly Spot[])[];
  /** Numbers of the design that may mend it, the most natural first. */
  readonly mends: readonly string[];
}
