import { within } from '../../trade/tolerances.ts';
import { holeCuts } from '../holes.ts';
import type { Job } from '../job.ts';
import { AS_DESIGNED, angle, length, type Step } from '../step.ts';

/** Countersinking the pin holes before they are reamed; nothing without a bevel. */
export function bevel({ design, workshop, left }: Job): Step | undefined {
  const { pins } = design;
  if (pins.bevel === 'none') return undefined;
  const cuts = holeCuts(design);
  const cut = cuts.bevelOn(left);
  const press = workshop.drill === 'press';
  const off = within(0.15, 'own: the eye compares the rings with each other');
  return {
    id: 'bevel',
    title: 'Bevels',
    work: [
      press
        ? 'Countersink every hole to one depth stop, turning slowly; try the stop on scrap first.'
        : 'Turn a countersink by hand, as many turns in every hole, and look at each from above.',
      ...(cuts.travel > 0
        ? [
            'Reaming leaves the bevel’s outside as it is and narrows its ring from within: cut the ring wider than it shall be.',
          ]
        : []),
    ],
    settings: [
      length('bevel.diameter', 'Countersink to', cut, {
        ...(left > 0
          ? {
              formula: `${pins.bevelDiameter} wanted + what finishing takes off a ${pins.bevelAngle}° cone, 2 × ${left} × tan ${pins.bevelAngle / 2}°`,
            }
          : AS_DESIGNED),
        tolerance: off,
      }),
      angle('bevel.angle', 'Countersink’s angle', pins.bevelAngle, { ...AS_DESIGNED, decimals: 0 }),
      length('bevel.ring', 'Ring before reaming', (cut - pins.drill) / 2, {
        formula: `(${cut.toFixed(2)} − drill ${pins.drill.toFixed(2)}) / 2`,
        tolerance: off,
      }),
      ...(cuts.travel > 0
        ? [
            length('bevel.ring-left', 'Ring left after finishing and reaming', cuts.ring.reamed, {
              formula: `from ${pins.bevelDiameter} to where the bevel meets the taper`,
            }),
          ]
        : []),
    ],
    check: 'Diameter of every bevel with the calliper’s jaws, along the bridge: all alike.',
    cautions: press ? ['dust', 'machines', 'first'] : ['dust', 'first'],
    needs: press ? ['drill press', 'countersink', 'fixture'] : ['hand countersink', 'calliper'],
    template: undefined,
  };
}
