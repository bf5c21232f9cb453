import type { AcceptedDesign } from '../../../design/acceptDesign.ts';
import { applies } from '../../../design/applies.ts';
import type { Finding, Spot } from '../finding.ts';
import { roundPin, slotRim, tipLines } from '../places.ts';

/** A dimension with the range in which it usually lies. */
export interface Usual {
  readonly id: string;
  /** As it begins a sentence. */
  readonly name: string;
  readonly path: string;
  readonly value: (accepted: AcceptedDesign) => number;
  readonly usual: readonly [least: number, most: number];
  readonly unit?: string;
  /** What such a dimension means at the bench: below the range, above it. */
  readonly low: string;
  readonly high: string;
  /** Whether it is watched at all. */
  readonly when?: (accepted: AcceptedDesign) => boolean;
  readonly mends?: readonly string[];
  /** Who says so, where it isn't the trade. */
  readonly source?: string;
  readonly place?: (accepted: AcceptedDesign) => Finding['place'];
}

export const pinsOf = ({ curves }: AcceptedDesign): readonly (readonly Spot[])[] =>
  curves.pins.map((_, i) => roundPin(curves, i));
const slotOf = ({ curves }: AcceptedDesign) => slotRim(curves);
const tipsOf = ({ curves }: AcceptedDesign) => tipLines(curves);

const LARGE = 'look whether the soundboard has room and braces for it';
const SMALL = 'look whether it carries the strings’ pull on so much less glue';

/** What is usual of a bridge's dimensions. Common practice where nothing else is said. */
export const usualRanges: readonly Usual[] = [
  {
    id: 'usual-length',
    name: 'The bridge’s length',
    path: 'footprint.length',
    value: ({ design }) => design.footprint.length,
    usual: [150, 180],
    low: SMALL,
    high: LARGE,
    place: tipsOf,
  },
  {
    id: 'usual-depth-centre',
    name: 'The depth at the centre',
    path: 'footprint.depthCentre',
    value: ({ design }) => design.footprint.depthCentre,
    usual: [34, 42],
    low: SMALL,
    high: LARGE,
  },
  {
    id: 'usual-depth-wings',
    name: 'The depth at the wings',
    path: 'footprint.depthWing',
    value: ({ design }) => design.footprint.depthWing,
    usual: [24, 32],
    low: SMALL,
    high: LARGE,
    // between straight edges the wings are as deep as the middle
    when: ({ design }) => applies('footprint.depthWing', design),
    place: tipsOf,
  },
  {
    id: 'usual-thickness',
    name: 'The finished thickness',
    path: 'top.thickness',
    value: ({ design }) => design.top.thickness,
    usual: [8.5, 10],
    low: 'look at the neck’s angle, and whether the slot keeps its depth',
    high: 'look at the neck’s angle, and whether a blank so thick is at hand',
    mends: ['saddle.showing', 'top.thickness'],
  },
  {
    id: 'usual-soundboard',
    name: 'The soundboard’s radius',
    path: 'guitar.soundboardRadius',
    value: ({ design }) => design.guitar.soundboardRadius / 1000,
    usual: [4.5, 12],
    unit: 'm',
    low: 'measure the soundboard again, since the underside copies it',
    high: 'measure the soundboard again, since one so flat may as well be called flat',
    when: ({ design }) => design.guitar.soundboard !== 'flat',
    // what was measured of a guitar is no knob
    mends: [],
  },
  {
    id: 'usual-block',
    name: 'The middle block',
    path: 'top.block',
    value: ({ design }) => design.top.block,
    usual: [85, 100],
    low: 'look whether slot and pins keep wood at their ends',
    high: 'it weighs and stiffens more than wings do',
  },
  {
    id: 'usual-edge',
    name: 'The top edge',
    path: 'top.edgeSize',
    value: ({ design }) => design.top.edgeSize,
    usual: [0.5, 2],
    low: 'it is sanded away before it is seen',
    high: 'it takes much of the wings’ wall',
    when: ({ design }) => design.top.edge !== 'none',
    place: tipsOf,
  },
  {
    id: 'usual-slot-width',
    name: 'The slot’s width',
    path: 'saddle.slotWidth',
    value: ({ design }) => design.saddle.slotWidth,
    usual: [2.38, 3.2],
    low: 'saddle blanks are sold from 2.4 mm (3/32 in), and a thin one has no room for filing crowns',
    high: 'look whether a saddle blank so thick is at hand',
    place: slotOf,
  },
  {
    id: 'usual-slot-length',
    name: 'The slot’s length',
    path: 'saddle.slotLength',
    value: ({ design }) => design.saddle.slotLength,
    usual: [70, 82],
    low: 'look whether the outer strings stand well on the saddle',
    high: 'look whether a saddle blank so long is at hand',
    when: ({ design }) => design.saddle.ends === 'round',
    place: slotOf,
  },
  {
    id: 'usual-slot-angle',
    name: 'The slot’s angle',
    path: 'saddle.angle',
    value: ({ design }) => design.saddle.angle,
    usual: [2.5, 3.5],
    unit: '°',
    low: 'look at the strings, their cores and the action it follows from',
    high: 'look at the strings, their cores and the action it follows from',
    place: slotOf,
  },
  {
    id: 'usual-tilt',
    name: 'The slot’s tilt',
    path: 'saddle.tilt',
    value: ({ design }) => design.saddle.tilt,
    usual: [0, 10],
    unit: '°',
    low: 'a saddle leans back, toward the pins',
    high: 'a saddle so far back moves its crown when the action is changed',
    place: slotOf,
  },
  {
    id: 'usual-string-spread',
    name: 'The strings’ spread at the saddle',
    path: 'strings.spread',
    value: ({ design }) => design.strings.spread,
    usual: [52, 58],
    low: 'a picking hand finds little room between the strings',
    high: 'look whether the outer strings stay on the fretboard',
    place: slotOf,
  },
  {
    id: 'usual-drill',
    name: 'The drill for the pins',
    path: 'pins.drill',
    value: ({ design }) => design.pins.drill,
    usual: [4.6, 5],
    low: 'about 4.8 mm (3/16 in) leaves the reamer less to take',
    high: 'look whether the ends of your pins still fill the hole, as after about 4.8 mm (3/16 in)',
    source: 'Our own range round a drill of 4.8 mm (3/16 in), no source.',
    place: pinsOf,
  },
  {
    id: 'usual-pin-spread',
    name: 'The pins’ spread beyond the strings’',
    path: 'pins.spread',
    value: ({ design }) => design.pins.spread - design.strings.spread,
    usual: [1, 3],
    low: 'the outer strings run straight or inward behind the saddle',
    high: 'the outer strings turn sideways over the saddle, and may slip',
    place: pinsOf,
  },
];
