import { describe, expect, test } from 'vitest';
import { FIELDS } from '../../../src/design/fields.ts';
import { findings } from '../../../src/report/findings/findings.ts';
import { RULES } from '../../../src/report/findings/rules.ts';
import { mm, said } from '../../../src/report/said.ts';
import { tipWall } from '../../../src/report/tipWall.ts';
import { PAIRS } from './pairs.ts';
import { foundBy, judgedWith } from './sound.ts';

/*
 * Limits: common practice or levels of our own, as each finding's source says, but for the stress in string steel
 * (Zollner, Physics of the Electric Guitar §1.2). Where a
 * value just inside is no closed form said beside it, it is derived: the program's own number at its limit.
 */

describe.each(PAIRS)('$id, $path $trips', ({ id, severity, base, path, trips, inside, found }) => {
  test(`${id} is found`, () => {
    const finding = foundBy(id, { ...base, [path]: trips });
    expect(finding, `${id} finds nothing with ${path} ${trips}`).toMatchObject({ id, severity });
    if (found !== undefined) expect(finding?.found).toBe(found);
  });

  test(`${id} is not found just inside, with ${inside}`, () => {
    expect(foundBy(id, { ...base, [path]: inside })).toBeUndefined();
  });
});

test('every rule has a design that trips it and one just inside, and every id is used once', () => {
  const ids = RULES.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.filter((id) => !PAIRS.some((pair) => pair.id === id))).toEqual([]);
  expect(PAIRS.filter(({ id }) => !ids.includes(id))).toEqual([]);
});

test('of the sound design no rule has more than one thing to say: that a plain B beside a wound G is filed as far as it goes', () => {
  expect(findings(judgedWith()).map(({ id, severity }) => `${severity} ${id}`)).toEqual([
    'note crown-beyond-saddle',
  ]);
});

describe('a limit of the design’s own', () => {
  test.each([
    ['saddle-not-half-in', 'limits.held', 0.5, 0.55],
    ['saddle-showing', 'limits.showingMost', 4.5, 4.3],
    ['break-angle', 'limits.breakAngle', 15, 22],
    ['string-height', 'limits.stringLeast', 11.5, 12.5],
    ['straightedge-gap', 'limits.gapLeast', -0.5, 0.1],
    ['steel-stress', 'limits.steel', 2.2, 1.4],
    ['wood-before-slot', 'limits.woodBefore', 2, 8],
    ['wood-behind-slot', 'limits.woodBehind', 2, 8],
    ['wood-under-slot', 'limits.woodUnder', 2, 4.5],
    ['wood-between-pins', 'limits.betweenPins', 2, 5],
    ['wood-behind-pins', 'limits.behindPins', 3, 9],
    ['wing-tip', 'limits.tipLeast', 2.5, 3.5],
    ['tip-wall', 'limits.tipWall', 1, 2.1],
    ['bevel-ring', 'limits.bevelRing', 0.3, 0.6],
    ['mass', 'limits.massMost', 35, 25],
  ])('%s goes by %s', (id, path, usual, stricter) => {
    // a solved depth would follow what must be held
    const base = { 'saddle.depthBy': 'set', 'saddle.depth': 5.6 };
    expect(foundBy(id, { ...base, [path]: usual })).toBeUndefined();
    expect(foundBy(id, { ...base, [path]: stricter })).toMatchObject({ limitPath: path });
  });
});

/** Rules whose level is no usual level of the trade, or is only in part. */
const OURS = [
  'steel-stress',
  'straightedge-gap',
  'wood-behind-slot',
  'wood-between-pins',
  'wood-behind-pins',
  'tip-wall',
  'bevel-ring',
  'usual-drill',
];

test('a level of our own is never shown as common practice alone, nor one of the trade as ours', () => {
  for (const { id, base, path, trips } of PAIRS) {
    const found = foundBy(id, { ...base, [path]: trips });
    expect(/[Oo]ur own/.test(found?.source ?? ''), `${id}: ${found?.source}`).toBe(OURS.includes(id));
    const help =
      found?.limitPath && FIELDS.limits[found.limitPath.slice(7) as keyof typeof FIELDS.limits].help;
    if (help && id !== 'straightedge-gap')
      expect(help.includes('ur own level'), found.limitPath).toBe(OURS.includes(id));
  }
});

test.each([
  ['usual-depth-wings', { 'footprint.depthWing': 15 }, { 'footprint.backEdge': 'straight' }],
  ['usual-edge', { 'top.edgeSize': 0.3 }, { 'top.edge': 'none' }],
  ['usual-slot-length', { 'saddle.slotLength': 60 }, { 'saddle.ends': 'open' }],
  ['usual-soundboard', { 'guitar.soundboardRadius': 15000 }, { 'guitar.soundboard': 'flat' }],
])('%s is not about a dimension that has no say', (id, wrong, otherwise) => {
  expect(foundBy(id, wrong)).toBeDefined();
  expect(foundBy(id, { ...wrong, ...otherwise })).toBeUndefined();
});

describe('texts', () => {
  test('string-under-top says which strings and by how much', () => {
    const low = {
      'saddle.showing': 0,
      'action.treble': 1.2,
      'action.firstTreble': 0.3,
      'action.bass': 3.5,
      'action.firstBass': 0.7,
    };
    const { accepted } = judgedWith(low);
    const { crownRadius: r, thickness } = accepted.curves.profile;
    const top = thickness - r + Math.sqrt(r * r - 27.5 * 27.5);
    const under = top - (accepted.fit.height.undersides[0] ?? 0);
    expect(under).toBeGreaterThan(1);
    const found = foundBy('string-under-top', low);
    expect(found?.path).toBe('top.thickness');
    expect(found?.text).toContain('string 1 (E4), string 2 (B3), string 3 (G3) under the bridge’s top');
    expect(found?.text).toContain(`by ${mm(under)} at most`);
  });

  test('steel-stress says the stress and its source', () => {
    // S2, plain: 7850·(2·.645·466.16)² Pa
    const gpa = (7850 * (2 * 0.645 * 466.1638) ** 2) / 1e9;
    const found = foundBy('steel-stress', { 'strings.notes': ['A#4', 'B3', 'G3', 'D3', 'A2', 'E2'] });
    expect(found?.text).toContain(`string 1 (A#4) bears ${said(gpa, 'GPa')}`);
    expect(found?.source).toContain('Zollner');
  });

  test('action-otherwise says which way', () => {
    const set = { 'top.thicknessBy': 'set', 'top.thickness': 9.1368, 'saddle.showingBy': 'set' };
    expect(foundBy('action-otherwise', { ...set, 'saddle.showing': 4.2 })).toBeUndefined();
    expect(foundBy('action-otherwise', { ...set, 'saddle.showing': 5.2 })?.text).toContain('0.5 mm higher');
    expect(foundBy('action-otherwise', { ...set, 'saddle.showing': 3.2 })?.text).toContain('0.5 mm lower');
  });

  test('saddle-not-half-in says how much deeper the slot must be', () => {
    const found = foundBy('saddle-not-half-in', { 'saddle.depthBy': 'set', 'saddle.depth': 4 });
    // at the outer strings a flat floor is shallower by the crown's fall
    const { fit } = judgedWith().accepted;
    expect(found?.text).toContain(`up to ${(fit.depth.forHold - 4).toFixed(2)} mm too shallow`);
  });

  test('string-lifts says how far the break angle falls', () => {
    const found = foundBy('string-lifts', {
      'action.planeBy': 'neck',
      'action.neckAngle': -2,
      'action.jointHeight': 15,
      'saddle.showing': 0.6,
      'saddle.floor': 'parallel',
      'pins.behindSlot': 24,
      'footprint.depthCentre': 46,
      'footprint.depthWing': 38,
    });
    expect(found?.text).toMatch(/doesn’t bear .*string \d \(..\).*falls to −\d\.\d\d°, and must be above 0/);
  });

  test('saddle-too-short says what to lengthen: the slot, or the block of one that runs out', () => {
    expect(foundBy('saddle-too-short', { 'saddle.slotLength': 54 })?.text).toContain('54 mm');
    expect(foundBy('saddle-too-short', { 'saddle.slotLength': 54 })?.path).toBe('saddle.slotLength');
  });

  test('cents-misread names the strings', () => {
    const found = foundBy('cents-misread', { 'action.cents': [60, -60, 5, '', '', ''] });
    expect(found?.path).toBe('action.cents');
    expect(found?.text).toContain('string 1 (E4), string 2 (B3) to 0');
    expect(found?.found).toBe('60 cents, −60 cents');
  });

  test('crown-beyond-saddle warns where the crown belongs farther off than is usual', () => {
    const found = foundBy('crown-beyond-saddle', { 'strings.setbacks': ['', 12, '', '', '', ''] });
    expect(found).toMatchObject({
      severity: 'warning',
      text: expect.stringContaining('Look at the strings'),
    });
    expect(found?.source).not.toContain('Mottola');
  });

  test('crown-beyond-saddle calls usual only what a plain string beside a wound one does', () => {
    const usual = foundBy('crown-beyond-saddle', {});
    expect(usual?.text).toContain('string 2 (B3), string 3 (G3)');
    expect(usual?.text).toContain('That is usual where a plain string stands beside a wound one');
    expect(usual?.source).toContain('Mottola');
    // a saddle so narrow that the outermost wound string, beside another wound one, belongs beyond it
    const lowE = foundBy('crown-beyond-saddle', { 'saddle.slotWidth': 2.4 });
    // an angle set by hand puts strings off the slot for that alone
    const turned = foundBy('crown-beyond-saddle', { 'saddle.angleBy': 'set', 'saddle.angle': 2.9 });
    expect(lowE?.text).toContain('string 6 (E2)');
    for (const found of [lowE, turned]) {
      expect(found?.severity).toBe('note');
      expect(found?.text).toContain('Look at the strings, their notes, the action and the slot’s angle.');
      expect(found?.text).not.toContain('usual');
      expect(found?.source).toContain('3 mm off is far is our own level');
    }
  });

  test('inside-corner says on which edge', () => {
    const found = foundBy('inside-corner', { 'footprint.sweepLength': 10, 'footprint.cutter': 11 });
    expect(found?.text).toContain('The back edge turns inward as tightly as 5.03 mm');
    // two tangent arcs that step 9 to the side on 10 along: r = (10² + 9²)/(4·9)
    expect(found?.found).toBe(`radius ${((100 + 81) / 36).toFixed(2)} mm`);
  });

  test('tip-wall is the tip less its edge', () => {
    const { design } = judgedWith({ 'top.tip': 2.5, 'top.edgeSize': 1.6 }).accepted;
    expect(tipWall(design)).toBeCloseTo(0.9, 9);
    expect(foundBy('tip-wall', { 'top.tip': 2.5, 'top.edgeSize': 1.6 })?.found).toBe('0.9 mm');
    expect(foundBy('tip-wall', { 'top.tip': 2.5, 'top.edge': 'none' })).toBeUndefined();
  });

  test('bevel-ring is about holes that are bevelled and reamed alone', () => {
    const narrow = { 'pins.bevelDiameter': 5.8 };
    expect(foundBy('bevel-ring', narrow)).toBeDefined();
    expect(foundBy('bevel-ring', { ...narrow, 'pins.taper': 0 })).toBeUndefined();
    expect(foundBy('bevel-ring', { ...narrow, 'pins.bevel': 'none' })).toBeUndefined();
  });
});
