import type { Curves } from '../../models/curves/curves.ts';
import { curvesBox } from '../../models/curves/curvesBox.ts';
import { type Levels, levels } from '../../models/curves/outline.ts';
import type { Point } from '../../models/curves/segment.ts';
import { handSign, slotFloor, slotToPart } from '../../models/curves/slot.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import type { Design } from '../design/design.ts';
import { DesignError } from '../design/problem.ts';
import { type Crown, crowns } from '../trade/fit/crowns.ts';
import type { Fit } from '../trade/fit/placeDesign.ts';
import { type SaddleFit, saddleFit } from '../trade/fit/saddleFit.ts';
import type { Workshop } from './workshop.ts';

/** A design on the bench: what every step reads. Lengths in mm. */
export interface Job {
  readonly design: Design;
  readonly curves: Curves;
  readonly fit: Fit;
  readonly saddle: SaddleFit;
  readonly crowns: readonly Crown[];
  readonly workshop: Workshop;
  readonly edges: Levels;
  /** z of the blank's flat lower face: the lowest point of the underside. */
  readonly low: number;
  /** z of the blank's flat upper face. */
  readonly face: number;
  /** Left on top and edges for finishing. */
  readonly left: number;
}

/** The job of a design in a workshop. Throws `DesignError` for a cutter wider than the slot. */
export function jobOf({ design, curves, fit }: AcceptedDesign, workshop: Workshop): Job {
  const { slotWidth } = design.saddle;
  if (workshop.slot === 'router' && workshop.cutter > slotWidth + 1e-6) {
    throw new DesignError([
      {
        code: 'does-not-fit',
        path: 'workshop.cutter',
        value: `${Math.round(workshop.cutter * 1000) / 1000}`,
        allowed: `at most ${slotWidth} mm in this slot`,
        remedy: 'Take a narrower cutter, or cut the slot by hand.',
      },
    ]);
  }
  const edges = levels(design.footprint);
  // a design that was accepted has its edges
  if ('code' in edges) throw new DesignError([edges]);
  return {
    design,
    curves,
    fit,
    saddle: saddleFit(design, curves, fit),
    crowns: crowns(design, fit),
    workshop,
    edges,
    low: curvesBox(curves)[2],
    face: design.top.thickness + workshop.topAllowance,
    left: workshop.finishAllowance,
  };
}

/** Which end of the slot, u = ±half its length, lies to the treble. */
export function trebleSign({ design }: Job): 1 | -1 {
  return handSign(design);
}

/**
 * A point of the slot's middle in plan at u along it, where the plane between its walls comes out of a level face z:
 * a tilted slot lies further back on a higher face.
 */
export function slotOn({ curves: { slot, profile } }: Job, u: number, z: number): Point {
  const up = (z - profile.thickness) / Math.cos(slot.tilt);
  const [x, y] = slotToPart(slot, profile.thickness, u, 0, up);
  return [x, y];
}

/** Depth along the slot's walls from a level face z to its floor, at u along its middle, mm. */
export function depthFrom({ curves: { slot, profile } }: Job, z: number, u: number): number {
  return (z - profile.thickness) / Math.cos(slot.tilt) - slotFloor(slot, u);
}
