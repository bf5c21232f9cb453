import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { angleText, lengthText, type Units } from '../lengthText.ts';

/** What a shop must know of slot and holes beside their sizes. */
export function sectionNotes({ design, curves }: AcceptedDesign, units: Units): readonly string[] {
  const { pins } = design;
  const say = (mm: number) => lengthText(mm, units);
  const reamed = pins.taper > 0;
  return [
    `Slot: width to gauge, so that its saddle slides in by hand and doesn’t lean; ${
      curves.slot.roundEnds ? `ends R${say(curves.slot.width / 2)}` : 'open at both ends of the block'
    }; depth from the crown’s top at the middle.`,
    reamed
      ? `Holes: drilled through and left so: they are reamed at set-up, ${angleText(pins.taper)} included, ⌀${say(pins.mouth)} at the top.`
      : 'Holes: drilled through, not reamed.',
    ...(pins.bevel === 'cut' ? ['Bevel: to its diameter at the top, each hole alike.'] : []),
    ...(curves.channels.length > 0
      ? [
          `Channels: ${say(pins.channelWidth)} wide, ${say(pins.channelDepth)} deep on the pin’s axis, running out ${say(pins.channelLength)} from it toward each string.`,
        ]
      : []),
    'The underside must touch a true soundboard all over; edges of slot and holes clean, not rounded.',
  ];
}
