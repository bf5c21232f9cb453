import type { Design, DesignText } from '../../src/design/design.ts';
import { DesignError } from '../../src/design/problem.ts';
import { readDesign } from '../../src/design/read.ts';
import type { EndHeights } from '../../src/trade/endHeights.ts';
import { depthFit } from '../../src/trade/fit/depthFit.ts';
import { heightFit } from '../../src/trade/fit/heightFit.ts';
import { slotFit } from '../../src/trade/fit/slotFit.ts';
import { stringHeights } from '../../src/trade/fit/stringHeights.ts';
import { type TunedString, tunedStrings } from '../../src/trade/fit/tunedStrings.ts';
import { frequencyNumber, noteName } from '../../src/trade/notes.ts';
import type { Draws } from './draws.ts';

/**
 * Puts a design together so that about half of them can be made: each dimension is drawn within what the ones before
 * it leave room for. The bounds are rough sums of a bench's kind, not the program's own: some of what they suggest is
 * refused, and every field is also drawn from its whole range now and then.
 */
export function plausible(d: Draws): DesignText {
  // few aims drawn at random can be met: they have laws of their own
  d.choose('aim.of', 'none');
  d.number('limits.held', 0.4, 0.6);
  strings(d);
  action(d);
  heights(d);
  const top = topOf(d);
  const holes = holesOf(d, top);
  const slot = slotOf(d, top);
  footprintOf(d, top, holes, slot);
  channelOf(d, top, holes, slot);
  limits(d);
  return d.finish();
}

/** Limits between which something must lie, the least below the most. */
function limits(d: Draws): void {
  for (const of of ['showing', 'string', 'gap', 'tip', 'mass'])
    d.number(`limits.${of}Most`, d.number(`limits.${of}Least`));
}

const WOOD = 0.55;
const sin = (degrees: number) => Math.sin((degrees * Math.PI) / 180);
const cos = (degrees: number) => Math.cos((degrees * Math.PI) / 180);
/** How far an arc has fallen at x from its top; an infinite radius is flat. */
const fall = (radius: number, x: number) =>
  x >= radius ? radius : (x * x) / (radius + Math.sqrt(radius ** 2 - x * x));

interface Top {
  readonly half: number;
  readonly thickness: number;
  readonly crown: number;
  /** Height of the wing's run where the block ends. */
  readonly low: number;
  readonly crownEnd: number;
  /** About where the blend ends. */
  readonly runStart: number;
  readonly edge: number;
}

function topOf(d: Draws): Top {
  const half = d.number('footprint.length') / 2;
  const tipRoom = d.choice('footprint.tip') === 'round' ? Math.min(55, 0.7 * half) : 12;
  const blockEnd = d.number('top.block', 50, 2 * half - tipRoom, 0.8) / 2;
  const thickness = d.number('top.thickness');
  const crown = crownRadius(d, blockEnd, thickness);
  const corner = thickness - fall(crown, blockEnd);
  const wing = half - blockEnd;
  const floor = -fall(undersideRadius(d), half);
  // a slot that runs out through the block's ends needs a step at least as high as the slot is deep
  const least = d.choice('saddle.ends') === 'open' ? 2 + 0.15 * fall(crown, half) : 0.5;
  const tip = d.number('top.tip', 1, corner - floor - least);
  const spare = corner - floor - tip - least + 0.1;
  const hollow = d.choice('top.wing') === 'hollow';
  const rise = d.number('top.wingRise', hollow ? 0.2 : 0, Math.min(spare, 0.85 * wing), 1.5);
  const low = floor + tip + rise;
  const step = Math.max(0.3, corner - low);
  const edge = d.choice('top.edge') === 'none' ? 0 : d.number('top.edgeSize', 0.2, tip - WOOD);
  const { blend, shoulder } = stepRadii(d, { wing, rise, hollow, step, blockEnd, crown, edge });
  const run = Math.sqrt(Math.max(0, 2 * blend * step - step ** 2));
  const back = Math.sqrt(Math.max(0, 2 * (blend + shoulder) * step - step ** 2)) - run;
  return { half, thickness, crown, low, crownEnd: blockEnd - back - 0.3, runStart: blockEnd + run, edge };
}

interface Step {
  readonly wing: number;
  readonly rise: number;
  readonly hollow: boolean;
  readonly step: number;
  readonly blockEnd: number;
  readonly crown: number;
  readonly edge: number;
}

/** The blend reaches from the step's height to where the wing or the crown's own slope ends it. */
function stepRadii(d: Draws, s: Step): { readonly blend: number; readonly shoulder: number } {
  const slope = Math.asin(Math.min(1, s.blockEnd / s.crown)) + 0.06;
  const room = (d.choice('saddle.ends') === 'open' ? 0.6 : 1) * s.wing - 1.5;
  const onWing = (room ** 2 + s.step ** 2) / (2 * s.step);
  const steeper = s.step / (1 - Math.cos(slope));
  const inHollow = s.hollow ? (0.8 * (s.wing ** 2 + s.rise ** 2)) / (2 * s.rise) : Number.POSITIVE_INFINITY;
  const least = s.step * (1 + Math.min(1, ((s.hollow ? 2 : 1) * s.rise) / s.wing)) + 0.2;
  const blend = d.number('top.blend', least, Math.min(onWing, steeper, inHollow), 1.3);
  const run = Math.sqrt(Math.max(0, 2 * blend * s.step - s.step ** 2));
  const keep = Math.max(17, 0.6 * s.blockEnd);
  const longest = ((run + s.blockEnd - keep) ** 2 + s.step ** 2) / (2 * s.step) - blend;
  return { blend, shoulder: d.number('top.shoulder', 1.26 * s.edge, longest, 2) };
}

/** Radius over the saddle, drawn so that the crown has not fallen far where the block ends. */
function crownRadius(d: Draws, blockEnd: number, thickness: number): number {
  const least = (blockEnd ** 2 + (0.5 * thickness) ** 2) / thickness;
  const set = d.choice('top.crown') === 'set';
  const fretboard = fretboardRadius(d, set ? 160 : least);
  return set ? d.number('top.crownRadius', least, 5000, 2.5) : fretboard;
}

/** The fretboard's radius over the saddle. */
function fretboardRadius(d: Draws, least: number): number {
  if (d.choice('guitar.fretboard') === 'constant') return d.number('guitar.fretboardRadius', least, 3000, 2);
  const scale = d.number('guitar.scale');
  const place = scale * (1 - 2 ** (-d.number('guitar.fretboardFret') / 12));
  const stretch = (scale + d.number('saddle.setback')) / place;
  const nut = d.number('guitar.fretboardRadius', 150, 3000, 2);
  const far = d.number('guitar.fretboardRadiusAtFret', nut + (least - nut) / stretch, 3000, 2);
  return nut + (far - nut) * stretch;
}

function undersideRadius(d: Draws): number {
  const shape = d.choice('underside.shape');
  const own = shape !== 'follows';
  if (own) return shape === 'flat' ? Number.POSITIVE_INFINITY : d.number('underside.radius');
  return d.choice('guitar.soundboard') === 'flat'
    ? Number.POSITIVE_INFINITY
    : d.number('guitar.soundboardRadius');
}

interface Holes {
  readonly reach: number;
  /** How far a second row stands behind the first; 0 without one. */
  readonly row: number;
  /** Half of the pins' spread. */
  readonly out: number;
}

/** Pins that follow strings in pairs find room in two rows only. */
function rowsOf(d: Draws): string {
  if (d.choice('pins.spacing') === 'strings' && d.choice('strings.courses') === 'pairs') {
    d.choose('pins.rows', 'two');
  }
  return d.choice('pins.rows');
}

/** Drill, mouth and bevel that leave wood between as many holes as there are strings. */
function holesOf(d: Draws, top: Top): Holes {
  const count = d.number('strings.count');
  const two = rowsOf(d) === 'two';
  const room = ((2 * top.crownEnd - 0.35 * (count - 1) - 0.1) / (2 * count)) * (two ? 1.5 : 1);
  const slope = top.crownEnd / Math.sqrt(Math.max(1, top.crown ** 2 - top.crownEnd ** 2));
  const steepest = (2 * 180 * Math.atan(0.55 / slope)) / Math.PI;
  const bevel = d.choice('pins.bevel') === 'cut';
  const flare = bevel ? Math.tan((d.number('pins.bevelAngle', 60, steepest) * Math.PI) / 360) : 0;
  const climb = slope / Math.max(0.3, 1 - slope * flare);
  const widest = Math.min(7, (room - 0.15 * flare) / (1 + flare * climb));
  const drill = d.number('pins.drill', 2.5, 2 * widest - (bevel ? 0.3 : 0), 0.8);
  const taper = d.orZero('pins.taper', 0.15);
  const mouth = taper > 0 ? d.number('pins.mouth', drill, 2 * widest - 0.15) : drill;
  const hole = Math.max(drill, mouth);
  const deep = 2 * flare * (top.thickness - fall(top.crown, top.crownEnd) - 1.2);
  const radius = bevel
    ? d.number('pins.bevelDiameter', hole + 0.11, Math.min(2 * widest, drill + deep)) / 2
    : hole / 2;
  const reach = radius + flare * (0.15 + climb * radius);
  const apart = 2 * reach + 0.32;
  const row = two ? d.number('pins.rowGap', apart, apart + 6) : 0;
  const step = two ? Math.max(apart / 2, Math.sqrt(Math.max(0, apart ** 2 - row ** 2))) : apart;
  const least = (count - 1) * step;
  return { reach, row, out: d.number('pins.spread', least, 2 * (top.crownEnd - reach), 0.7) / 2 };
}

interface Slot {
  /** Half the slot's length. */
  readonly along: number;
  /** How far the slot reaches toward the nut, toward the pins, measured from its middle. */
  readonly ahead: number;
  readonly behind: number;
  readonly angle: number;
}

function slotOf(d: Draws, top: Top): Slot {
  const angle = d.number('saddle.angle');
  const width = d.number('saddle.slotWidth', 1.2, 8, 1.5);
  const open = d.choice('saddle.ends') === 'open';
  const tilt = d.number('saddle.tilt');
  // a slot that runs out is no deeper than the step beside it: a solved one seldom suits
  if (open && tilt < 11) d.choose('saddle.depthBy', 'set');
  const given = d.choice('saddle.depthBy') === 'set' ? undefined : solvedDepth(d);
  // a flat floor must still be in the wood where the crown has fallen, at the slot's ends
  const shallow =
    given === undefined ? top.crownEnd : Math.sqrt(2 * top.crown * Math.max(0.2, given - WOOD - 0.1));
  const longest = (2 * (Math.min(top.crownEnd, shallow) - WOOD)) / cos(angle);
  const along = open ? top.runStart : d.number('saddle.slotLength', width + 2, longest, 0.7) / 2;
  const parallel = d.choice('saddle.floor') === 'parallel';
  const sag = fall(top.crown, Math.min(along, top.crown * 0.9));
  const least = parallel ? WOOD : fall(top.crown, Math.min(along, top.crownEnd)) + WOOD;
  const wood = top.thickness - WOOD - (width / 2) * sin(tilt) - (parallel ? sag : 0);
  const clear = open ? Math.min(wood, top.thickness - top.low - 0.2 - (parallel ? sag : 0)) : wood;
  const depth = given ?? d.number('saddle.depth', least, clear);
  const lean = along * Math.abs(sin(angle)) + width / 2;
  return { along, ahead: lean + depth * sin(tilt), behind: width / 2, angle };
}

/** The slot's depth as the program solves it. */
function solvedDepth(d: Draws): number {
  d.number('saddle.woodUnder', 0.5, 6.5);
  const found = attempt(d, (design, strings, ends) => {
    const places = strings.map(({ x }) => x);
    const used = (path: string) => d.number(path);
    const placed: Design = {
      ...design,
      saddle: { ...design.saddle, angle: used('saddle.angle'), setback: used('saddle.setback') },
      top: { ...design.top, thickness: used('top.thickness') },
    };
    return depthFit(placed, places, heightFit(placed, places, ends)).depth;
  });
  // a crown too round for its strings has no depth
  if (found !== undefined && Number.isFinite(found)) d.solved('saddle.depth', Math.max(1, found));
  return d.number('saddle.depth');
}

function footprintOf(d: Draws, top: Top, holes: Holes, slot: Slot): void {
  const margin = top.edge + WOOD;
  const lean = holes.out * Math.abs(sin(slot.angle));
  const square = d.choice('pins.line') === 'square';
  const front = d.number('footprint.slotBehindFront', slot.ahead + margin, slot.ahead + margin + 20, 1.5);
  const nearest = slot.behind + holes.reach + WOOD + (square ? lean : 0);
  const behind = d.number('pins.behindSlot', nearest, nearest + 22, 1.5);
  const need = front + behind + holes.row + holes.reach + margin + (square ? 0 : lean);
  const reaches = Math.max(need, front + slot.ahead + margin);
  const wide = Math.max(slot.along, holes.out + holes.reach);
  const drawnIn =
    d.choice('footprint.backEdge') === 'soundhole' || d.choice('footprint.frontEdge') === 'tail';
  const round = d.choice('footprint.tip') === 'round' ? 2 * (top.half - 0.9 * wide) : 75;
  const depth = d.number(
    'footprint.depthCentre',
    reaches,
    Math.min(reaches + 25, drawnIn ? 66 : 75, round),
    1.7,
  );
  wings(d, {
    half: top.half,
    depth,
    wide,
    frontSpare: front - slot.ahead - margin,
    backSpare: depth - reaches,
    edge: top.edge,
  });
}

interface Wings {
  readonly half: number;
  readonly depth: number;
  /** Half of what must keep its place between the edges. */
  readonly wide: number;
  readonly frontSpare: number;
  readonly backSpare: number;
  readonly edge: number;
}

function wings(d: Draws, w: Wings): void {
  const back = d.choice('footprint.backEdge');
  const front = d.choice('footprint.frontEdge');
  const ways = [
    {
      way: { straight: 0, tail: 1, soundhole: -1 }[back] ?? 0,
      form: d.choice('footprint.backForm'),
      spare: w.backSpare,
    },
    {
      way: { straight: 0, soundhole: 1, tail: -1 }[front] ?? 0,
      form: d.choice('footprint.frontForm'),
      spare: w.frontSpare,
    },
  ].filter((e) => e.way !== 0);
  const forms = ways.map((e) => e.form);
  const round = d.choice('footprint.tip') === 'round';
  const corner = Math.max(1, 1.26 * w.edge);
  const tipRoom = round ? 0.6 * w.depth : corner + 2;
  const longest = 2 * (w.half - tipRoom - 6);
  const full = d.number('footprint.fullDepthLength', Math.min(0.4 * w.wide, longest), longest) / 2;
  const sweep = forms.includes('sweep')
    ? d.number('footprint.sweepLength', 4, w.half - full - tipRoom)
    : Number.POSITIVE_INFINITY;
  /** How far an edge may go at the wing: a belly until it meets what stands in the middle. */
  const most = (e: (typeof ways)[number]) => {
    const steep = e.form === 'sweep' ? 0.88 * sweep : e.form === 'taper' ? w.half - full : w.half / 2;
    if (e.way < 0) return steep;
    const inFull = e.form !== 'bow' && full >= w.wide;
    return Math.min(
      steep,
      inFull ? w.depth : e.form === 'bow' ? e.spare * (w.half / w.wide) ** 2 : e.spare * 3,
    );
  };
  const [first, second] = ways;
  let low = w.depth;
  let high = w.depth;
  if (first && !second)
    [low, high] =
      first.way > 0 ? [w.depth - most(first), w.depth - 0.3] : [w.depth + 0.3, w.depth + most(first)];
  if (first && second) {
    const room = second.way < 0 ? 68 - w.depth : 25;
    const belly = d.number('footprint.frontBelly', 0.5, Math.min(most(second), room), 1.5) * second.way;
    [low, high] =
      first.way > 0
        ? [w.depth - belly - most(first), w.depth - belly - 0.3]
        : [w.depth - belly + 0.3, w.depth - belly + most(first)];
  }
  if (round) high = Math.min(high, Math.max(low, 2 * (w.half - 0.85 * w.wide)));
  const wing = ways.length === 0 ? w.depth : d.number('footprint.depthWing', Math.max(12, low), high);
  const rise = Math.abs(w.depth - wing);
  d.number(
    'footprint.knee',
    2,
    (0.9 * Math.min(full, w.half - full - tipRoom)) /
      Math.tan(Math.atan2(Math.max(0.2, rise), w.half - full) / 2),
  );
  if (round) return;
  const bow =
    d.choice('footprint.tip') === 'bowed'
      ? d.number('footprint.tipBow', 0.3, Math.min(12, wing / 3), 1.5)
      : 0;
  const last = forms.includes('sweep') ? w.half - full - sweep - bow : w.half / 2;
  const clear = w.half - w.wide + 2;
  const ahead = d.number('footprint.cornerFront', corner, Math.min(last, clear, 0.8 * (wing - corner)), 1.5);
  d.number('footprint.cornerBack', corner, Math.min(last, clear, 0.85 * (wing - ahead)), 1.5);
}

function channelOf(d: Draws, top: Top, holes: Holes, slot: Slot): void {
  // from a second row a channel seldom finds its way between the pins of the first
  if (holes.row > 0 && (holes.row * 7.3) % 1 < 0.8) d.choose('pins.channel', 'none');
  const drill = d.number('pins.drill');
  const width = d.number('pins.channelWidth', 0.5, drill - 0.25);
  const aside = d.choice('pins.line') === 'square' ? holes.out * Math.abs(sin(slot.angle)) : 0;
  const room = d.number('pins.behindSlot') - slot.behind - aside - WOOD - 0.15 * width;
  const length = d.number('pins.channelLength', 3, room);
  const slope = holes.out / Math.sqrt(Math.max(1, top.crown ** 2 - holes.out ** 2));
  d.number(
    'pins.channelDepth',
    length * (0.05 + 0.3 * slope),
    Math.min(6, top.thickness - fall(top.crown, holes.out) - 1.1),
  );
}

/** Strings that steel can bear, thicker toward the bass, tuned to the note that pulls about as much as was drawn. */
function strings(d: Draws): void {
  const count = stringCount(d);
  const scale = d.number('guitar.scale');
  const at = (i: number) => i / (count - 1);
  const diameters = d.list(
    'strings.diameters',
    count,
    (i) => 0.2 + 0.7 * at(i),
    (i) => 0.35 + 1.2 * at(i),
  );
  const plain = (i: number) => (diameters[i] ?? 1) < 0.5;
  const cores = d.list(
    'strings.cores',
    count,
    (i) => (diameters[i] ?? 1) * (plain(i) ? 1 : 0.32),
    (i) => (diameters[i] ?? 1) * (plain(i) ? 1 : 0.42),
  );
  const wraps = d.list(
    'strings.wraps',
    count,
    () => 7000,
    () => 9200,
  );
  d.list(
    'strings.setbacks',
    count,
    () => 1,
    () => 6,
  );
  d.list('action.cents', count);
  d.list('action.measured', 2);
  const pull = d.number('strings.modulus');
  const notes = Array.from({ length: count }, (_, i) => {
    const [diameter, core, wrap] = [diameters[i] ?? 1, cores[i] ?? 0.4, wraps[i] ?? 8800];
    const kgM =
      (7850 * Math.PI * core ** 2) / 4e6 +
      ((Math.PI / 4) * wrap * Math.PI * (diameter ** 2 - core ** 2)) / 4e6;
    const most = 2.2e9 * (Math.PI / 4) * (core / 1000) ** 2;
    // any number of the draw will do to choose a pull by
    const newtons = Math.min(most, 75 + ((pull * 7 + i * 31) % 90));
    const hz = Math.sqrt(newtons / kgM) / (2 * (scale / 1000));
    if (!Number.isFinite(hz)) return 'E3';
    return i % 3 === 2 ? `${Math.round(hz * 10) / 10} Hz` : noteName(frequencyNumber(hz));
  });
  d.notes('strings.notes', notes);
  const spread = d.number('strings.spread', Math.max(30, 5 * (count - 1)), 10 * (count - 1));
  const pairs = count / 2;
  d.number('strings.pairGap', 1, d.choice('strings.courses') === 'pairs' ? spread / pairs - 0.6 : 6);
  d.choice('strings.spacing');
}

/** Pairs need an even count: an odd draw makes them single strings, now and then not. */
function stringCount(d: Draws): number {
  const count = d.number('strings.count');
  if (count % 2 === 1 && d.number('strings.pitch') < 475) d.choose('strings.courses', 'single');
  return count;
}

function action(d: Draws): void {
  for (const side of ['treble', 'bass'] as const) {
    const at12 = d.number(`action.${side}`, 1.2, 3.2);
    d.number(side === 'treble' ? 'action.firstTreble' : 'action.firstBass', 0.135 * at12 + 0.05, 0.3 * at12);
  }
  d.number('action.nutSetback', -1, 1);
  d.choice('action.nut');
}

/** What is solved is worked out by the program itself: only the design's own bounds are guessed here. */
function heights(d: Draws): void {
  const solves = (path: string) => d.choice(path) === 'solved';
  for (const path of ['saddle.rule', 'saddle.line', 'saddle.filed']) d.choice(path);
  d.number('saddle.firmEnds');
  if (!solves('saddle.angleBy')) d.number('saddle.angle');
  if (!solves('saddle.setbackBy')) d.number('saddle.setback');
  const slot = attempt(d, (design, places, ends) => slotFit(design, places, ends, []).line);
  if (slot && solves('saddle.angleBy')) d.solved('saddle.angle', slot.angleDeg);
  if (slot && solves('saddle.setbackBy')) d.solved('saddle.setback', slot.centreMm);

  const [bySlot, byAction] = [d.choice('top.thicknessBy'), d.choice('saddle.showingBy')];
  const showing = d.number('saddle.showing', 0.5, solves('saddle.depthBy') ? 6 : 10, 1.3);
  const overFrets = attempt(d, (_, __, ends) => ends[Math.floor(ends.length / 2)]?.saddle) ?? 4;
  const least = solves('saddle.depthBy') ? showing + 3.5 : 5.5;
  const wanted = bySlot === 'set' ? d.number('top.thickness', least) : least + 7 * ((showing * 7.3) % 1);
  const plane = wanted + showing - overFrets;
  if (d.choice('action.planeBy') === 'straightedge') d.number('action.planeHeight', plane - 0.4, plane + 0.4);
  else {
    const angle = d.number('action.neckAngle', -1.6, 3.2);
    const beyond = d.number('guitar.scale') * 2 ** (-d.number('action.neckJoint') / 12);
    const rise = d.number('action.domeRise', 0, 4);
    const joint = plane - beyond * Math.tan((angle * Math.PI) / 180) + rise;
    d.number('action.jointHeight', joint - 0.2, joint + 0.2);
  }
  if (bySlot === 'set' && byAction === 'set') return;
  const found = attempt(d, (design, strings, ends) =>
    heightFit(
      design,
      strings.map(({ x }) => x),
      ends,
    ),
  );
  if (!found) return;
  if (bySlot === 'solved') d.solved('top.thickness', found.thickness);
  else d.solved('saddle.showing', found.showing);
}

/** What the program makes of the design so far; undefined where it refuses. */
function attempt<T>(
  d: Draws,
  work: (design: Design, strings: readonly TunedString[], ends: readonly EndHeights[]) => T,
): T | undefined {
  try {
    const { design } = readDesign(d.soFar());
    const strings = tunedStrings(design);
    return work(
      design,
      strings,
      stringHeights(
        design,
        strings.map(({ x }) => x),
      ),
    );
  } catch (error) {
    if (error instanceof DesignError || error instanceof RangeError) return undefined;
    throw error;
  }
}
