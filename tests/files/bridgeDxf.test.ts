import { expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { bridgeDxf } from '../../src/files/bridgeDxf.ts';
import { designText } from '../support/change.ts';

const remarks = (dxf: string) => [...dxf.matchAll(/^999\r\n(.*)\r$/gm)].map(([, text]) => text);
const diameters = (dxf: string, layer: string) =>
  [
    ...dxf.matchAll(new RegExp(`CIRCLE\\r\\n  8\\r\\n${layer}\\r\\n(?:.*\\r\\n){6} 40\\r\\n(.*)\\r`, 'g')),
  ].map(([, radius]) => 2 * Number(radius));
const pinned = (bevel: 'cut' | 'none') =>
  acceptDesign(
    designText({
      'pins.drill': 4.8,
      'pins.taper': 5,
      'pins.mouth': 5.6,
      'pins.bevel': bevel,
      'pins.bevelDiameter': 6.6,
    }),
  );

test('as reamed: the mouth is drawn where no bevel takes it away, and a remark gives drill, taper and mouth', () => {
  const bare = bridgeDxf(pinned('none'), 'reamed', 'T');
  for (const size of diameters(bare, 'PIN_MOUTHS')) expect(size).toBeCloseTo(5.6, 6);
  expect(diameters(bare, 'PIN_MOUTHS')).toHaveLength(6);
  const said = 'drill 4.8 before reaming; taper 5 deg (included), mouth 5.60 at the top';
  expect(remarks(bare).join('\n')).toContain(`PINS: ${said}`);
  expect(remarks(bare)).toContain("PIN_MOUTHS: the taper's mouth 5.60");

  const bevelled = bridgeDxf(pinned('cut'), 'reamed', 'T');
  for (const size of diameters(bevelled, 'PIN_MOUTHS')) expect(size).toBeCloseTo(6.6, 6);
  expect(remarks(bevelled).join('\n')).toContain(`PINS: ${said}`);
  expect(remarks(bevelled)).toContain('PIN_MOUTHS: bevel 6.6, which takes the mouth away');
});

test('as drilled: no taper is spoken of', () => {
  const dxf = bridgeDxf(pinned('none'), 'drilled', 'T');
  expect(remarks(dxf)).toContain('PINS: drill 4.8 and left so');
  expect(remarks(dxf).join('\n')).not.toMatch(/taper|mouth/i);
  expect(diameters(dxf, 'PIN_MOUTHS')).toEqual([]);
});
