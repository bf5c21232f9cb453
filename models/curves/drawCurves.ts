import type { Design } from '../../src/design/design.ts';
import { DesignError, type Problem } from '../../src/design/problem.ts';
import { channels } from './channels.ts';
import { clearances } from './clearances.ts';
import type { Curves } from './curves.ts';
import { levels, outline } from './outline.ts';
import { pins } from './pins.ts';
import { profile } from './profile.ts';
import { slot } from './slot.ts';
import { stringPlaces } from './strings.ts';
import { underside, undersideHeight } from './underside.ts';

/**
 * Draws everything about a bridge before it is solid. A design that can be drawn can be made: this is the one gate
 * that decides whether dimensions fit together. Throws `DesignError` with every problem that could be seen.
 */
export function drawCurves(design: Design): Curves {
  const problems: Problem[] = [];
  const attempt = <T>(draw: () => T): T | undefined => {
    try {
      return draw();
    } catch (error) {
      if (!(error instanceof DesignError)) throw error;
      problems.push(...error.problems);
      return undefined;
    }
  };
  const face = underside(design);
  const plan = attempt(() => outline(design.footprint));
  const at = levels(design.footprint);
  const tipMiddle = 'code' in at ? 0 : (at.frontWing + at.backWing) / 2;
  const top = attempt(() => profile(design, undersideHeight(face, design.footprint.length / 2, tipMiddle)));
  const places = attempt(() => stringPlaces(design));
  const cut = top && slot(design, top);
  const holes = top && attempt(() => pins(design, top, face));
  const ramps =
    top && cut && holes && places && attempt(() => channels(design, top, holes, places, cut.angle));
  if (!plan || !top || !cut || !holes || !ramps) throw new DesignError(problems);

  const { edge, edgeSize } = design.top;
  const curves: Curves = {
    outline: plan,
    profile: top,
    underside: face,
    edge: edge === 'none' ? { kind: 'none' } : { kind: edge, size: edgeSize },
    slot: cut,
    pins: holes,
    channels: ramps,
  };
  problems.push(...clearances(design, curves));
  if (problems.length > 0) throw new DesignError(problems);
  return curves;
}
