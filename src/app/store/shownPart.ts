import type { Draft, Failure, PartMesh, Solid } from '../../../workers/protocol.ts';
import { judge } from './judge.ts';
import type { AppState } from './state.ts';

/** Which part is on the screen, and how it stands to the design as typed. */
export interface ShownPart {
  readonly mesh: PartMesh | undefined;
  /** solid: exact and current; draft: quick and current, or about to be; stale: of an older design; none: no part yet. */
  readonly stamp: 'draft' | 'solid' | 'stale' | 'none';
  readonly ms: number | undefined;
  /** The exact solid, when it is the present design's. */
  readonly solid: Solid | undefined;
  /** Why the present design's draft or solid can't be had. */
  readonly trouble: Failure | undefined;
}

/** The best part that there is: the present design's exact solid, else its draft, else the last good one's. */
export function shownPart({ history, lastGood, session, part }: AppState): ShownPart {
  const good = judge(history.present).ok;
  const wanted = good ? history.present : lastGood?.text;
  const suits = (built: { readonly text: unknown; readonly holes: unknown } | undefined) =>
    built?.text === wanted && built?.holes === session.holes;
  const trouble = suits(part.trouble) ? part.trouble?.answer : undefined;

  if (suits(part.solid) && part.solid) {
    return shown(part.solid.answer, good ? 'solid' : 'stale', trouble, good ? part.solid.answer : undefined);
  }
  if (suits(part.draft) && part.draft) return shown(part.draft.answer, good ? 'draft' : 'stale', trouble);
  const last = part.newest && part[part.newest];
  if (!last) return { mesh: undefined, stamp: 'none', ms: undefined, solid: undefined, trouble };
  // its draft is on the way and follows within a frame or two, unless it was refused
  return shown(last.answer, good && !trouble ? 'draft' : 'stale', trouble);
}

function shown(
  answer: Draft | Solid,
  stamp: ShownPart['stamp'],
  trouble: Failure | undefined,
  solid?: Solid,
): ShownPart {
  return { mesh: answer.mesh, stamp, ms: answer.ms, solid, trouble };
}
