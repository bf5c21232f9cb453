import { topHeight } from '../../../models/curves/topHeight.ts';
import { sagitta } from '../../trade/sagitta.ts';
import { general, within } from '../../trade/tolerances.ts';
import type { Job } from '../job.ts';
import { AS_DESIGNED, angle, length, type Setting, type Step } from '../step.ts';

/** Sawing the wings down from the block and blending them into it. */
export function wings(job: Job): Step {
  const { design, workshop } = job;
  const machine = workshop.outline === 'machine';
  const hollow = design.top.wing === 'hollow';
  return {
    id: 'wings',
    title: 'Wings',
    work: [
      `${layTemplate(design.footprint)}, its lowest line’s ends at the glue face’s tips, or strike the saw line from the tip to where the blend begins.`,
      machine
        ? 'Saw outside the line on the bandsaw, the bridge on its glue face’s edge in a fixture; leave the blend full.'
        : 'Saw outside the line by hand, or plane the wing down across its ends; leave the blend full.',
      `Work the blend with a ${machine ? 'drum' : 'round file'} of its radius, ${hollow ? 'scrape the wing’s hollow down from the straight saw line' : 'file the run straight'}, and round the shoulder over into the crown.`,
    ],
    settings: lines(job),
    check:
      'Thickness at both tips with a calliper, and the template held against the edge: no light under it.',
    cautions: machine ? ['dust', 'machines', 'first'] : ['dust', 'first'],
    needs: machine
      ? ['bandsaw', 'fixture', 'drum sander', 'files', 'calliper']
      : ['fine saw', 'plane', 'round and flat files', 'scraper', 'calliper'],
    template: 'front',
  };
}

/** Seen square from the side, it lies flat on a straight edge alone. */
function layTemplate({ frontEdge, backEdge }: Job['design']['footprint']): string {
  if (frontEdge === 'straight') return 'Glue the template of crown and wings on the front edge';
  if (backEdge === 'straight') return 'Glue the template of crown and wings on the back edge';
  return 'Hold the template of crown and wings, cut out as a card, against the front edge and draw along it';
}

function lines({ design, curves: { profile }, left }: Job): readonly Setting[] {
  const { top, footprint } = design;
  const half = footprint.length / 2;
  const [tip, start] = [topHeight(profile, half), topHeight(profile, profile.runStart)];
  const run = half - profile.runStart;
  // a level run may fall by what binary fractions leave
  const rise = Math.max(0, start - tip);
  const more = left > 0 ? ` + ${left} for finishing` : '';
  const hollow = top.wing === 'hollow' ? profile.chain[profile.chain.length - 2] : undefined;
  return [
    angle('wings.angle', 'Saw line against the glue face', (Math.atan2(rise, run) * 180) / Math.PI, {
      formula: `atan(${rise.toFixed(2)} / ${run.toFixed(2)}), rise over run; a straightedge on the tips is its base`,
      tolerance: within(0.5, 'common practice'),
    }),
    length('wings.start', 'It begins at the blend, from the centre line', profile.runStart, {
      formula: 'where the blend touches the wing’s run',
      tolerance: general(profile.runStart),
    }),
    length(
      'wings.start-height',
      'Its height there over the level of the tips’ underside',
      rise + top.tip + left,
      {
        formula: `tip ${top.tip} + rise ${rise.toFixed(2)}${more}`,
        tolerance: within(0.2, 'common practice'),
      },
    ),
    length('wings.tip', 'Thickness at the tips', top.tip + left, {
      formula: `finished ${top.tip}${more}`,
      tolerance: within(0.2, 'common practice'),
    }),
    ...(hollow?.kind === 'arc'
      ? [
          length('wings.hollow', 'Radius of the hollow', hollow.radius, {
            formula: 'level at the tip, rising to where it meets the blend',
            decimals: 1,
          }),
          length(
            'wings.hollow-depth',
            'Deepest under the straight saw line',
            sagitta(hollow.radius, Math.hypot(run, rise)),
            { formula: 'sagitta over the saw line', tolerance: within(0.2, 'common practice') },
          ),
        ]
      : []),
    length('wings.blend', 'Radius of the blend', top.blend, { ...AS_DESIGNED, decimals: 1 }),
    length('wings.shoulder', 'Radius of the shoulder', top.shoulder, { ...AS_DESIGNED, decimals: 1 }),
  ];
}
