import { describe, expect, test } from 'vitest';
import type { Dimension, Place } from '../../../src/app/drawing/dimension.ts';
import { dimensions } from '../../../src/app/drawing/dimensions.ts';
import { spanOf } from '../../../src/app/drawing/drawLinear.ts';
import { type AcceptedDesign, acceptDesign } from '../../../src/design/acceptDesign.ts';
import { applies } from '../../../src/design/applies.ts';
import type { DesignText } from '../../../src/design/design.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { designWith, someDesigns } from './someDesigns.ts';

const numberAt = ({ design }: AcceptedDesign, path: string): number => {
  const [group, key] = path.split('.') as [keyof typeof design, string];
  return (design[group] as unknown as Readonly<Record<string, number>>)[key] as number;
};

/** What a place measures on the part: mm, or degrees for an angle; undefined for a radius. */
function measured(place: Place): number | undefined {
  if (place.kind === 'linear') return spanOf(place, 1);
  return place.kind === 'angle' ? (Math.abs(place.angle) * 180) / Math.PI : undefined;
}

/** The tip is dimensioned on the long profile's own line, where the soundboard may stand a little higher. */
const SLACK: Readonly<Record<string, number>> = { 'top.tip': 0.12 };

function check(accepted: AcceptedDesign): number {
  let count = 0;
  for (const { path, places } of dimensions(accepted.curves, accepted.text)) {
    for (const place of places) {
      const size = measured(place);
      if (size === undefined) continue;
      const expected = Math.abs(numberAt(accepted, path));
      const slack = SLACK[path] ?? 1e-6;
      expect(
        Math.abs(size - expected),
        `${path} measures ${size} in the ${place.view}, the design says ${expected}: ${JSON.stringify(accepted.text)}`,
      ).toBeLessThan(slack);
      count++;
    }
  }
  return count;
}

describe('a dimension measures on the curves what the design says', () => {
  test.each(Object.entries(someDesigns))('%s', (_name, accepted) => {
    expect(check(accepted)).toBeGreaterThan(10);
  });

  test('120 random designs', { timeout: 60_000 }, () => {
    for (const accepted of acceptedDesigns(120, 71).accepted) check(accepted);
  });
});

describe('a radius stands on its arc', () => {
  test.each(Object.entries(someDesigns))('%s', (_name, { curves, text, design }) => {
    for (const { path, places } of dimensions(curves, text)) {
      for (const place of places) {
        if (place.kind !== 'radius') continue;
        const radius = path === 'top.blend' ? design.top.blend : curves.profile.crownRadius;
        // the leader points at the centre: the blend's lies above it, the crown's below
        const far = path === 'top.blend' ? radius : -radius;
        const [x, z] = [place.at[0] + far * place.way[0], place.at[1] + far * place.way[1]];
        if (path === 'top.blend') {
          const arc = curves.profile.chain.find(
            (s) => s.kind === 'arc' && s.radius === radius && s.centre[0] > 0,
          );
          expect(arc?.kind === 'arc' && Math.hypot(x - arc.centre[0], z - arc.centre[1])).toBeCloseTo(0, 9);
        } else {
          expect(x).toBeCloseTo(0, 9);
          expect(z).toBeCloseTo(curves.profile.thickness - radius, 9);
        }
      }
    }
  });
});

describe('which dimensions there are', () => {
  const paths = (list: readonly Dimension[]) => list.map((d) => d.path);
  const of = (name: string) => {
    const { curves, text } = someDesigns[name] as AcceptedDesign;
    return dimensions(curves, text);
  };

  test('all of the usual design, the most wanted first', () => {
    expect(paths(of('usual'))).toEqual([
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
      'guitar.fretboardRadius',
      'footprint.fullDepthLength',
      'footprint.sweepLength',
    ]);
  });

  test('none that says nothing', { timeout: 60_000 }, () => {
    for (const { curves, text } of acceptedDesigns(60, 9).accepted) {
      for (const { path, solved } of dimensions(curves, text))
        expect(solved || applies(path, text), path).toBe(true);
    }
    expect(paths(of('round tips, conical fretboard'))).not.toContain('footprint.depthWing');
    expect(paths(of('five pins, open slot'))).not.toContain('saddle.slotLength');
    expect(paths(of('taper, typed in inches, tilted slot'))).not.toContain('footprint.sweepLength');
  });

  test('texts are as typed, read out with their unit', () => {
    const list = of('taper, typed in inches, tilted slot');
    const said = (path: string) => list.find((d) => d.path === path);
    expect(said('footprint.length')).toMatchObject({ text: '6 1/8 in', spoken: 'Length 6 1/8 in' });
    expect(said('top.tip')).toMatchObject({ text: '3.0', spoken: 'Wing tip 3.0 mm' });
    expect(said('saddle.angle')).toMatchObject({ text: '2.9°', spoken: 'Slot angle 2.9°' });
    expect(said('top.blend')).toMatchObject({ text: 'R 25', spoken: 'Blend at the block R 25 mm' });
  });

  test('a crown that follows is the fretboard’s radius, or told in brackets when that is a cone', () => {
    expect(of('usual').find((d) => d.path === 'guitar.fretboardRadius')?.text).toBe('R 16 in');
    expect(of('twelve pins').find((d) => d.path === 'top.crownRadius')?.text).toBe('R 700');
    const { crownRadius } = (someDesigns['round tips, conical fretboard'] as AcceptedDesign).curves.profile;
    const told = of('round tips, conical fretboard').find((d) => d.path === 'top.crownRadius');
    expect(told).toMatchObject({ solved: true, text: `(R ${Math.round(100 * crownRadius) / 100})` });
  });

  test('a solved number stands in brackets with what it came to; set by hand, as typed', () => {
    const text = initialDesign();
    const { fit, curves } = acceptDesign(text);
    const said = (path: string, list: readonly Dimension[]) => list.find((d) => d.path === path);
    const solved = dimensions(curves, text);
    for (const path of ['top.thickness', 'saddle.depth', 'saddle.angle'] as const) {
      const number = Math.round(100 * fit.solved[path].used) / 100;
      const unit = path === 'saddle.angle' ? '°' : '';
      expect(said(path, solved)).toMatchObject({ solved: true, text: `(${number}${unit})` });
      expect(said(path, of('usual'))?.solved, path).toBeUndefined();
    }
    expect(said('saddle.angle', solved)?.spoken).toBe('Slot angle 2.96°, solved');
  });

  test('a solved angle is told as the design has it, left-handed and negative too', () => {
    const left = designWith({ 'guitar.hand': 'left', 'saddle.angleBy': 'solved' });
    const angle = (text: DesignText) =>
      dimensions(acceptDesign(text).curves, text).find((d) => d.path === 'saddle.angle')?.text;
    expect(angle(left)).toBe('(2.96°)');
    const other = { ...left, strings: { ...left.strings, setbacks: [5, 4.5, 4, 3.5, 3, 2.5] } };
    expect(angle(other)).toMatch(/^\(−\d\.\d+°\)$/);
  });

  test('a text that can’t be read, or choices that don’t suit the curves, are drawn none the less', () => {
    const { curves } = someDesigns['round tips, conical fretboard'] as AcceptedDesign;
    const text = designWith({
      'top.tip': 'thin',
      'footprint.backForm': 'taper',
      'footprint.length': '9'.repeat(40),
    });
    const list = dimensions(curves, text);
    expect(list.find((d) => d.path === 'top.tip')?.text).toBe('thin');
    expect(list.find((d) => d.path === 'footprint.length')?.text).toHaveLength(16);
    for (const { places } of list) expect(JSON.stringify(places)).not.toContain('null');
  });
});
