import { general, TOLERANCES, within } from '../../trade/tolerances.ts';
import { depthFrom, type Job } from '../job.ts';
import { depthFromTouch, depthPasses, type SlotJig, slotJig } from '../slotJig.ts';
import { AS_DESIGNED, angle, count, length, type Setting, type Step } from '../step.ts';

/** What a slot with round ends may be longer, mm; a stop has half of it, outward. */
const LONGER = 0.3;
const AIR = 'own: the saddle may have air at its ends, never none';

/** Cutting the saddle slot into the flat blank. */
export function slot(job: Job): Step {
  const router = job.workshop.slot === 'router';
  return {
    id: 'slot',
    title: 'Saddle slot',
    work: router ? withRouter(job, slotJig(job)) : byHand(job),
    settings: [
      ...(router ? jigSettings(job, slotJig(job)) : []),
      ...bed(job),
      ...depths(job, router),
      ...sizes(job, router ? slotJig(job).width : job.curves.slot.width),
    ],
    check: `The saddle blank slides in by hand and does not lean. Depth in the middle${job.curves.slot.floorRadius === undefined ? ' and at both ends' : ''} with the calliper’s tail along the wall.`,
    // by hand only round ends are bored, with a machine too
    cautions: router || job.curves.slot.roundEnds ? ['dust', 'machines', 'first'] : ['dust', 'first'],
    needs: router
      ? ['router', 'flat-ended cutter', 'jig with rail, fence and stops', 'shim', 'calliper']
      : [
          'knife',
          'straightedge',
          ...(job.curves.slot.roundEnds ? ['hand drill', 'drill as wide as the slot'] : []),
          'fine saw',
          'chisel',
          'router plane or depth gauge',
        ],
    template: 'drilling',
  };
}

function withRouter({ design, curves, workshop }: Job, jig: SlotJig): readonly string[] {
  const { footprint } = design;
  const straight = (workshop.shimSide === 'front' ? footprint.frontEdge : footprint.backEdge) === 'straight';
  const edge = straight
    ? `the bridge’s ${workshop.shimSide} edge`
    : `a carrier board: the ${workshop.shimSide} edge is curved, so fix the bridge on a straight-edged board, its centre line square to that edge, and shim the board’s ${workshop.shimSide} edge`;
  const { slot } = curves;
  return [
    jig.thickEnd
      ? `Lay the shim between the jig’s rail and ${edge}, thick end to the ${jig.thickEnd}. The slot’s line then runs along the fence.`
      : `Set ${edge} against the jig’s rail: this slot is square to the centre line and needs no shim.`,
    ...(slot.tilt > 0
      ? [
          'Put a wedge under the bridge so that its back edge stands higher: the walls then stand upright under the cutter.',
        ]
      : []),
    'Set the fence on the front side and a stop at either end, screws and clamps clear of the base’s way. Feed the way in which the cutter draws the base to the fence.',
    jig.sidePasses === 1
      ? 'Cut to full depth in equal passes from stop to stop.'
      : `At each depth cut ${jig.sidePasses} passes side by side: the first with the base on the fence, each further one with one more strip between.${slot.roundEnds ? ' The slot’s corners come out with the cutter’s radius: ease the saddle’s ends to suit.' : ''}`,
    ...floorWords(slot.floorRadius),
  ];
}

function byHand({ curves: { slot } }: Job): readonly string[] {
  return [
    'Knife both walls deep along a straightedge, half the width either side of the slot’s line. Saw or chisel between the lines and take the floor down in even layers.',
    ...(slot.tilt > 0
      ? ['Guide saw and chisel by a block cut to the slot’s tilt, top toward the back edge.']
      : []),
    ...(slot.roundEnds ? ['Bore the two ends with a drill as wide as the slot first: they are round.'] : []),
    ...floorWords(slot.floorRadius),
  ];
}

function floorWords(radius: number | undefined): readonly string[] {
  return radius === undefined
    ? []
    : [
        'The floor runs parallel to the crown: cut level to the depth in the middle first, then take the floor down toward both ends with chisel and scraper, to the depth given there, by a gauge of the floor’s radius.',
      ];
}

function jigSettings({ workshop, curves }: Job, jig: SlotJig): readonly Setting[] {
  const { cutter, baseWidth, jigLength } = workshop;
  const { halfLength: half, roundEnds } = curves.slot;
  const outward = (size: number, share: number) =>
    roundEnds
      ? { minus: 0, plus: share * LONGER, ground: 'own: the slot’s length comes out of it' }
      : general(size);
  return [
    angle('slot.shim-angle', 'Shim angle', jig.shimAngle, {
      formula: 'as designed: the slot’s angle',
      known: 'set',
      tolerance: TOLERANCES['slot-angle'],
    }),
    length('slot.shim-height', `Shim rises over ${jigLength} mm`, jig.shimHeight, {
      formula: `${jigLength} × tan ${jig.shimAngle.toFixed(4)}°`,
      tolerance: within(
        jigLength * Math.tan((TOLERANCES['slot-angle'].plus * Math.PI) / 180),
        TOLERANCES['slot-angle'].ground,
      ),
    }),
    length('slot.fence', 'Fence, from the slot’s line to its face', jig.fence, {
      formula: `half the base, ${baseWidth}/2${jig.sidePasses > 1 ? `, + (slot ${jig.width} − cutter ${cutter.toFixed(3)})/2` : ''}`,
      tolerance: within(0.1, 'own: it places the slot'),
    }),
    ...(jig.sidePasses > 1
      ? [
          count('slot.side-passes', 'Passes side by side', jig.sidePasses, {
            formula: 'slot wider than the cutter; each overlaps the one before',
          }),
          length('slot.side-strip', 'Strip for each further one', jig.sideStrip, {
            formula: `(slot ${jig.width} − cutter ${cutter.toFixed(3)}) / ${jig.sidePasses - 1}`,
            tolerance: within(0.03, 'own: it makes the slot’s width'),
          }),
        ]
      : []),
    length('slot.stop', 'Stops, from the slot’s middle along it, each way', jig.stop, {
      formula: `half the slot ${half.toFixed(2)}${roundEnds ? ` − half the cutter ${(cutter / 2).toFixed(3)}` : ''} + half the base ${baseWidth / 2}`,
      tolerance: outward(jig.stop, 1 / 2),
    }),
    length('slot.stops-apart', 'Stop to stop', 2 * jig.stop, {
      formula: 'twice that',
      tolerance: outward(2 * jig.stop, 1),
    }),
    ...(jig.stopBeyond === undefined
      ? []
      : [
          length('slot.stop-beyond', 'Each stop beyond the slot’s end', jig.stopBeyond, {
            formula: 'half the base − half the cutter',
            tolerance: outward(jig.stopBeyond, 1 / 2),
          }),
        ]),
  ];
}

function bed({ design }: Job): readonly Setting[] {
  const { tilt } = design.saddle;
  if (tilt === 0) return [];
  const over = design.footprint.depthCentre;
  return [
    angle('slot.tilt', 'Slot leans toward the pins', tilt, {
      ...AS_DESIGNED,
      tolerance: within(0.5, 'own: half a degree moves a crown by less than 0.05 mm'),
    }),
    length('slot.bed-rise', 'Back edge raised over the front edge', over * Math.tan((tilt * Math.PI) / 180), {
      formula: `${over} × tan ${tilt}°, over the depth on the centre line`,
      tolerance: within(over * Math.tan((0.5 * Math.PI) / 180), 'half a degree'),
    }),
  ];
}

function depths(job: Job, router: boolean): readonly Setting[] {
  const { design, curves, workshop, face } = job;
  const total = depthFrom(job, face, 0);
  const over = face - design.top.thickness;
  const lean = curves.slot.tilt > 0 ? ` / cos ${design.saddle.tilt}°` : '';
  const { passes, step } = depthPasses(total, workshop.greatestPass);
  const { slot } = curves;
  const along = slot.roundEnds ? slot.halfLength : design.top.block / 2 / Math.cos(slot.angle);
  return [
    length('slot.depth', 'Total depth from the blank’s flat face, in the middle', total, {
      formula: `${design.saddle.depth} under the crown + ${over.toFixed(2)}${lean} that the face stands over it, along the walls`,
      tolerance: TOLERANCES['slot-depth'],
    }),
    ...(slot.floorRadius === undefined
      ? []
      : [
          length(
            'slot.depth-ends',
            slot.roundEnds ? 'The same at the slot’s ends' : 'The same where the block will end',
            depthFrom(job, face, along),
            {
              formula: `the floor falls with a radius of ${slot.floorRadius.toFixed(1)}, to ${along.toFixed(1)} from the middle`,
              tolerance: TOLERANCES['slot-depth'],
            },
          ),
        ]),
    ...(router && slot.tilt > 0
      ? [
          length('slot.touch', 'Depth from where the cutter first touches', depthFromTouch(job, total), {
            formula: 'total depth, and what the tilted face rises to the cutter’s edge toward the tail',
            tolerance: TOLERANCES['slot-depth'],
          }),
        ]
      : []),
    ...(router
      ? [
          count('slot.passes', 'Passes in depth', passes, {
            formula: `none deeper than ${workshop.greatestPass}, about 4 to 6`,
            known: 'practice',
          }),
          length('slot.pass', 'Each deeper by', step, { formula: 'total depth / passes' }),
        ]
      : []),
  ];
}

function sizes({ curves: { slot } }: Job, width: number): readonly Setting[] {
  return [
    length('slot.width', 'Width', width, {
      decimals: 3,
      formula:
        width === slot.width
          ? 'as designed'
          : `the cutter’s, as set in the workshop; ${slot.width} as designed: fit the saddle to it`,
      known: 'set',
      tolerance: TOLERANCES['slot-width'],
    }),
    ...(slot.roundEnds
      ? [
          length('slot.length', 'Length over its round ends', 2 * slot.halfLength, {
            ...AS_DESIGNED,
            tolerance: { minus: 0, plus: LONGER, ground: AIR },
          }),
        ]
      : []),
  ];
}
