import { pinRadii } from '../../../models/curves/pinRadii.ts';
import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { placeRows, placeTable, TABLE_WIDTH, tableHeight } from '../drawing/placeTable.ts';
import { angleText, lengthText, type Units } from '../lengthText.ts';
import { cross, ring, stroke, words } from '../paper/inks.ts';
import { pinCentres, slotCentres } from '../views/planView.ts';
import { slotMouth } from '../views/slotMouth.ts';
import type { Art } from './art.ts';
import { planBox, toward } from './outlineTemplate.ts';
import { registration } from './registration.ts';

/** Half the length of a cross at a centre to be pricked, mm. */
const CROSS = 1.6;

/** Where to drill and where to cut the slot: pin centres with their numbers, the slot's line and its end centres. */
export function drillingTemplate(accepted: AcceptedDesign, units: Units): Art {
  const { curves, design } = accepted;
  const { slot, pins } = curves;
  const box = planBox(accepted);
  const marks = registration(box);
  const rows = placeRows(accepted);
  const table = tableHeight(rows.length);
  const say = (mm: number) => lengthText(mm, units);
  return {
    id: 'drilling',
    title: 'Template: drilling and slot',
    box: { ...marks.box, bottom: marks.box.bottom - table - 4 },
    notes: [
      `Prick each cross; drill ⌀${say(design.pins.drill)} square to the underside. Pin 1 is the first (treble) string’s.`,
      `Slot ${say(slot.width)} wide at ${angleText(Math.abs(design.saddle.angle))} to the line across, with a cutter no wider than the slot${
        slot.tilt === 0 ? '' : `, leaning back ${angleText(design.saddle.tilt)}`
      }${slot.roundEnds ? '; its centre goes from end cross to end cross' : '; open at both ends'}.`,
    ],
    inks: [
      ...marks.inks,
      ...slotCentres(curves),
      ...pinCentres(pins),
      stroke('outline', 'detail', curves.outline, true),
      stroke('slot', 'detail', slotMouth(curves), true),
      ...rows.flatMap(({ name, at }) => cross(name.startsWith('pin') ? 'pins' : 'slot', 'detail', at, CROSS)),
      ...pins.flatMap((pin, i) => [
        ring('pins', 'detail', pin.at, pinRadii(pin).drill),
        words(String(i + 1), [pin.at[0] + 0.9, pin.at[1] - pin.reach - 4.4], { height: 2, layer: 'pins' }),
      ]),
      ...toward(box),
      ...placeTable(rows, [-TABLE_WIDTH / 2, marks.box.bottom - 2], units),
    ],
  };
}
