import { slotReach } from '../../models/curves/slotReach.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import type { MeasuredOff } from './measuredOff.ts';
import type { Workshop } from './workshop.ts';

/** How the slot lies otherwise than designed. */
export interface SlotAsCut {
  /** How much further back its middle lies, mm. */
  readonly back: number;
  /** How much more its angle is, degrees. */
  readonly turn: number;
  /** How much further back it lies at a place so far to the treble, the middle held, mm. */
  turnedBack(toTreble: number): number;
}

/**
 * How the slot lies, by what was measured last: the finished bridge's ends to the back edge (longer is nearer to the nut);
 * else the marks, and what the jig was set off them. The jig's shim turns the slot whatever was marked; its fence, set
 * further off, lets the cutter come as much nearer to it, the front side. An end that wasn't measured is as designed, or
 * beyond a measured middle. Plane geometry.
 */
export function slotAsCut(
  { curves, design }: AcceptedDesign,
  { jigLength }: Pick<Workshop, 'jigLength'>,
  off: MeasuredOff,
): SlotAsCut {
  const { slot } = curves;
  const cos = Math.cos(slot.angle);
  const slope = Math.tan((design.saddle.angle * Math.PI) / 180);
  const checked = ends(off('check.slot-treble'), off('check.slot-bass'), undefined);
  if (checked) return lying(checked, slotReach(curves) * cos, slope);
  const behindFront = off('marking.slot-middle');
  const marked = ends(
    off('marking.slot-treble'),
    off('marking.slot-bass'),
    behindFront === undefined ? undefined : -behindFront,
  );
  const line = lying(marked ?? { treble: 0, bass: 0 }, slot.halfLength * cos, slope);
  const back = line.back - (off('slot.fence') ?? 0);
  const shim = shimTurn(design.saddle.angle, jigLength, off);
  if (shim === undefined) return { ...line, back };
  const steeper = Math.tan(((design.saddle.angle + shim) * Math.PI) / 180) - slope;
  return { back, turn: shim, turnedBack: (toTreble) => -steeper * toTreble };
}

interface Ends {
  readonly treble: number;
  readonly bass: number;
}

/** How much nearer to the nut either end lies; undefined where nothing tells. */
function ends(
  treble: number | undefined,
  bass: number | undefined,
  middle: number | undefined,
): Ends | undefined {
  if (treble === undefined && bass === undefined) {
    return middle === undefined ? undefined : { treble: middle, bass: middle };
  }
  const beyond = (end: number) => (middle === undefined ? 0 : 2 * middle - end);
  return { treble: treble ?? beyond(bass as number), bass: bass ?? beyond(treble as number) };
}

/** @param half of the slot, across the guitar, mm */
function lying({ treble, bass }: Ends, half: number, slope: number): SlotAsCut {
  const steeper = (treble - bass) / (2 * half);
  return {
    back: -(treble + bass) / 2,
    turn: ((Math.atan(slope + steeper) - Math.atan(slope)) * 180) / Math.PI,
    turnedBack: (toTreble) => -steeper * toTreble,
  };
}

/** How much more the jig turns the slot, degrees. */
function shimTurn(angle: number, jigLength: number, off: MeasuredOff): number | undefined {
  const sign = angle < 0 ? -1 : 1;
  const [more, higher] = [off('slot.shim-angle'), off('slot.shim-height')];
  if (more !== undefined) return sign * more;
  if (higher === undefined) return undefined;
  const rise = Math.tan((Math.abs(angle) * Math.PI) / 180) + higher / jigLength;
  return sign * ((Math.atan(rise) * 180) / Math.PI - Math.abs(angle));
}
