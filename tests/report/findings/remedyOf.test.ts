import { describe, expect, test } from 'vitest';
import { type AcceptedDesign, acceptDesign } from '../../../src/design/acceptDesign.ts';
import { isNumberField } from '../../../src/design/fields/kinds.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import type { Finding } from '../../../src/report/findings/finding.ts';
import { findings } from '../../../src/report/findings/findings.ts';
import { judgedOf } from '../../../src/report/findings/judgedOf.ts';
import { type Remedy, remedyOf } from '../../../src/report/findings/remedyOf.ts';
import { withChanges } from '../../../src/report/findings/withChanges.ts';
import { type Changes, change, problemsOf, typedAt } from '../../support/change.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { tableField } from '../../support/draws.ts';
import { PAIRS } from './pairs.ts';
import { sound } from './sound.ts';

/** Whether a number lies on a whole multiple of a step. */
const onStep = (value: number, step: number) => Math.abs(value / step - Math.round(value / step)) < 1e-6;

/** Applies a remedy and says what is wrong with it: nothing, when the finding is gone, and no error is new. */
function wrongWith(accepted: AcceptedDesign, { id }: Finding, remedy: Remedy): readonly string[] {
  const text = withChanges(accepted.text, remedy.changes);
  const problems = problemsOf(text);
  if (problems.length > 0) return [`${remedy.text}: ${problems[0]?.path} ${problems[0]?.allowed}`];
  const before = findings(judgedOf(accepted)).filter(({ severity }) => severity === 'error');
  const after = findings(judgedOf(acceptDesign(text)));
  const field = tableField(remedy.path);
  const step = isNumberField(field) ? field.step : Number.NaN;
  return [
    ...(after.some((one) => one.id === id) ? [`${remedy.text}: ${id} stays`] : []),
    ...after
      .filter(({ severity }) => severity === 'error')
      .filter((one) => !before.some(({ id: known }) => known === one.id))
      .map((one) => `${remedy.text}: ${one.id} is new`),
    ...(onStep(remedy.value, step) || onStep(remedy.value, 0.01) ? [] : [`${remedy.value} is on no step`]),
    ...(Object.keys(remedy.changes).some((path) => path.startsWith('limits.')) ? ['a limit is moved'] : []),
    ...(remedy.changes[remedy.path] === remedy.value ? [] : ['what is typed is not the value']),
  ];
}

describe('a remedy applied removes its finding', () => {
  test.each(PAIRS)('$id, $path $trips', ({ id, base, path, trips }) => {
    const accepted = acceptDesign(sound({ ...base, [path]: trips }));
    const finding = findings(judgedOf(accepted)).find((one) => one.id === id);
    if (!finding) throw new Error(`${id} is not found`);
    const remedy = remedyOf(accepted, finding);
    if (remedy) expect(wrongWith(accepted, finding, remedy)).toEqual([]);
    // one number put it wrong: where the rule names that number, one number mends it
    if (finding.mends.includes(path)) expect(remedy, `${id} by ${path}`).toBeDefined();
  });

  test('for random designs', () => {
    let mended = 0;
    for (const accepted of acceptedDesigns(5, 97).accepted) {
      for (const finding of findings(judgedOf(accepted))) {
        const remedy = remedyOf(accepted, finding);
        if (!remedy) continue;
        mended++;
        expect(wrongWith(accepted, finding, remedy), finding.id).toEqual([]);
      }
    }
    expect(mended).toBeGreaterThan(15);
  });
});

const remedyFor = (id: string, changes: Changes) => {
  const accepted = acceptDesign(sound(changes));
  const finding = findings(judgedOf(accepted)).find((one) => one.id === id);
  if (!finding) throw new Error(`${id} is not found`);
  return { accepted, remedy: remedyOf(accepted, finding) };
};

describe('the remedy is', () => {
  test('the nearest whole step that mends', () => {
    expect(remedyFor('wing-tip', { 'top.tip': 1.93 }).remedy).toEqual({
      path: 'top.tip',
      value: 2.5,
      text: 'Make the wing tip 2.5 mm thick',
      changes: { 'top.tip': 2.5 },
      price: [],
    });
    expect(remedyFor('wing-tip', { 'top.tip': 5 }).remedy?.value).toBe(4);
    expect(remedyFor('usual-length', { 'footprint.length': 189 }).remedy?.value).toBe(180);
  });

  test('with its price, where every value has one', () => {
    // thickness and showing by hand: any other showing is another action
    const set = { 'top.thicknessBy': 'set', 'top.thickness': 9.3, 'saddle.showingBy': 'set' };
    const { remedy } = remedyFor('saddle-showing', { ...set, 'saddle.showing': 5.2 });
    expect(remedy?.path).toBe('saddle.showing');
    expect(remedy?.price.map(({ id }) => id)).toEqual([]);
    const dear = remedyFor('saddle-showing', {
      'top.thicknessBy': 'set',
      'top.thickness': 8.8,
      'saddle.showingBy': 'solved',
    }).remedy;
    expect(dear?.price.every(({ severity, id }) => severity === 'warning' || id === 'action-otherwise')).toBe(
      true,
    );
  });

  test('a number set by hand that was solved before, its choice with it', () => {
    const { accepted, remedy } = remedyFor('straightedge-gap', {
      'saddle.showing': 3.8,
      'limits.gapLeast': 0,
    });
    expect(accepted.design.top.thicknessBy).toBe('solved');
    // 4.04 would show over a thickness of 9.3: on a whole step only the thickness itself comes out so
    expect(remedy).toMatchObject({
      path: 'top.thickness',
      value: 9.3,
      changes: { 'top.thicknessBy': 'set', 'top.thickness': 9.3 },
    });
  });

  test('what the guitar asks for, where that was set otherwise', () => {
    const set = { 'top.thicknessBy': 'set', 'top.thickness': 9.25, 'saddle.showingBy': 'set' };
    const { accepted, remedy } = remedyFor('action-otherwise', { ...set, 'saddle.showing': 4.6 });
    expect(remedy?.path).toBe('saddle.showing');
    expect(remedy?.value).toBeCloseTo(accepted.fit.solved['saddle.showing'].solved, 2);
  });

  test('never a dimension that follows an aim', () => {
    const aimed = { 'aim.of': 'tip', 'aim.tip': 0.6, 'aim.follows': 'tip' };
    const { remedy } = remedyFor('wing-tip', aimed);
    expect(remedy?.path).toBe('aim.tip');
  });

  test('none where the rule names no number', () => {
    expect(remedyFor('string-height', { 'action.planeHeight': 10 }).remedy).toBeUndefined();
  });

  test('one that brings no new warning, before one that does', () => {
    // a deeper slot would hold the saddle, but leave less wood under it than is wanted
    const { accepted, remedy } = remedyFor('saddle-not-half-in', {
      'top.thicknessBy': 'set',
      'top.thickness': 7.9,
      'limits.showingMost': 8,
    });
    if (!remedy) throw new Error('no remedy');
    const warnings = (one: AcceptedDesign) =>
      findings(judgedOf(one))
        .filter(({ severity }) => severity !== 'note')
        .map(({ id }) => id);
    const after = warnings(acceptDesign(withChanges(accepted.text, remedy.changes)));
    expect(after.filter((id) => !warnings(accepted).includes(id))).toEqual([]);
  });
});

test('withChanges types some fields anew and leaves all others, and the design it is given', () => {
  const text = initialDesign();
  const changed = withChanges(text, { 'top.tip': 2.5, 'saddle.depthBy': 'set' });
  expect(changed).toEqual(change(text, { 'top.tip': 2.5, 'saddle.depthBy': 'set' }));
  expect(typedAt(text, 'top.tip')).toBe(3);
});
