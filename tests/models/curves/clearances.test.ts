import { expect, test } from 'vitest';
import { clearances } from '../../../models/curves/clearances.ts';
import { curves, design } from '../../support/change.ts';

test('a bridge that fits has none', () => {
  expect(clearances(design({}), curves({}))).toEqual([]);
});

test('what is wrong with edge, slot, pins and channels is all said at once', () => {
  // the curves of one design judged by the fields of another that wants more of everything
  const drawn = curves({ 'pins.channel': 'ramp' });
  const wanting = design({
    'top.edgeSize': 4,
    'pins.bevelDiameter': 14,
    'pins.bevelAngle': 60,
    'pins.channel': 'ramp',
    'pins.channelDepth': 6,
    'top.thickness': 7,
  });
  const thin = {
    ...drawn,
    pins: drawn.pins.map((pin) => ({ ...pin, top: 6.5 })),
    slot: { ...drawn.slot, depth: 9.4 },
  };
  const paths = clearances(wanting, thin).map((p) => p.path);
  for (const path of ['top.shoulder', 'saddle.depth', 'pins.bevelDiameter', 'pins.channelDepth'])
    expect(paths).toContain(path);
});
