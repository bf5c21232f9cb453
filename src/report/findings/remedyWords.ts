import { isNumberField, UNIT_OF } from '../../design/fields/kinds.ts';
import { fieldsOf, GROUPS } from '../../design/fields.ts';
import { said } from '../said.ts';

/** What a remedy tells the builder to do, by the field that it changes. `#` stands for the value. */
const WORDS: Readonly<Record<string, string>> = {
  'footprint.depthCentre': 'Make the bridge # deep at the centre',
  'footprint.depthWing': 'Make the wings # deep',
  'footprint.length': 'Make the bridge # long',
  'footprint.knee': 'Round the knees to a radius of #',
  'footprint.sweepLength': 'Make the sweep # long',
  'footprint.cutter': 'Take a cutter of # round the outline',
  'footprint.slotBehindFront': 'Lay the slot’s middle # behind the front edge',
  'top.thickness': 'Make the bridge # thick at the centre',
  'top.crownRadius': 'Make the crown’s radius #',
  'top.block': 'Make the middle block # long',
  'top.tip': 'Make the wing tip # thick',
  'top.edgeSize': 'Make the top edge #',
  'saddle.slotWidth': 'Make the slot # wide',
  'saddle.slotLength': 'Make the slot # long',
  'saddle.cutter': 'Take a cutter of # for the slot',
  'saddle.crownMargin': 'Leave # of saddle beside the crown',
  'saddle.angle': 'Make the slot’s angle #',
  'saddle.depth': 'Make the slot # deep',
  'saddle.woodUnder': 'Leave # of wood under the slot',
  'saddle.tilt': 'Make the slot’s tilt #',
  'saddle.showing': 'Let the saddle show # at the middle',
  'strings.spread': 'Make the strings’ spread # at the saddle',
  'pins.spread': 'Make the pins’ spread #',
  'pins.rowGap': 'Set the rows of pins # apart',
  'pins.behindSlot': 'Set the pins # behind the slot',
  'pins.drill': 'Take a drill of #',
  'pins.taper': 'Make the pins’ taper #',
  'pins.mouth': 'Ream the mouth to #',
  'pins.bevelDiameter': 'Make the bevel # wide',
  'pins.channelLength': 'Make the string channels # long',
  'pins.channelDepth': 'Make the string channels # deep',
  'action.treble': 'Make the action # at the treble',
  'action.bass': 'Make the action # at the bass',
  'aim.mass': 'Aim at #',
  'aim.tip': 'Aim at a tip’s wall of #',
};

/** Every field that a remedy may change. */
export const MENDABLE: readonly string[] = Object.keys(WORDS);

/** What a remedy tells the builder to do. Throws for a field that no remedy may change. */
export function remedyWords(path: string, value: number): string {
  const words = WORDS[path];
  const [group, key = ''] = path.split('.');
  const field = GROUPS.flatMap((name) => (name === group ? [fieldsOf(name)[key]] : []))[0];
  if (!words || !field || !isNumberField(field)) throw new Error(`no remedy changes ${path}`);
  return words.replace('#', said(value, UNIT_OF[field.kind]));
}
