import { sagitta } from '../../trade/sagitta.ts';
import { TOLERANCES } from '../../trade/tolerances.ts';
import type { Job } from '../job.ts';
import { length, type Setting, type Step } from '../step.ts';

/** A gap that no feeler gauge tells from a flat one within its tolerance, mm. */
const LEAST_GAP = 0.05;

/** Sanding the glue face to the soundboard. */
export function underside({ design, curves: { underside: glue }, face }: Job): Step {
  const { length: long, depthCentre } = design.footprint;
  const flat = glue.shape === 'flat';
  const gap = (name: string, label: string, chord: number, radius: number): Setting =>
    length(`underside.${name}`, label, sagitta(radius, chord), {
      formula: `R − √(R² − c²/4), R ${radius.toFixed(0)}, c ${chord}`,
      tolerance: TOLERANCES['glue-face'],
      decimals: 3,
    });
  return {
    id: 'underside',
    title: 'Underside',
    work: flat
      ? ['The glue face stays flat: true it on fine abrasive on a flat plate, in long even strokes.']
      : [
          glue.shape === 'sphere'
            ? 'Sand the glue face hollow on a domed block of this radius, turning the bridge end for end, until the whole face is scratched.'
            : 'Sand the glue face hollow along its length on a block arched to this radius, the arch’s ridge running front to back, until the whole face is scratched.',
          'The tips must not lose height: stop when the scratches reach them.',
        ],
    settings: [
      ...(glue.shape === 'flat'
        ? []
        : [
            length('underside.radius', 'Radius block', glue.radius, {
              formula: `as designed${design.underside.shape === 'follows' ? ': the soundboard’s' : ''}`,
              known: 'set',
              decimals: 0,
            }),
            gap('gap', 'Gap in the middle under a straightedge from tip to tip', long, glue.radius),
          ]),
      ...(glue.shape === 'sphere' && sagitta(glue.radius, depthCentre) >= LEAST_GAP
        ? [
            gap(
              'gap-across',
              'Gap in the middle under a straightedge front to back',
              depthCentre,
              glue.radius,
            ),
          ]
        : []),
      length('underside.thickness', 'Thickness beside the slot, on the centre line', face, {
        formula: `finished ${design.top.thickness} + ${(face - design.top.thickness).toFixed(2)} over the crown`,
        tolerance: TOLERANCES.crown,
      }),
    ],
    check: flat
      ? 'A straightedge shows no light along, across and from corner to corner.'
      : 'Straightedge and feeler gauge in the middle; then the bridge on the soundboard in its place: no light anywhere.',
    cautions: ['dust', 'first'],
    needs: flat
      ? ['flat plate', 'straightedge', 'calliper']
      : ['radius block', 'straightedge', 'feeler gauges', 'calliper'],
    template: flat ? undefined : 'gauges',
  };
}
