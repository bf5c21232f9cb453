import { TOLERANCES, within } from '../../trade/tolerances.ts';
import { holeCuts } from '../holes.ts';
import type { Job } from '../job.ts';
import { AS_DESIGNED, angle, length, type Step } from '../step.ts';

/** Reaming the pin holes at set-up; nothing where holes stay as drilled. */
export function reaming({ design, workshop }: Job): Step | undefined {
  const { pins } = design;
  const { travel, taper, foot, inside } = holeCuts(design);
  if (travel === 0) return undefined;
  const byDepth = workshop.reamBy === 'depth';
  // the bevel cuts away the taper's mouth: what can be measured is the ring's inside
  const mouth =
    inside === undefined
      ? length('reaming.mouth', 'Diameter at the surface', pins.mouth, {
          ...AS_DESIGNED,
          tolerance: TOLERANCES.mouth,
        })
      : length('reaming.mouth', 'Diameter inside the bevel’s ring', inside, {
          formula: `where bevel and taper meet; the taper carried up to the surface has ${pins.mouth.toFixed(2)}`,
          tolerance: TOLERANCES.mouth,
        });
  const depth = length('reaming.depth', 'How far the reamer goes on from its first touch', travel, {
    formula: `(${pins.mouth} − drill ${pins.drill.toFixed(2)}) / ${taper.toFixed(4)}${foot > 0 ? ` − ${foot.toFixed(2)} that the bevel’s foot lies deep` : ''}`,
    tolerance: within(TOLERANCES.mouth.plus / taper, TOLERANCES.mouth.ground),
  });
  return {
    id: 'reaming',
    title: 'Reaming, at set-up',
    work: [
      byDepth
        ? 'With the bridge glued: turn the reamer by hand until it just touches, set a collar on it this much over the surface, and ream down to the collar.'
        : 'With the bridge glued: ream by hand, a turn at a time, and try with a pin and the string’s end in, until the pin’s collar sits as it shall. Mark the reamer for the other holes.',
      'Strings in their place first tell how much is needed: it is easily too much.',
    ],
    settings: [
      ...(byDepth ? [depth, mouth] : [mouth, depth]),
      angle('reaming.angle', 'Reamer’s included angle', pins.taper, {
        formula: 'as designed: the pins’',
        known: 'set',
        decimals: 1,
      }),
      length('reaming.tenth', 'Depth for 0.1 mm of diameter', 0.1 / taper, {
        formula: `0.1 / (2·tan(${pins.taper}°/2))`,
        decimals: 3,
      }),
    ],
    check: 'Each pin stands alike over the surface, by eye along the row and by calliper.',
    cautions: ['dust', 'strings', 'first'],
    needs: byDepth ? ['reamer', 'collar', 'pins'] : ['reamer', 'pins', 'calliper'],
    template: undefined,
  };
}
