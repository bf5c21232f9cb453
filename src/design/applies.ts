import type { Design } from './design.ts';
import { followedPath } from './followed.ts';

type Choices = {
  readonly [G in keyof Design]?: { readonly [K in keyof Design[G]]?: unknown };
};

/** Fields that say nothing under some choices: path → whether it applies. The form hides what doesn't apply. */
const WHEN: Readonly<Record<string, (d: Choices) => boolean>> = {
  'guitar.soundboardRadius': (d) => d.guitar?.soundboard !== 'flat',
  'guitar.fretboardRadiusAtFret': (d) => d.guitar?.fretboard === 'conical',
  'guitar.fretboardFret': (d) => d.guitar?.fretboard === 'conical',
  'action.planeHeight': (d) => d.action?.planeBy === 'straightedge',
  'action.neckAngle': (d) => d.action?.planeBy === 'neck',
  'action.neckJoint': (d) => d.action?.planeBy === 'neck',
  'action.jointHeight': (d) => d.action?.planeBy === 'neck',
  'action.domeRise': (d) => d.action?.planeBy === 'neck',
  'action.nutSetback': (d) => d.action?.nut === 'set',
  'strings.pairGap': (d) => d.strings?.courses === 'pairs',
  'footprint.depthWing': (d) => curved(d),
  'footprint.backForm': (d) => d.footprint?.backEdge !== 'straight',
  'footprint.frontForm': (d) => d.footprint?.frontEdge !== 'straight',
  'footprint.frontBelly': (d) =>
    d.footprint?.backEdge !== 'straight' && d.footprint?.frontEdge !== 'straight',
  'footprint.fullDepthLength': (d) => runs(d, 'sweep') || runs(d, 'taper'),
  'footprint.sweepLength': (d) => runs(d, 'sweep'),
  'footprint.knee': (d) => runs(d, 'taper'),
  'footprint.tipBow': (d) => d.footprint?.tip === 'bowed',
  'footprint.cornerFront': (d) => d.footprint?.tip !== 'round',
  'footprint.cornerBack': (d) => d.footprint?.tip !== 'round',
  'underside.radius': (d) => d.underside?.shape === 'cylinder' || d.underside?.shape === 'sphere',
  'top.thicknessBy': (d) => !follows(d, 'top.thickness'),
  'top.thickness': (d) => d.top?.thicknessBy === 'set',
  'top.crownRadius': (d) => d.top?.crown === 'set',
  'top.edgeSize': (d) => d.top?.edge !== 'none',
  'saddle.rule': (d) => d.action?.nut !== 'solved',
  'saddle.crownMargin': (d) => d.saddle?.filed === 'each',
  'saddle.angle': (d) => d.saddle?.angleBy === 'set',
  'saddle.setback': (d) => d.saddle?.setbackBy === 'set',
  'saddle.depth': (d) => d.saddle?.depthBy === 'set',
  'saddle.woodUnder': (d) => d.saddle?.depthBy === 'solved',
  'saddle.showingBy': (d) => !showingWanted(d),
  'saddle.showing': (d) => showingWanted(d) || d.saddle?.showingBy === 'set',
  'saddle.slotLength': (d) => d.saddle?.ends !== 'open',
  'pins.rowGap': (d) => d.pins?.rows === 'two',
  'pins.mouth': (d) => d.pins?.taper !== 0,
  'pins.bevelAngle': (d) => d.pins?.bevel === 'cut',
  'pins.bevelDiameter': (d) => d.pins?.bevel === 'cut',
  'pins.channelLength': (d) => d.pins?.channel === 'ramp',
  'pins.channelWidth': (d) => d.pins?.channel === 'ramp',
  'pins.channelDepth': (d) => d.pins?.channel === 'ramp',
  'timber.saddleDensity': (d) => d.timber?.weighed === 'strung',
  'timber.pinMass': (d) => d.timber?.weighed === 'strung',
  'aim.mass': (d) => d.aim?.of === 'mass',
  'aim.stiffness': (d) => d.aim?.of === 'stiffness',
  'aim.tip': (d) => d.aim?.of === 'tip',
  'aim.follows': (d) => d.aim?.of === 'mass',
  'aim.stiffnessFollows': (d) => d.aim?.of === 'stiffness',
};

/** A thickness that is solved from the showing takes what shows as wanted. */
function showingWanted(d: Choices): boolean {
  return d.top?.thicknessBy === 'solved' && !follows(d, 'top.thickness');
}

function follows(d: Choices, path: string): boolean {
  return followedPath(d.aim) === path;
}

function curved(d: Choices): boolean {
  return d.footprint?.backEdge !== 'straight' || d.footprint?.frontEdge !== 'straight';
}

function runs(d: Choices, form: 'sweep' | 'bow' | 'taper'): boolean {
  const f = d.footprint;
  return (
    (f?.backEdge !== 'straight' && f?.backForm === form) ||
    (f?.frontEdge !== 'straight' && f?.frontForm === form)
  );
}

/** Whether the field at `group.field` has a say under the design's present choices. */
export function applies(path: string, design: Choices): boolean {
  return !follows(design, path) && (WHEN[path]?.(design) ?? true);
}
