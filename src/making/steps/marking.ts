import { TOLERANCES } from '../../trade/tolerances.ts';
import { type Job, slotOn, trebleSign } from '../job.ts';
import { AS_DESIGNED, length, type Setting, type Step } from '../step.ts';

/** Pin line, pins and slot, marked from the centre line and the back edge with square and straightedge. */
export function marking(job: Job): Step {
  const { design } = job;
  return {
    id: 'marking',
    title: 'Marking',
    work: [
      'Lay the square on the centre line. Every distance from the back edge is taken along the centre line, from where that line meets the back edge, and carried out square to it; every distance from the centre line is taken square to it.',
      'Knife the pin places and prick their centres. Knife the slot’s line by a straightedge through the marks of its two ends, and check that it passes its middle on the centre line.',
      ...(design.guitar.hand === 'left'
        ? ['This is a left-handed bridge: seen from above with the back edge toward you, treble is left.']
        : ['Seen from above with the back edge toward you, treble is right.']),
    ],
    settings: [...pinMarks(job), ...slotMarks(job)],
    check: 'Pin centres with a rule along their line; the slot’s ends from the back edge with a calliper.',
    cautions: [],
    needs: ['square', 'straightedge', 'knife', 'rule', 'calliper'],
    template: 'drilling',
  };
}

function pinMarks({ design, curves, fit, edges, left }: Job): readonly Setting[] {
  const { pins } = design;
  const sayEdge = left > 0 ? ` + ${left} left on the edge` : '';
  const level = pins.line === 'square' && pins.rows === 'one';
  const fromBack = (y: number) => y - edges.backMiddle + left;
  const line: readonly Setting[] = [
    length(
      'marking.pin-line',
      'Pin line, back edge to where it crosses the centre line',
      fromBack(-pins.behindSlot),
      {
        formula: `on the centre line, finished ${(-pins.behindSlot - edges.backMiddle).toFixed(2)}${sayEdge}`,
        tolerance: TOLERANCES['pin-place'],
      },
    ),
    length('marking.pin-spread', 'First to last pin, along their line', pins.spread, {
      ...AS_DESIGNED,
      tolerance: TOLERANCES['pin-place'],
    }),
    ...(pins.spacing === 'equal'
      ? [
          length('marking.pin-step', 'Pin to pin, along their line', pins.spread / (curves.pins.length - 1), {
            formula: `${pins.spread} / ${curves.pins.length - 1}; step it off from the first to the last, errors then don’t add up`,
            tolerance: TOLERANCES['pin-place'],
          }),
        ]
      : []),
    ...(pins.rows === 'two'
      ? [
          length('marking.row-gap', 'Front row to back row', pins.rowGap, {
            formula: 'as designed, square to the pins’ line; every second pin stands in the back row',
            known: 'set',
            tolerance: TOLERANCES['pin-place'],
          }),
        ]
      : []),
  ];
  const each = curves.pins.flatMap(({ at: [x, y] }, i): readonly Setting[] => {
    const name = `Pin ${i + 1} (${fit.strings[i]?.note ?? ''})`;
    const across = length(
      `marking.pin-${i + 1}`,
      `${name}, from the centre line${sideOf(x, design)}`,
      Math.abs(x),
      {
        formula: 'square to the centre line',
        tolerance: TOLERANCES['pin-place'],
      },
    );
    if (level) return [across];
    const back = length(`marking.pin-${i + 1}-back`, `${name}, from the back edge`, fromBack(y), {
      formula: `along the centre line${sayEdge}`,
      tolerance: TOLERANCES['pin-place'],
    });
    return [across, back];
  });
  return [...line, ...each];
}

function slotMarks(job: Job): readonly Setting[] {
  const { curves, face, edges, left, design } = job;
  const half = curves.slot.halfLength;
  const behind =
    curves.slot.tilt > 0
      ? '; on the blank’s face, where a slot that leans lies further back than on the crown'
      : '';
  const sayEdge = left > 0 ? `, ${left} left on the edge counted` : '';
  const ends = (['treble', 'bass'] as const).flatMap((end) => {
    const [x, y] = slotOn(job, (end === 'treble' ? 1 : -1) * trebleSign(job) * half, face);
    return [
      length(`marking.slot-${end}-across`, `Slot’s ${end} end, from the centre line`, Math.abs(x), {
        formula: `half of the slot’s ${(2 * half).toFixed(2)} × cos ${design.saddle.angle}°`,
        tolerance: TOLERANCES['slot-place'],
      }),
      length(`marking.slot-${end}`, `Slot’s ${end} end, from the back edge`, y - edges.backMiddle + left, {
        formula: `along the centre line${behind}${sayEdge}`,
        tolerance: TOLERANCES['slot-place'],
      }),
    ];
  });
  const [, yMiddle] = slotOnCentreLine(job);
  return [
    length(
      'marking.slot-middle',
      'Slot’s middle on the centre line, behind the front edge',
      edges.frontMiddle - yMiddle + left,
      {
        formula: `along the centre line${behind}${sayEdge}`,
        tolerance: TOLERANCES['slot-place'],
      },
    ),
    ...ends,
  ];
}

/** Where the slot's line on the blank's face crosses the centre line. */
function slotOnCentreLine(job: Job): readonly [number, number] {
  const [x, y] = slotOn(job, 0, job.face);
  return [0, y - x * Math.tan(job.curves.slot.angle)];
}

function sideOf(x: number, { guitar }: Job['design']): string {
  if (Math.abs(x) < 1e-6) return '';
  return x > 0 === (guitar.hand === 'right') ? ', to the treble' : ', to the bass';
}
