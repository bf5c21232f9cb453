import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { jobOf } from './job.ts';
import type { Step } from './step.ts';
import { bevel } from './steps/bevel.ts';
import { blank } from './steps/blank.ts';
import { channels } from './steps/channels.ts';
import { check } from './steps/check.ts';
import { crown } from './steps/crown.ts';
import { drilling } from './steps/drilling.ts';
import { edge } from './steps/edge.ts';
import { finishing } from './steps/finishing.ts';
import { marking } from './steps/marking.ts';
import { outline } from './steps/outline.ts';
import { reaming } from './steps/reaming.ts';
import { saddle } from './steps/saddle.ts';
import { slot } from './steps/slot.ts';
import { thickness } from './steps/thickness.ts';
import { underside } from './steps/underside.ts';
import { wings } from './steps/wings.ts';
import type { Workshop } from './workshop.ts';

/**
 * In working order: whatever is marked or measured from a flat face or a square edge is cut while there is one. The last
 * check comes before the saddle, and reaming at set-up last.
 */
const ORDER = [
  blank,
  thickness,
  outline,
  marking,
  drilling,
  slot,
  underside,
  crown,
  wings,
  edge,
  bevel,
  channels,
  finishing,
  check,
  saddle,
  reaming,
] as const;

/**
 * The job by hand: every step with its settings worked out from this design and these tools, mm and degrees. What a
 * design doesn't have (a bevel, channels, a round-over, reamed holes) has no step. Throws `DesignError` when the
 * cutter is wider than the slot.
 */
export function jobByHand(accepted: AcceptedDesign, workshop: Workshop): readonly Step[] {
  const job = jobOf(accepted, workshop);
  return ORDER.flatMap((make) => make(job) ?? []).map(withAllergy);
}

/** Whose dust harms the lungs may make allergic too, wherever that dust is the bridge's wood: a saddle's is not. */
function withAllergy(step: Step): Step {
  if (step.id === 'saddle') return step;
  return { ...step, cautions: step.cautions.flatMap((id) => (id === 'dust' ? [id, 'allergy'] : [id])) };
}
