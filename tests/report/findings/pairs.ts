import type { Severity } from '../../../src/report/findings/finding.ts';
import type { Changes } from '../../support/change.ts';

/** A design that trips a rule, and one just inside that differs from it in a single field. */
export interface Pair {
  readonly id: string;
  readonly severity: Severity;
  /** Changes to the sound design that both have. */
  readonly base?: Changes;
  readonly path: string;
  readonly trips: unknown;
  readonly inside: unknown;
  /** What is said to be found, where it follows by a closed form, or where it is read off the fit's own report. */
  readonly found?: string;
}

const low = {
  'action.treble': 1.2,
  'action.firstTreble': 0.3,
  'action.bass': 3.5,
  'action.firstBass': 0.7,
};

const falling = {
  'action.planeBy': 'neck',
  'action.neckAngle': -2,
  'action.jointHeight': 15,
  'saddle.floor': 'parallel',
  'pins.behindSlot': 24,
  'footprint.depthCentre': 46,
  'footprint.depthWing': 38,
};

const but = (note: string) => [note, 'B3', 'G3', 'D3', 'A2', 'E2'];
const first = (cents: number) => [cents, '', '', '', '', ''];

const fit: readonly Pair[] = [
  { id: 'string-under-top', severity: 'error', base: low, path: 'saddle.showing', trips: 2.2, inside: 2.23 },
  { id: 'string-lifts', severity: 'error', base: falling, path: 'saddle.showing', trips: 1.02, inside: 1.04 },
  {
    id: 'saddle-too-short',
    severity: 'error',
    path: 'saddle.slotLength',
    trips: 55,
    inside: 55.5,
    found: '55 mm',
  },
  {
    id: 'saddle-not-half-in',
    severity: 'warning',
    base: { 'saddle.depthBy': 'set' },
    path: 'saddle.depth',
    trips: 5.41,
    inside: 5.42,
  },
  { id: 'saddle-showing', severity: 'warning', path: 'saddle.showing', trips: 2.94, inside: 2.95 },
  { id: 'saddle-showing', severity: 'warning', path: 'saddle.showing', trips: 4.06, inside: 4.05 },
  {
    id: 'break-angle',
    severity: 'warning',
    base: { 'footprint.depthCentre': 44 },
    path: 'pins.behindSlot',
    trips: 16.35,
    inside: 16.3,
  },
  { id: 'string-height', severity: 'warning', path: 'action.planeHeight', trips: 8.83, inside: 8.84 },
  { id: 'string-height', severity: 'warning', path: 'action.planeHeight', trips: 9.42, inside: 9.41 },
  // the frets' plane passes 9.3 over the glue plane: less the thickness
  {
    id: 'straightedge-gap',
    severity: 'warning',
    base: { 'top.thicknessBy': 'set' },
    path: 'top.thickness',
    trips: 9.81,
    inside: 9.8,
    found: '−0.51 mm',
  },
  {
    id: 'straightedge-gap',
    severity: 'warning',
    base: { 'top.thicknessBy': 'set' },
    path: 'top.thickness',
    trips: 7.79,
    inside: 7.8,
    found: '1.51 mm',
  },
  {
    id: 'string-over-wood',
    severity: 'note',
    base: { 'pins.channel': 'ramp', 'pins.channelDepth': 3 },
    path: 'pins.channelLength',
    trips: 6.5,
    inside: 6.75,
  },
  // plain steel: 7850·(2·0.645·f)² Pa, f of G#4 415.305 Hz: 2.253 GPa; of G4 391.995 Hz: 2.007
  {
    id: 'steel-stress',
    severity: 'warning',
    path: 'strings.notes',
    trips: but('G#4'),
    inside: but('G4'),
    found: '2.25 GPa',
  },
  {
    id: 'crown-beyond-saddle',
    severity: 'note',
    path: 'saddle.slotWidth',
    trips: 4.16,
    inside: 4.18,
  },
  // half of what thickness and showing are more than the guitar asks for; 9.2868 + 4.05 is what it asks for
  {
    id: 'action-otherwise',
    severity: 'note',
    base: { 'top.thicknessBy': 'set', 'top.thickness': 9.2868, 'saddle.showingBy': 'set' },
    path: 'saddle.showing',
    trips: 4.07,
    inside: 4.055,
    found: '0.01 mm higher',
  },
  { id: 'cents-misread', severity: 'warning', path: 'action.cents', trips: first(33), inside: first(32) },
];

const wood: readonly Pair[] = [
  // the treble end's round stands (37 − 1.6)·sin 2.9598° + 1.6 = 3.428 before the slot's middle
  {
    id: 'wood-before-slot',
    severity: 'warning',
    path: 'footprint.slotBehindFront',
    trips: 5.41,
    inside: 5.43,
    found: '1.98 mm',
  },
  { id: 'wood-behind-slot', severity: 'warning', path: 'pins.behindSlot', trips: 8.76, inside: 8.78 },
  // a flat floor over a dome is nearest to it in the middle
  {
    id: 'wood-under-slot',
    severity: 'warning',
    base: { 'saddle.depthBy': 'set', 'top.thicknessBy': 'set', 'top.thickness': 9.5 },
    path: 'saddle.depth',
    trips: 7.51,
    inside: 7.5,
    found: '1.99 mm',
  },
  { id: 'wood-between-pins', severity: 'warning', path: 'pins.spread', trips: 46.02, inside: 46.06 },
  { id: 'wood-behind-pins', severity: 'warning', path: 'footprint.depthCentre', trips: 30.73, inside: 30.74 },
  { id: 'wing-tip', severity: 'warning', path: 'top.tip', trips: 2.49, inside: 2.5, found: '2.49 mm' },
  { id: 'wing-tip', severity: 'warning', path: 'top.tip', trips: 4.01, inside: 4, found: '4.01 mm' },
  {
    id: 'tip-wall',
    severity: 'warning',
    base: { 'top.tip': 2.5 },
    path: 'top.edgeSize',
    trips: 1.51,
    inside: 1.5,
    found: '0.99 mm',
  },
  { id: 'mass', severity: 'warning', path: 'timber.density', trips: 638, inside: 639, found: '19.9 g' },
  { id: 'mass', severity: 'warning', path: 'timber.density', trips: 1124, inside: 1122, found: '35.1 g' },
];

const making: readonly Pair[] = [
  {
    id: 'cutter-too-wide',
    severity: 'error',
    path: 'saddle.cutter',
    trips: 3.21,
    inside: 3.2,
    found: '3.21 mm',
  },
  { id: 'bevel-ring', severity: 'warning', path: 'pins.bevelDiameter', trips: 6.16, inside: 6.17 },
  {
    id: 'inside-corner',
    severity: 'note',
    base: { 'footprint.backEdge': 'soundhole', 'footprint.backForm': 'taper', 'footprint.depthWing': 40 },
    path: 'footprint.knee',
    trips: 2.99,
    inside: 3,
    found: 'radius 2.99 mm',
  },
  {
    id: 'underside-otherwise',
    severity: 'note',
    base: { 'underside.shape': 'sphere' },
    path: 'underside.radius',
    trips: 7600,
    inside: '25 ft',
    found: 'domed to 7.6 m',
  },
  {
    id: 'underside-otherwise',
    severity: 'note',
    path: 'underside.shape',
    trips: 'flat',
    inside: 'follows',
    found: 'flat',
  },
];

const note = (id: string, path: string, trips: unknown, inside: unknown, base?: Changes): Pair => ({
  id,
  severity: 'note',
  path,
  trips,
  inside,
  ...(base && { base }),
});

const usual: readonly Pair[] = [
  note('usual-length', 'footprint.length', 149.9, 150),
  note('usual-length', 'footprint.length', 180.1, 180),
  note('usual-depth-centre', 'footprint.depthCentre', 33.9, 34),
  note('usual-depth-centre', 'footprint.depthCentre', 42.1, 42),
  note('usual-depth-wings', 'footprint.depthWing', 23.9, 24),
  note('usual-depth-wings', 'footprint.depthWing', 32.1, 32),
  note('usual-thickness', 'top.thickness', 8.49, 8.5, { 'top.thicknessBy': 'set' }),
  note('usual-thickness', 'top.thickness', 10.01, 10, { 'top.thicknessBy': 'set' }),
  note('usual-soundboard', 'guitar.soundboardRadius', 4480, 4500),
  note('usual-soundboard', 'guitar.soundboardRadius', 12020, 12000),
  note('usual-block', 'top.block', 84.9, 85),
  note('usual-block', 'top.block', 100.1, 100),
  note('usual-edge', 'top.edgeSize', 0.49, 0.5),
  note('usual-edge', 'top.edgeSize', 2.01, 2, { 'top.tip': 4, 'top.shoulder': 3 }),
  note('usual-slot-width', 'saddle.slotWidth', 2.37, '3/32 in'),
  note('usual-slot-width', 'saddle.slotWidth', 3.21, 3.2),
  note('usual-slot-length', 'saddle.slotLength', 69.9, 70),
  note('usual-slot-length', 'saddle.slotLength', 82.1, 82),
  note('usual-slot-angle', 'saddle.angle', 2.49, 2.5, { 'saddle.angleBy': 'set' }),
  note('usual-slot-angle', 'saddle.angle', 3.51, 3.5, { 'saddle.angleBy': 'set' }),
  note('usual-tilt', 'saddle.tilt', 10.5, 10),
  note('usual-string-spread', 'strings.spread', 51.9, 52),
  note('usual-string-spread', 'strings.spread', 58.1, 58),
  note('usual-drill', 'pins.drill', 4.59, 4.6),
  note('usual-drill', 'pins.drill', 5.01, 5),
  note('usual-pin-spread', 'pins.spread', 55.9, 56),
  note('usual-pin-spread', 'pins.spread', 58.1, 58),
  note('usual-taper', 'pins.taper', 4, 5),
  note('usual-taper', 'pins.taper', 3.5, 3),
];

/** For every rule at least one pair; for a range one at each end that the form allows to be passed. */
export const PAIRS: readonly Pair[] = [...fit, ...wood, ...making, ...usual];
