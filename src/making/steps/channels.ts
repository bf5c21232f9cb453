import { within } from '../../trade/tolerances.ts';
import type { Job } from '../job.ts';
import { AS_DESIGNED, length, type Step } from '../step.ts';

/** Cutting the string channels; nothing without them. */
export function channels({ design: { pins }, curves }: Job): Step | undefined {
  if (curves.channels.length === 0) return undefined;
  const practice = within(0.3, 'common practice');
  return {
    id: 'channels',
    title: 'String channels',
    work: [
      'Saw or file a ramp from each pin hole toward its string’s place on the saddle, deepest in the hole, running out at the surface. Keep clear of the slot.',
    ],
    settings: [
      length('channels.length', 'Length, from the middle of the hole', pins.channelLength, {
        ...AS_DESIGNED,
        tolerance: practice,
      }),
      length('channels.width', 'Width', pins.channelWidth, { ...AS_DESIGNED, tolerance: practice }),
      length('channels.depth', 'Depth at the middle of the hole', pins.channelDepth, {
        ...AS_DESIGNED,
        tolerance: practice,
      }),
    ],
    check: 'Lay the string in: it goes down its ramp without a kink.',
    cautions: ['dust', 'first'],
    needs: ['fine saw', 'needle files'],
    template: 'drilling',
  };
}
