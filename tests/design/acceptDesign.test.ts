import { expect, test } from 'vitest';
import { drawCurves } from '../../models/curves/drawCurves.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { readDesign } from '../../src/design/read.ts';
import { designText, problemsOf } from '../support/change.ts';

test('an accepted design comes as typed, as read and as drawn', () => {
  const text = designText({ 'top.thickness': '3/8 in' });
  const accepted = acceptDesign(text);
  expect(accepted.text).toEqual(text);
  expect(accepted.design).toEqual(readDesign(text).design);
  expect(accepted.curves).toEqual(drawCurves(accepted.design));
});

test('fields are read before anything is drawn: a design that can’t be read is not drawn', () => {
  const paths = problemsOf(designText({ 'top.tip': 99, 'saddle.depth': 15 })).map((p) => p.path);
  expect(paths).toEqual(['top.tip']);
});

test('what can’t be made is refused with every misfit that could be seen', () => {
  const paths = problemsOf(designText({ 'pins.mouth': 3, 'footprint.knee': 20, 'top.block': 150 })).map(
    (p) => p.path,
  );
  expect(paths).toEqual(['top.block']);
  const more = problemsOf(designText({ 'saddle.depth': 9.4, 'pins.behindSlot': 4 })).map((p) => p.path);
  expect(more.sort()).toEqual(['pins.behindSlot', 'saddle.depth']);
});
