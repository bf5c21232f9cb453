import { angle, choice, type Field, length } from './kinds.ts';

export const pins = {
  spread: length('Pin spread', [30, 140], 57, 0.5, 'First to last pin, centre to centre, along their line.'),
  line: choice(
    'Pin line',
    { square: 'square to the centre line', parallel: 'parallel to the slot' },
    'square',
    'Whether the row of pins stands square on the guitar or leans with the slot.',
  ),
  spacing: choice(
    'Pins stand',
    { equal: 'at equal distances', strings: 'as the strings' },
    'equal',
    'Evenly along their line, or each as its string stands at the saddle, drawn out to the pins’ spread.',
  ),
  rows: choice(
    'Rows',
    { one: 'one row', two: 'two rows' },
    'one',
    'Two rows set every second pin back: room for twelve.',
  ),
  rowGap: length('Between the rows', [3, 25], 9, 0.5, 'Front row to back row, square to the pins’ line.'),
  behindSlot: length(
    'Pins behind slot',
    [4, 40],
    13,
    0.5,
    'Middle of the slot to the row of pins, on the centre line.',
  ),
  drill: length('Drill', [2.5, 9], '3/16 in', 0.1, 'Hole as drilled, before reaming.'),
  taper: angle(
    'Pin taper',
    [0, 8],
    5,
    0.5,
    'Included angle of the reamer: 3 and 5 degrees are usual; 0 leaves the hole as drilled.',
  ),
  mouth: length('Mouth', [2.5, 11], 5.6, 0.1, 'Diameter of the reamed hole at the surface.'),
  bevel: choice('Bevel', { none: 'none', cut: 'cut' }, 'cut', 'A small countersink round each hole.'),
  bevelAngle: angle('Bevel angle', [60, 140], 90, 5, 'Included angle of the countersink.'),
  bevelDiameter: length(
    'Bevel left after reaming',
    [2.6, 14],
    6.6,
    0.1,
    'Outside diameter of the bevel wanted when the hole has been reamed.',
  ),
  channel: choice(
    'String channel',
    { none: 'none', ramp: 'ramp toward the saddle' },
    'none',
    'A small ramp that eases the string from its pin hole toward the saddle.',
  ),
  channelLength: length(
    'Channel length',
    [3, 30],
    7,
    0.5,
    'From the middle of the pin hole to where the ramp comes out.',
  ),
  channelWidth: length('Channel width', [0.5, 5], 1.6, 0.1, 'Width of the ramp; less than the hole’s.'),
  channelDepth: length('Channel depth', [0.3, 6], 2, 0.1, 'Depth of the ramp at the middle of the pin hole.'),
} as const satisfies Readonly<Record<string, Field>>;
