import type { Holes } from '../models/curves/curves.ts';
import type { PartMesh } from '../models/mesh/partMesh.ts';
import type { SolidFigures } from '../models/solid/solidFigures.ts';
import type { DesignText } from '../src/design/design.ts';
import type { Problem } from '../src/design/problem.ts';

export type { PartMesh, SolidFigures };

export interface Draft {
  readonly mesh: PartMesh;
  readonly volumeMm3: number;
  readonly ms: number;
}

export interface Solid {
  readonly mesh: PartMesh;
  readonly figures: SolidFigures;
  readonly ms: number;
  /** Whether the kernel cut with several threads. */
  readonly threads: boolean;
}

export interface FileOptions {
  readonly format: 'step' | 'stl';
  readonly holes: Holes;
  /** STEP only. */
  readonly schema?: 'AP214' | 'AP242';
  /** STL only: how far a facet may stray from the surface, mm. */
  readonly deviationMm?: number;
  /** STEP only: the time that stands in its header, if not that of writing. */
  readonly written?: Date;
  /** What the file is called after, if not the design's name. */
  readonly name?: string;
}

/**
 * How far an STL's facets may stray from the surface. Usually finer than a mill leaves the wood, in a few hundred kB;
 * finer than the least takes the kernel minutes and the reader's memory, coarser than the most loses the bevels.
 */
export const DEVIATION_MM = { least: 0.001, usual: 0.02, most: 1 } as const;

export interface WrittenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What can be asked of the two workers, by name. */
export interface Calls {
  /** draft worker */
  draft: { readonly ask: { readonly design: DesignText; readonly holes: Holes }; readonly answer: Draft };
  /** geometry worker */
  solid: { readonly ask: { readonly design: DesignText; readonly holes: Holes }; readonly answer: Solid };
  /** geometry worker */
  file: {
    readonly ask: { readonly design: DesignText; readonly options: FileOptions };
    readonly answer: WrittenFile;
  };
  /** geometry worker: of the exact solid as `solid` has it, for files that are written of triangles */
  mesh: {
    readonly ask: { readonly design: DesignText; readonly holes: Holes };
    readonly answer: { readonly mesh: PartMesh };
  };
}

export type Call = keyof Calls;
export type GeometryCall = 'solid' | 'file' | 'mesh';
export type DraftCall = 'draft';

/**
 * What a newer request of the same call does to the older ones.
 * - `replaces`: they are abandoned, waiting or under way: only the newest is wanted.
 * - `replaces waiting`: one under way still answers, so that a steady stream of changes keeps the picture moving.
 * - `joins the queue`: none is dropped.
 */
export const NEWER: Readonly<Record<Call, 'replaces' | 'replaces waiting' | 'joins the queue'>> = {
  draft: 'replaces waiting',
  solid: 'replaces',
  file: 'joins the queue',
  mesh: 'joins the queue',
};

/** A geometry worker of this name loads the single-thread kernel wherever it is. */
export const ONE_THREAD = 'geometry, one thread';

/** Read between the steps of a long piece of work: whether its answer is still wanted. */
export interface Signal {
  readonly abandoned: boolean;
}

export type Request<C extends Call = Call> = {
  [K in C]: { readonly id: number; readonly call: K; readonly ask: Calls[K]['ask'] };
}[C];

/** Why a request got no answer. */
export type Failure =
  /** The design can't be made: `problems` say why. The kernel was not asked. */
  | { readonly kind: 'design'; readonly problems: readonly Problem[] }
  /** A newer request of the same call took its place. */
  | { readonly kind: 'superseded' }
  /** The solid kernel, or the gate on its result, refused: never shown, never written. */
  | { readonly kind: 'kernel'; readonly message: string }
  /** The worker crashed, hung or was restarted. */
  | { readonly kind: 'stopped'; readonly message: string };

/** What a worker says. `heapBytes`: memory its kernel holds; it only ever grows. */
export type Reply<C extends Call = Call> =
  /** It has loaded and takes requests. `threads`: whether its kernel cuts with several. */
  | { readonly kind: 'ready'; readonly threads: boolean; readonly heapBytes: number }
  /** It has built once for itself, since first builds are slow. */
  | { readonly kind: 'warm'; readonly heapBytes: number }
  /** Work on this request begins now: from here a hang is counted. */
  | { readonly kind: 'taken'; readonly id: number }
  | {
      readonly kind: 'answer';
      readonly id: number;
      readonly answer: Calls[C]['answer'];
      readonly heapBytes: number;
    }
  | { readonly kind: 'refused'; readonly id: number; readonly failure: Failure; readonly heapBytes: number }
  /** It can't go on, or couldn't start: only a new worker helps. `message` follows what it makes: "broke off (…)". */
  | { readonly kind: 'broken'; readonly message: string };
