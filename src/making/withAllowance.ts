import { type AcceptedDesign, acceptDesign } from '../design/acceptDesign.ts';
import type { DesignText, Typed } from '../design/design.ts';
import { DesignError } from '../design/problem.ts';

/**
 * A design with wood left on its top for sanding: crown, blends and wings stand `allowance` mm higher, measured upright.
 * Everything else is where the finished bridge has it: sides, glue face, the slot's walls and floor, pin holes with their
 * taper, and channels, so that sanding down to the crown brings their sizes out. Edge and bevels are cut on the raised top
 * as they will be on the finished one, to be cut again: wider bevels would run into each other in a close row. Nothing is
 * left to solve or to aim at, so that nothing moves.
 *
 * Derived. A slot that leans comes out of a higher top further back, by a·tan(tilt) square to it: outline and pins move
 * with it, in y alone, which leaves the slot's ends a·tan(tilt)·tan(angle) off along it, 0.02 mm at most.
 *
 * Throws `DesignError` when a design can't carry it.
 */
export function withAllowance(accepted: AcceptedDesign, allowance: number): AcceptedDesign {
  if (allowance === 0) return accepted;
  try {
    return acceptDesign(raised(accepted, allowance));
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    throw new DesignError(
      error.problems.map((problem) => ({
        ...problem,
        value: `${problem.value} with ${allowance} mm left for sanding`,
        remedy: `${problem.remedy} Or order it with less left for sanding, or none.`,
      })),
    );
  }
}

function raised({ text, design }: AcceptedDesign, a: number): DesignText {
  const { top, saddle, pins, footprint } = design;
  const radians = (degrees: number) => (degrees * Math.PI) / 180;
  const tilt = radians(saddle.tilt);
  const back = (a * Math.tan(tilt)) / Math.cos(radians(saddle.angle));
  const put = <G extends keyof typeof design>(
    group: G,
    values: Partial<Record<keyof DesignText[G], Typed>>,
  ) => ({
    ...text[group],
    ...values,
  });
  return {
    ...text,
    aim: put('aim', { of: 'none' }),
    footprint: put('footprint', {
      length: footprint.length,
      depthCentre: footprint.depthCentre,
      slotBehindFront: footprint.slotBehindFront + back,
    }),
    top: put('top', {
      thicknessBy: 'set',
      thickness: top.thickness + a,
      tip: top.tip + a,
      block: top.block,
    }),
    saddle: put('saddle', {
      angleBy: 'set',
      angle: saddle.angle,
      setbackBy: 'set',
      setback: saddle.setback,
      showingBy: 'set',
      showing: saddle.showing,
      depthBy: 'set',
      depth: saddle.depth + a / Math.cos(tilt),
    }),
    pins: put('pins', {
      behindSlot: pins.behindSlot - back,
      ...(pins.taper > 0 ? { mouth: pins.mouth + 2 * a * Math.tan(radians(pins.taper) / 2) } : {}),
      ...(pins.channel === 'none'
        ? {}
        : {
            channelDepth: pins.channelDepth + a,
            channelLength: pins.channelLength * (1 + a / pins.channelDepth),
          }),
    }),
  };
}
