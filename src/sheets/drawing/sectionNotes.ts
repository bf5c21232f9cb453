import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { angleText, lengthText } from '../lengthText.ts';
import type { PapersOptions } from '../sheetOptions.ts';
import { isTapered } from '../views/isTapered.ts';
import { sectionPin } from '../views/sectionPin.ts';

/** What a shop must know of slot and holes beside their sizes. */
export function sectionNotes(
  { design, curves }: AcceptedDesign,
  { units, holes }: Pick<PapersOptions, 'units' | 'holes'>,
): readonly string[] {
  const { pins } = design;
  const say = (mm: number) => lengthText(mm, units);
  const pin = sectionPin(curves);
  return [
    `Slot: width to gauge, so that its saddle slides in by hand and doesn’t lean; ${
      curves.slot.roundEnds ? `ends R${say(curves.slot.width / 2)}` : 'open at both ends of the block'
    }; depth from the crown’s top at the middle.`,
    isTapered(pin, holes)
      ? `Holes as reamed: drilled through ⌀${say(pins.drill)}, then reamed, ${angleText(pins.taper)} included; the taper’s ⌀${say(pins.mouth)} is at the top${
          pins.bevel === 'cut' ? ', where it would be without the bevel' : ''
        }; fitted to their pins at set-up.`
      : isTapered(pin, 'reamed')
        ? `Holes as drilled: drilled through and left so: they are reamed at set-up, ${angleText(pins.taper)} included, ⌀${say(pins.mouth)} at the top.`
        : 'Holes: drilled through, parallel: nothing is reamed.',
    ...(pins.bevel === 'cut' ? ['Bevel: to its diameter at the top, each hole alike.'] : []),
    ...(curves.channels.length > 0
      ? [
          `Channels: ${say(pins.channelWidth)} wide, ${say(pins.channelDepth)} deep on the pin’s axis, running out ${say(pins.channelLength)} from it toward each string.`,
        ]
      : []),
    'The underside must touch a true soundboard all over; edges of slot and holes clean, not rounded.',
  ];
}
