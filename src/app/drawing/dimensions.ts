import type { Curves } from '../../../models/curves/curves.ts';
import { applies } from '../../design/applies.ts';
import type { DesignText } from '../../design/design.ts';
import { roundForReading } from '../../design/problem.ts';
import type { Dimension, Place } from './dimension.ts';
import { elevationDimensions } from './elevationDimensions.ts';
import { fieldText } from './fieldText.ts';
import { planDimensions } from './planDimensions.ts';
import { sectionDimensions } from './sectionDimensions.ts';

/** The fields that are dimensioned, the most wanted first: where room is short, the last are left out. */
const WANTED = [
  'footprint.length',
  'footprint.depthCentre',
  'top.thickness',
  'top.tip',
  'saddle.depth',
  'saddle.slotLength',
  'footprint.slotBehindFront',
  'pins.behindSlot',
  'pins.spread',
  'footprint.depthWing',
  'top.block',
  'saddle.angle',
  'top.blend',
  'top.crownRadius',
  'footprint.fullDepthLength',
  'footprint.sweepLength',
] as const;

/** Fields whose number is a radius, marked R on a drawing (ISO 129). */
const RADII: ReadonlySet<string> = new Set(['top.crownRadius', 'top.blend']);

/** Every dimension that says something about this bridge, the most wanted first. */
export function dimensions(curves: Curves, text: DesignText): readonly Dimension[] {
  const maps = [sectionDimensions(curves), planDimensions(curves, text), elevationDimensions(curves)];
  return WANTED.flatMap((path) => {
    const places = maps.flatMap((map) => map.get(path) ?? []);
    if (places.length === 0) return [];
    if (path === 'top.crownRadius' && !applies(path, text)) return [followedCrown(curves, text, places)];
    return applies(path, text) ? [dimensionOf(path, text, places, RADII.has(path))] : [];
  });
}

function dimensionOf(path: string, text: DesignText, places: readonly Place[], isRadius: boolean): Dimension {
  const { label, shown, spoken } = fieldText(text, path);
  const mark = isRadius ? 'R ' : '';
  return { path, text: `${mark}${shown}`, spoken: `${label} ${mark}${spoken}`, places };
}

/** A crown that follows one fretboard radius is that radius; one that follows a cone is told, not typed. */
function followedCrown(curves: Curves, text: DesignText, places: readonly Place[]): Dimension {
  if (text.guitar.fretboard === 'constant') return dimensionOf('guitar.fretboardRadius', text, places, true);
  const radius = roundForReading(curves.profile.crownRadius);
  // brackets: a reference dimension (ISO 129)
  return { path: undefined, text: `(R ${radius})`, spoken: `Crown radius ${radius} mm`, places };
}
