import { general } from '../../trade/tolerances.ts';
import type { Job } from '../job.ts';
import { length, type Setting, type Step } from '../step.ts';

/** How far outside the line is sawn, mm: common practice. */
const OUTSIDE = { machine: 1, hand: 1.5 } as const;

/** Sawing and working down to the outline. */
export function outline({ design: { footprint: f }, workshop, left }: Job): Step {
  const machine = workshop.outline === 'machine';
  const size = (name: string, label: string, value: number): Setting =>
    length(`outline.${name}`, label, value + 2 * left, {
      formula: `${value} finished + 2 × ${left} for finishing`,
      tolerance: general(value),
    });
  // the template's line is the finished outline
  const near = left > 0 ? `within ${left} mm of it` : 'it';
  const curved = f.frontEdge !== 'straight' || f.backEdge !== 'straight';
  return {
    id: 'outline',
    title: 'Outline',
    work: [
      'Draw a centre line square across the blank and down both edges. Glue the outline template on with its centre line on yours.',
      machine
        ? `Saw outside the line on the bandsaw, then sand to ${near} with the table square to the drum or disc.`
        : `Saw outside the line by hand, then file and scrape to ${near}, square to the faces.`,
      'Keep a straight edge truly straight: marking and jig are set from it.',
    ],
    settings: [
      length('outline.outside', 'Saw outside the line', OUTSIDE[workshop.outline], {
        formula: machine ? 'for a bandsaw' : 'for a hand saw',
        known: 'practice',
        decimals: 1,
      }),
      size('length', 'Length', f.length),
      size('depth', 'Depth on the centre line', f.depthCentre),
      ...(curved ? [size('wing', 'Depth at the wings', f.depthWing)] : []),
    ],
    check: 'Length and depths with a calliper, edges with a square against the lower face.',
    cautions: machine ? ['dust', 'machines', 'first'] : ['dust', 'first'],
    needs: machine
      ? ['bandsaw', 'sander', 'square', 'calliper']
      : ['hand saw', 'files', 'square', 'calliper'],
    template: 'outline',
  };
}
