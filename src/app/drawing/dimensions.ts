import type { Curves } from '../../../models/curves/curves.ts';
import { applies } from '../../design/applies.ts';
import type { DesignText } from '../../design/design.ts';
import { isNumberField } from '../../design/fields/kinds.ts';
import type { Aimed } from '../../report/aim/aimedDesign.ts';
import { placeOf, typedAt } from '../store/fieldAt.ts';
import type { Dimension, Place } from './dimension.ts';
import { elevationDimensions } from './elevationDimensions.ts';
import { fieldText, solvedText } from './fieldText.ts';
import { planDimensions } from './planDimensions.ts';
import { sectionDimensions } from './sectionDimensions.ts';

/** The fields that are dimensioned, the most wanted first: where room is short, the last are left out. */
const WANTED = [
  'footprint.length',
  'footprint.depthCentre',
  'top.thickness',
  'top.tip',
  'saddle.depth',
  'saddle.angle',
  'saddle.slotLength',
  'footprint.slotBehindFront',
  'pins.behindSlot',
  'pins.spread',
  'footprint.depthWing',
  'top.block',
  'top.blend',
  'top.crownRadius',
  'footprint.fullDepthLength',
  'footprint.sweepLength',
] as const;

/** Fields whose number is a radius, marked R on a drawing (ISO 129). */
const RADII: ReadonlySet<string> = new Set(['top.crownRadius', 'top.blend']);

/** What a solved number came to, read from the curves: mm, or degrees as a design has them. */
const SOLVED: Readonly<Record<string, (curves: Curves, text: DesignText) => number>> = {
  'top.thickness': ({ profile }) => profile.thickness,
  'top.crownRadius': ({ profile }) => profile.crownRadius,
  'saddle.depth': ({ slot }) => slot.depth,
  'saddle.angle': ({ slot }, { guitar }) => ((guitar.hand === 'left' ? -1 : 1) * slot.angle * 180) / Math.PI,
};

/** Every dimension that says something about this bridge, the most wanted first. */
export function dimensions(curves: Curves, text: DesignText, aimed?: Aimed): readonly Dimension[] {
  const maps = [sectionDimensions(curves), planDimensions(curves, text), elevationDimensions(curves)];
  return WANTED.flatMap((path) => {
    const places = maps.flatMap((map) => map.get(path) ?? []);
    if (places.length === 0) return [];
    const isRadius = RADII.has(path);
    if (aimed?.path === path) return [solvedDimension(path, aimed.value, places, isRadius)];
    // a crown that follows one fretboard radius is that radius: it can be typed over
    if (path === 'top.crownRadius' && !isSet(path, text) && text.guitar.fretboard === 'constant')
      return [dimensionOf('guitar.fretboardRadius', text, places, isRadius)];
    const solved = isSet(path, text) ? undefined : SOLVED[path];
    if (solved) return [solvedDimension(path, solved(curves, text), places, isRadius)];
    return applies(path, text) ? [dimensionOf(path, text, places, isRadius)] : [];
  });
}

/** Whether a number is set by hand. Numbers that are never solved are. */
function isSet(path: string, text: DesignText): boolean {
  const place = placeOf(path);
  const by = place && isNumberField(place.field) ? place.field.by : undefined;
  return !place || by === undefined || typedAt(text, { ...place, key: by }) === 'set';
}

function dimensionOf(path: string, text: DesignText, places: readonly Place[], isRadius: boolean): Dimension {
  const { label, shown, spoken } = fieldText(text, path);
  const mark = isRadius ? 'R ' : '';
  return { path, text: `${mark}${shown}`, spoken: `${label} ${mark}${spoken}`, places };
}

function solvedDimension(
  path: string,
  value: number,
  places: readonly Place[],
  isRadius: boolean,
): Dimension {
  const { shown, spoken } = solvedText(path, value, isRadius ? 'R ' : '');
  return { path, solved: true, text: shown, spoken, places };
}
