import type { Holes } from '../models/curves/curves.ts';
import type { Drafter } from '../models/draft/draftMesh.ts';
import { acceptDesign } from '../src/design/acceptDesign.ts';
import type { DesignText } from '../src/design/design.ts';
import type { Draft } from './protocol.ts';

/** The quick mesh of a design. Throws `DesignError`. */
export function draft(drafter: Drafter, design: DesignText, holes: Holes): Draft {
  const started = performance.now();
  const { mesh, volumeMm3 } = drafter.draft(acceptDesign(design).curves, holes);
  return { mesh, volumeMm3, ms: performance.now() - started };
}
