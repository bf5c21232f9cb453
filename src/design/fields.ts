/**
 * The one table of what a design is made of. Form, command line, file loader, help and generator all read it.
 * Lengths are millimetres, angles degrees. A choice's first entry is not special: `default` says what is.
 */

interface Common {
  /** Said beside the field. */
  readonly label: string;
  /** One line for a person at the bench. */
  readonly help: string;
}

/** A number with a unit. `length` may also be typed in inches, feet or metres. */
export interface NumberField extends Common {
  readonly kind: 'length' | 'angle' | 'count' | 'density' | 'modulus';
  readonly min: number;
  readonly max: number;
  /** The default, as a person would type it. */
  readonly default: number | string;
  /** What one press of an arrow key adds. */
  readonly step: number;
}

export interface ChoiceField extends Common {
  readonly kind: 'choice';
  /** value → words on the screen */
  readonly choices: Readonly<Record<string, string>>;
  readonly default: string;
}

export interface TextField extends Common {
  readonly kind: 'text';
  readonly maxLength: number;
  readonly default: string;
}

/** A list of lengths, one for each string, treble first. */
export interface LengthsField extends Common {
  readonly kind: 'lengths';
  readonly min: number;
  readonly max: number;
  readonly default: readonly (number | string)[];
}

export type Field = NumberField | ChoiceField | TextField | LengthsField;

export const UNIT_OF = { length: 'mm', angle: '°', count: '', density: 'kg/m³', modulus: 'GPa' } as const;

const number =
  (kind: NumberField['kind']) =>
  (
    label: string,
    range: readonly [number, number],
    initial: number | string,
    step: number,
    help: string,
  ): NumberField => ({ kind, label, min: range[0], max: range[1], default: initial, step, help });

const length = number('length');
const angle = number('angle');
const count = number('count');

const choice = <const C extends Readonly<Record<string, string>>>(
  label: string,
  choices: C,
  initial: keyof C & string,
  help: string,
) => ({ kind: 'choice', label, choices, default: initial, help }) as const satisfies ChoiceField;

const text = (label: string, initial: string, maxLength: number, help: string): TextField => ({
  kind: 'text',
  label,
  default: initial,
  maxLength,
  help,
});

export const FIELDS = {
  guitar: {
    name: text('Name', 'Untitled bridge', 300, 'What this bridge is called; files are named after it.'),
    hand: choice(
      'Hand',
      { right: 'right-handed', left: 'left-handed' },
      'right',
      'A left-handed bridge is the mirror image: the slot leans the other way.',
    ),
    scale: length('Scale length', [480, 900], 645, 1, 'Nut to saddle before compensation.'),
    soundboard: choice(
      'Soundboard',
      { flat: 'flat', cylinder: 'arched across', sphere: 'domed' },
      'sphere',
      'How the top of the guitar is shaped under the bridge: flat, arched across the grain only, or domed both ways.',
    ),
    soundboardRadius: length(
      'Soundboard radius',
      [2000, 30000],
      '25 ft',
      100,
      'Radius of the dome or arch; 25 ft and 28 ft dishes are common.',
    ),
    fretboard: choice(
      'Fretboard',
      { constant: 'one radius', conical: 'conical' },
      'constant',
      'One radius from nut to end, or flatter toward the bridge.',
    ),
    fretboardRadius: length(
      'Fretboard radius',
      [150, 3000],
      '16 in',
      5,
      'Radius across the frets; at the nut when the fretboard is conical.',
    ),
    fretboardRadiusAtFret: length(
      'Radius further up',
      [150, 3000],
      '20 in',
      5,
      'Radius of a conical fretboard at the fret named below.',
    ),
    fretboardFret: count('…at fret', [5, 24], 20, 1, 'The fret at which the second radius was measured.'),
  },
  strings: {
    count: count('Strings', [4, 12], 6, 1, 'Strings in one row, a pin for each.'),
    spread: length(
      'Spread at the saddle',
      [30, 120],
      55,
      0.5,
      'First to last string, centre to centre, over the saddle.',
    ),
    spacing: choice(
      'Spacing',
      { centres: 'equal centres', gaps: 'equal gaps' },
      'centres',
      'Equal between string centres, or equal between string edges (thick strings stand further apart).',
    ),
    diameters: {
      kind: 'lengths',
      label: 'String diameters',
      min: 0.15,
      max: 2.5,
      default: ['0.012 in', '0.016 in', '0.024 in', '0.032 in', '0.042 in', '0.053 in'],
      help: 'Outside diameter of each string, treble first; needed for equal gaps.',
    } as LengthsField,
  },
  footprint: {
    length: length('Length', [100, 230], 153, 1, 'Tip to tip.'),
    depthCentre: length('Depth, centre', [20, 75], 36, 0.5, 'Front to back on the centre line.'),
    depthWing: length('Depth, wings', [12, 70], 27, 0.5, 'Front to back at the wing tips.'),
    backEdge: choice(
      'Back edge',
      { straight: 'straight', tail: 'belly toward the tail', soundhole: 'drawn in toward the soundhole' },
      'tail',
      'Where the middle of the back edge goes, seen from the wings.',
    ),
    backForm: choice(
      'Back edge runs',
      { sweep: 'in a double sweep', bow: 'in one bow', taper: 'straight, with a knee' },
      'sweep',
      'How the back edge gets from the wing to the middle.',
    ),
    frontEdge: choice(
      'Front edge',
      { straight: 'straight', soundhole: 'belly toward the soundhole', tail: 'drawn in toward the tail' },
      'straight',
      'Where the middle of the front edge goes, seen from the wings.',
    ),
    frontForm: choice(
      'Front edge runs',
      { sweep: 'in a double sweep', bow: 'in one bow', taper: 'straight, with a knee' },
      'bow',
      'How the front edge gets from the wing to the middle.',
    ),
    frontBelly: length(
      'Front belly',
      [0.5, 25],
      3,
      0.5,
      'How far the front edge goes when both edges are shaped; the back edge takes the rest of the depth.',
    ),
    fullDepthLength: length(
      'Full-depth run',
      [0, 180],
      52,
      1,
      'Length of the middle that keeps its full depth before a sweep or taper begins.',
    ),
    sweepLength: length(
      'Sweep',
      [4, 90],
      34,
      1,
      'Length along the bridge in which a double sweep goes from the middle to the wing.',
    ),
    knee: length(
      'Knee radius',
      [2, 300],
      20,
      1,
      'Rounds the corner where a straight taper leaves the middle.',
    ),
    tip: choice(
      'Wing tips',
      { square: 'straight', bowed: 'bowed', round: 'half round' },
      'bowed',
      'How the ends go: straight with rounded corners, slightly bowed, or one round.',
    ),
    tipBow: length('Tip bow', [0.3, 12], 1.5, 0.1, 'How far a bowed tip stands out beyond its corners.'),
    cornerFront: length('Front corner radius', [1, 35], 6, 0.5, 'Rounds the front corner of each wing.'),
    cornerBack: length('Back corner radius', [1, 35], 6, 0.5, 'Rounds the back corner of each wing.'),
    slotBehindFront: length(
      'Slot behind front edge',
      [4, 40],
      11,
      0.5,
      'Front edge to the middle of the saddle slot, on the centre line.',
    ),
  },
  underside: {
    shape: choice(
      'Underside',
      {
        follows: 'as the soundboard',
        flat: 'flat',
        cylinder: 'arched across',
        sphere: 'domed',
      },
      'follows',
      'The glue face copies the soundboard unless you set it.',
    ),
    radius: length(
      'Underside radius',
      [2000, 30000],
      '25 ft',
      100,
      'Radius to which the glue face is sanded.',
    ),
  },
  top: {
    thickness: length(
      'Thickness at the centre',
      [5, 18],
      9.5,
      0.1,
      'Glue plane to the uncut top, at the middle of the slot.',
    ),
    crown: choice(
      'Crown',
      { follows: 'as the fretboard', set: 'set by hand' },
      'follows',
      'The top is arched like the fretboard, carried on to the saddle.',
    ),
    crownRadius: length(
      'Crown radius',
      [150, 5000],
      '16 in',
      5,
      'Radius across the top of the middle block.',
    ),
    block: length('Middle block', [50, 180], 90, 1, 'Length of the full-height middle between the wings.'),
    tip: length('Wing tip', [1, 10], 3, 0.1, 'Wood left at the very end of a wing, before edging.'),
    wing: choice(
      'Wing run',
      { straight: 'straight', hollow: 'hollow' },
      'straight',
      'The wing runs straight to its tip, or in a hollow that levels out at the tip.',
    ),
    wingRise: length(
      'Wing rise',
      [0, 10],
      1.2,
      0.1,
      'How much higher the wing’s run would stand where the block ends than it does at the tip.',
    ),
    blend: length('Blend at the block', [2, 120], 25, 1, 'Radius of the hollow between wing and block.'),
    shoulder: length(
      'Shoulder',
      [0.8, 25],
      2.5,
      0.1,
      'Radius that takes the corner off where the crown turns down into the blend.',
    ),
    edge: choice(
      'Top edge',
      { none: 'left square', round: 'rounded over', chamfer: 'chamfered' },
      'round',
      'What is done to the edge all round the top.',
    ),
    edgeSize: length(
      'Edge size',
      [0.2, 4],
      1,
      0.1,
      'Radius of the round-over, or width of the chamfer on each face.',
    ),
  },
  saddle: {
    slotWidth: length('Slot width', [1.2, 8], 3.2, 0.1, 'Width of the saddle slot; the cutter is no wider.'),
    slotLength: length('Slot length', [30, 150], 74, 0.5, 'Overall, round ends included.'),
    angle: angle('Slot angle', [-3, 9], 2.9, 0.1, 'Positive carries the bass end away from the nut.'),
    setback: length(
      'Set-back at the centre',
      [-3, 15],
      3.9,
      0.1,
      'How far beyond the scale length the slot’s middle lies.',
    ),
    depth: length(
      'Slot depth',
      [1, 16],
      5.5,
      0.1,
      'From the crown at the slot’s middle, along the slot’s walls.',
    ),
    ends: choice(
      'Slot ends',
      { round: 'round, in the block', open: 'open through the block' },
      'round',
      'A slot that stops in the wood, or one that runs out at both ends of the block.',
    ),
    floor: choice(
      'Slot floor',
      { flat: 'flat', parallel: 'parallel to the crown' },
      'flat',
      'A flat floor, or one that keeps the same depth under the crown.',
    ),
    tilt: angle('Slot tilt', [0, 12], 0, 0.5, 'Leans the saddle’s top back toward the pins.'),
    showing: length('Saddle showing', [0, 10], 3.2, 0.1, 'Saddle standing over the crown at the middle.'),
  },
  pins: {
    spread: length(
      'Pin spread',
      [30, 140],
      57,
      0.5,
      'First to last pin, centre to centre, along their line.',
    ),
    line: choice(
      'Pin line',
      { square: 'square to the centre line', parallel: 'parallel to the slot' },
      'square',
      'Whether the row of pins stands square on the guitar or leans with the slot.',
    ),
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
    channelDepth: length(
      'Channel depth',
      [0.3, 6],
      2,
      0.1,
      'Depth of the ramp at the middle of the pin hole.',
    ),
  },
  timber: {
    name: text('Timber', 'Indian rosewood', 120, 'What the bridge is made of.'),
    density: number('density')('Density', [300, 1500], 849, 5, 'At 12 % moisture.'),
    stiffness: number('modulus')(
      'Stiffness along the grain',
      [3, 30],
      12.27,
      0.1,
      'Modulus of elasticity E along the grain.',
    ),
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Field>>>>;

export type Fields = typeof FIELDS;
export type Group = keyof Fields;

/** Every field of a group, by name, without the precise types of the table: for walking it. */
export function fieldsOf(group: Group): Readonly<Record<string, Field>> {
  return FIELDS[group];
}

export const GROUPS = Object.keys(FIELDS) as readonly Group[];
