import type { Pin } from '../../../models/curves/curves.ts';
import { pinRadii } from '../../../models/curves/pinRadii.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import type { Draft, Spot } from '../dimensions/draft.ts';
import { lettered } from '../dimensions/lettered.ts';
import { placeRows, placeTable, TABLE_WIDTH, tableHeight } from '../drawing/placeTable.ts';
import { angleText, lengthText, type Units } from '../lengthText.ts';
import { cross, ring, stroke } from '../paper/inks.ts';
import type { Ink, Typeface } from '../sheet.ts';
import { pinCentres, slotCentres } from '../views/planView.ts';
import { slotMouth } from '../views/slotMouth.ts';
import type { Art } from './art.ts';
import { planBox, toward } from './outlineTemplate.ts';
import { registration } from './registration.ts';
import { templateTitles } from './templateTitles.ts';

/** Half the length of a cross at a centre to be pricked, mm. */
const CROSS = 1.6;
const NUMBER = 2;
/** What is higher with the table of places goes without it: it would no longer go on a sheet, mm. */
const MOST_TALL = 135;

/** Where to drill and where to cut the slot: pin centres with their numbers, the slot's line and its end centres. */
export function drillingTemplate(accepted: AcceptedDesign, units: Units, typeface: Typeface): Art {
  const { curves, design } = accepted;
  const { slot, pins } = curves;
  const box = planBox(accepted);
  const marks = registration(box);
  const rows = placeRows(accepted);
  const table = tableHeight(rows);
  // the same table stands on the sheet of the sections
  const listed = marks.box.top - marks.box.bottom + table < MOST_TALL;
  const say = (mm: number) => lengthText(mm, units);
  const fixed: readonly Ink[] = [
    ...marks.inks,
    ...slotCentres(curves),
    ...pinCentres(pins),
    stroke('outline', 'detail', curves.outline, true),
    // on a flat blank the line is level: as high as the crown in the middle, where its end crosses are too
    stroke(
      'slot',
      'detail',
      slotMouth(curves, () => curves.profile.thickness),
      true,
    ),
    ...rows.flatMap(({ of, at }) => cross(of === 'pin' ? 'pins' : 'slot', 'detail', at, CROSS)),
    ...pins.map((pin) => ring('pins', 'detail', pin.at, pinRadii(pin).drill)),
    ...(listed ? placeTable(rows, [-TABLE_WIDTH / 2, marks.box.bottom - 2], units) : []),
  ];
  return {
    id: 'drilling',
    title: templateTitles.drilling,
    box: { ...marks.box, bottom: marks.box.bottom - (listed ? table + 4 : 0) },
    notes: [
      `Prick each cross; drill ⌀${say(design.pins.drill)} square to the underside. Pin 1 is the first (treble) string’s.`,
      `Slot ${say(slot.width)} wide at ${angleText(Math.abs(design.saddle.angle))} to the line across, with a cutter no wider than the slot${
        slot.tilt === 0 ? '' : `, leaning back ${angleText(design.saddle.tilt)}`
      }${
        slot.roundEnds
          ? `. The cut reaches from end to end of the slot drawn; its crosses are the centres of its round ends, for a cutter of ${say(slot.width)}.`
          : '; open at both ends.'
      }`,
      ...(slot.tilt === 0
        ? []
        : [
            `Slot’s line and crosses: level, as high as the finished crown’s middle. On a blank that is thicker they lie further back, by ${Math.tan(slot.tilt).toFixed(3)} of what it is thicker: the step of marking has the numbers.`,
          ]),
    ],
    inks: [...fixed, ...lettered([...pins.map(number), ...toward(box)], fixed, marks.box, typeface)],
  };
}

/** A pin's number, beside its hole. */
function number({ at: [x, y], reach }: Pin, i: number): Draft {
  const spots = [-60, -120, -90, 60, 120, 90, -30, -150, 30, 150].flatMap((degrees) =>
    [2, 3.5].map((off): Spot => {
      const a = (degrees * Math.PI) / 180;
      const far = reach + off;
      return {
        at: [x + far * Math.cos(a), y + far * Math.sin(a) - NUMBER / 2],
        anchor: 'middle',
        angle: 0,
        inks: [],
      };
    }),
  );
  return { label: String(i + 1), style: { height: NUMBER, layer: 'pins' }, inks: [], spots };
}
