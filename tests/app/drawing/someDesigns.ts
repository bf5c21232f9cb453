import { type AcceptedDesign, acceptDesign } from '../../../src/design/acceptDesign.ts';
import type { DesignText, Typed } from '../../../src/design/design.ts';
import { enoughStrings } from '../../../src/design/enoughStrings.ts';
import { designText } from '../../support/change.ts';

/** The usual design with some fields typed anew, by path. */
export function designWith(changes: Readonly<Record<string, Typed>>): DesignText {
  const text = JSON.parse(JSON.stringify(designText())) as Record<string, Record<string, Typed>>;
  for (const [path, typed] of Object.entries(changes)) {
    const [group = '', key = ''] = path.split('.');
    (text[group] as Record<string, Typed>)[key] = typed;
  }
  return enoughStrings(text as unknown as DesignText);
}

/** Designs that differ in what a drawing shows. */
export const someDesigns: Readonly<Record<string, AcceptedDesign>> = {
  usual: acceptDesign(designText()),
  'belly toward the soundhole': acceptDesign(
    designWith({
      'footprint.backEdge': 'straight',
      'footprint.frontEdge': 'soundhole',
      'footprint.slotBehindFront': 14,
      'footprint.depthWing': 30,
    }),
  ),
  'taper, typed in inches, tilted slot': acceptDesign(
    designWith({
      'footprint.backForm': 'taper',
      'footprint.fullDepthLength': 80,
      'footprint.tip': 'square',
      'footprint.length': '6 1/8 in',
      'top.wing': 'hollow',
      'top.wingRise': 2,
      'top.thickness': '3/8 in',
      'top.tip': '3.0',
      'saddle.tilt': 8,
    }),
  ),
  'round tips, conical fretboard': acceptDesign(
    designWith({
      'footprint.backEdge': 'straight',
      'footprint.tip': 'round',
      'footprint.depthCentre': 30,
      'footprint.slotBehindFront': 9,
      'pins.behindSlot': 12,
      'guitar.fretboard': 'conical',
      'saddle.floor': 'parallel',
    }),
  ),
  'left-handed, channels, chamfer': acceptDesign(
    designWith({
      'guitar.hand': 'left',
      'pins.line': 'parallel',
      'saddle.angle': 4,
      'top.edge': 'chamfer',
      'pins.channel': 'ramp',
      'pins.channelDepth': 3,
    }),
  ),
  'twelve pins': acceptDesign(
    designWith({
      'strings.count': 12,
      'strings.spread': 60,
      'footprint.length': 180,
      'footprint.fullDepthLength': 100,
      'footprint.sweepLength': 28,
      'top.block': 126,
      'top.crown': 'set',
      'top.crownRadius': 700,
      'saddle.slotLength': 90,
      'pins.spread': 105,
      'pins.drill': 4,
      'pins.mouth': 5,
      'pins.bevelDiameter': 5.5,
    }),
  ),
  'five pins, open slot': acceptDesign(
    designWith({
      'strings.count': 5,
      'saddle.angle': 0,
      'saddle.ends': 'open',
      'saddle.depth': 4.2,
      'top.edge': 'none',
      'top.block': 80,
      'top.tip': 2.5,
      'top.wingRise': 0.5,
    }),
  ),
  'five pins, channels': acceptDesign(
    designWith({ 'strings.count': 5, 'pins.channel': 'ramp', 'pins.channelDepth': 3 }),
  ),
};
