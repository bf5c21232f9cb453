import { describe, expect, test } from 'vitest';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { applies } from '../../src/design/applies.ts';
import { isNumberField } from '../../src/design/fields/kinds.ts';
import { change, designText } from '../support/change.ts';
import { acceptedDesigns } from '../support/designs.ts';
import { PATHS, tableField } from '../support/draws.ts';

describe('a field has a say only where the choices give it one', () => {
  test.each<[string, Readonly<Record<string, unknown>>, boolean]>([
    ['guitar.soundboardRadius', { 'guitar.soundboard': 'flat' }, false],
    ['guitar.soundboardRadius', { 'guitar.soundboard': 'cylinder' }, true],
    ['guitar.fretboardFret', { 'guitar.fretboard': 'constant' }, false],
    ['guitar.fretboardFret', { 'guitar.fretboard': 'conical' }, true],
    ['strings.pairGap', { 'strings.courses': 'single' }, false],
    ['strings.pairGap', { 'strings.courses': 'pairs' }, true],
    ['action.planeHeight', { 'action.planeBy': 'neck' }, false],
    ['action.neckJoint', { 'action.planeBy': 'neck' }, true],
    ['action.nutSetback', { 'action.nut': 'solved' }, false],
    ['saddle.rule', { 'action.nut': 'solved' }, false],
    ['saddle.angle', { 'saddle.angleBy': 'solved' }, false],
    ['saddle.angle', { 'saddle.angleBy': 'set' }, true],
    ['saddle.showing', { 'top.thicknessBy': 'set', 'saddle.showingBy': 'solved' }, false],
    ['saddle.showing', { 'top.thicknessBy': 'solved', 'saddle.showingBy': 'solved' }, true],
    ['top.thickness', { 'top.thicknessBy': 'solved' }, false],
    ['pins.rowGap', { 'pins.rows': 'two' }, true],
    ['footprint.depthWing', { 'footprint.backEdge': 'straight', 'footprint.frontEdge': 'straight' }, false],
    ['footprint.depthWing', { 'footprint.backEdge': 'straight', 'footprint.frontEdge': 'tail' }, true],
    ['footprint.frontBelly', { 'footprint.backEdge': 'tail', 'footprint.frontEdge': 'straight' }, false],
    ['footprint.frontBelly', { 'footprint.backEdge': 'tail', 'footprint.frontEdge': 'tail' }, true],
    ['footprint.sweepLength', { 'footprint.backEdge': 'tail', 'footprint.backForm': 'bow' }, false],
    ['footprint.sweepLength', { 'footprint.backEdge': 'tail', 'footprint.backForm': 'sweep' }, true],
    ['footprint.knee', { 'footprint.backEdge': 'straight', 'footprint.backForm': 'taper' }, false],
    ['footprint.knee', { 'footprint.backEdge': 'tail', 'footprint.backForm': 'taper' }, true],
    ['footprint.cornerBack', { 'footprint.tip': 'round' }, false],
    ['footprint.tipBow', { 'footprint.tip': 'square' }, false],
    ['underside.radius', { 'underside.shape': 'follows' }, false],
    ['underside.radius', { 'underside.shape': 'sphere' }, true],
    ['top.crownRadius', { 'top.crown': 'follows' }, false],
    ['top.edgeSize', { 'top.edge': 'none' }, false],
    ['saddle.slotLength', { 'saddle.ends': 'open' }, false],
    ['pins.mouth', { 'pins.taper': 0 }, false],
    ['pins.bevelAngle', { 'pins.bevel': 'none' }, false],
    ['pins.channelDepth', { 'pins.channel': 'none' }, false],
    ['pins.channelDepth', { 'pins.channel': 'ramp' }, true],
    ['top.thickness', {}, true],
    ['guitar.name', {}, true],
  ])('%s with %j: %s', (path, changes, says) => {
    expect(applies(path, designText(changes))).toBe(says);
  });
});

test('a number that is said to have no say changes no curve', () => {
  for (const { text, curves } of acceptedDesigns(15, 31).accepted) {
    const before = JSON.stringify(curves);
    for (const path of PATHS) {
      const field = tableField(path);
      if (!isNumberField(field) || applies(path, text)) continue;
      for (const end of [field.min, field.max]) {
        const changed = acceptDesign(change(text, { [path]: end }));
        expect(JSON.stringify(changed.curves), `${path} = ${end}`).toBe(before);
      }
    }
  }
});
