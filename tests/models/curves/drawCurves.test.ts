import { describe, expect, test } from 'vitest';
import { applies } from '../../../src/design/applies.ts';
import { sayProblem } from '../../../src/design/problem.ts';
import { type Changes, change, designText, problemsOf } from '../../support/change.ts';

/** A misfit of the design of all defaults with these changes: where it is said, why, and whether it names a limit. */
interface Misfit {
  readonly path: string;
  readonly why: string;
  readonly changes: Changes;
}

const taper: Changes = { 'footprint.backForm': 'taper', 'footprint.fullDepthLength': 20 };
const shortBlock: Changes = {
  'top.thickness': 14,
  'top.block': 70,
  'top.blend': 20,
  'saddle.slotLength': 56,
  'saddle.depth': 8,
  'pins.spread': 50,
};
const channel: Changes = { 'pins.channel': 'ramp' };
const conical: Changes = { 'guitar.fretboard': 'conical', 'guitar.fretboardRadius': 300 };
const open: Changes = { 'saddle.ends': 'open', 'saddle.depth': 3.5 };
const hollow: Changes = { 'top.wing': 'hollow' };

const MISFITS: readonly Misfit[] = [
  {
    path: 'guitar.fretboardRadiusAtFret',
    why: 'for a crown of at least 150 mm over the saddle',
    changes: { ...conical, ...shortBlock, 'guitar.fretboardRadiusAtFret': 150 },
  },
  {
    path: 'strings.spread',
    why: 'for 0.5 mm between these strings',
    changes: {
      'strings.count': 12,
      'strings.spacing': 'gaps',
      'strings.spread': 30,
      'strings.diameters': Array(12).fill(2.5),
      'pins.drill': 3,
      'pins.taper': 0,
      'pins.bevel': 'none',
    },
  },
  { path: 'footprint.depthWing', why: 'for an edge that swells out', changes: { 'footprint.depthWing': 36 } },
  {
    path: 'footprint.depthWing',
    why: 'for an edge that is drawn in',
    changes: { 'footprint.backEdge': 'soundhole', 'footprint.depthWing': 36 },
  },
  {
    path: 'footprint.depthWing',
    why: 'for an edge that is drawn in',
    changes: { 'footprint.frontEdge': 'tail', 'footprint.backEdge': 'straight', 'footprint.depthWing': 30 },
  },
  {
    path: 'footprint.length',
    why: 'for one bow this deep',
    changes: {
      'footprint.backForm': 'bow',
      'footprint.length': 100,
      'footprint.depthCentre': 70,
      'footprint.depthWing': 12,
      'footprint.tip': 'square',
      'footprint.cornerBack': 1,
      'footprint.cornerFront': 2,
      'top.edge': 'none',
      'top.block': 60,
      'top.blend': 12,
      'saddle.slotLength': 40,
      'pins.spread': 45,
    },
  },
  {
    path: 'footprint.sweepLength',
    why: 'for this belly, beside this full-depth run',
    changes: { 'footprint.sweepLength': 60 },
  },
  {
    path: 'footprint.sweepLength',
    why: 'for this belly, beside this full-depth run',
    changes: { 'footprint.sweepLength': 8 },
  },
  {
    path: 'footprint.fullDepthLength',
    why: 'with this length and belly',
    changes: { ...taper, 'footprint.fullDepthLength': 148, 'footprint.tip': 'square' },
  },
  {
    path: 'footprint.knee',
    why: 'with this full-depth run and belly',
    changes: { ...taper, 'footprint.depthCentre': 44, 'footprint.depthWing': 35, 'footprint.knee': 250 },
  },
  {
    path: 'footprint.knee',
    why: 'with this full-depth run and belly',
    changes: { ...taper, 'footprint.depthCentre': 36, 'footprint.depthWing': 35.7, 'footprint.knee': 4 },
  },
  {
    path: 'footprint.tipBow',
    why: 'on the last piece of a wing of this depth',
    changes: { 'footprint.tipBow': 12, 'footprint.cornerBack': 2, 'footprint.cornerFront': 2 },
  },
  {
    path: 'footprint.cornerBack',
    why: 'between the back edge and the tip',
    changes: { 'footprint.cornerBack': 20 },
  },
  {
    path: 'footprint.cornerFront',
    why: 'between the tip and the front edge',
    changes: { 'footprint.cornerFront': 20 },
  },
  { path: 'top.block', why: 'on this length', changes: { 'top.block': 150, 'top.blend': 3 } },
  {
    path: 'top.tip',
    why: 'with this block, crown and wing rise',
    changes: { 'top.tip': 8, 'top.blend': 4 },
  },
  {
    path: 'top.tip',
    why: 'over this underside',
    changes: {
      'top.edge': 'none',
      'top.tip': 1,
      'top.wingRise': 0,
      'guitar.soundboardRadius': 2000,
      'top.blend': 12,
    },
  },
  {
    path: 'top.blend',
    why: 'between this step, the wing and the crown’s own slope',
    changes: { 'top.blend': 3 },
  },
  {
    path: 'top.blend',
    why: 'between this step, the wing and the crown’s own slope',
    changes: { 'top.blend': 110, 'top.block': 124 },
  },
  {
    path: 'top.shoulder',
    why: 'so that some of the crown and some of the blend are left',
    changes: {
      ...hollow,
      'top.thickness': 14,
      'top.block': 92,
      'top.tip': 3.5,
      'top.wingRise': 7.5,
      'top.blend': 3,
      'top.shoulder': 22,
      'saddle.slotLength': 56,
      'pins.spread': 50,
    },
  },
  {
    path: 'top.shoulder',
    why: 'with this edge',
    changes: { 'top.shoulder': 0.9 },
  },
  { path: 'top.edgeSize', why: 'where the wing is thinnest', changes: { 'top.tip': 2, 'top.edgeSize': 1.8 } },
  {
    path: 'top.edgeSize',
    why: 'where the outline curves as tightly as here',
    changes: { ...taper, 'footprint.knee': 2, 'top.edgeSize': 1.9, 'top.tip': 4 },
  },
  { path: 'footprint.cornerBack', why: 'with this edge', changes: { 'footprint.cornerBack': 1 } },
  { path: 'footprint.cornerFront', why: 'with this edge', changes: { 'footprint.cornerFront': 1.2 } },
  { path: 'saddle.slotLength', why: 'in this block', changes: { 'saddle.slotLength': 92 } },
  {
    path: 'footprint.slotBehindFront',
    why: 'for a slot that keeps 1.5 mm from every edge',
    changes: { 'footprint.slotBehindFront': 4.5 },
  },
  { path: 'saddle.depth', why: 'in this thickness', changes: { 'saddle.depth': 9.3 } },
  {
    path: 'saddle.depth',
    why: 'for a slot that runs out over the wings',
    changes: { ...open, 'saddle.depth': 7.5 },
  },
  {
    path: 'saddle.depth',
    why: 'or the slot runs out where the crown falls',
    changes: { 'saddle.depth': 1.5, 'top.crown': 'set', 'top.crownRadius': 300, 'top.blend': 15 },
  },
  { path: 'pins.mouth', why: 'with this drill', changes: { 'pins.mouth': 4.7 } },
  { path: 'pins.bevelDiameter', why: 'or reaming takes it all', changes: { 'pins.bevelDiameter': 5.6 } },
  {
    path: 'pins.bevelDiameter',
    why: 'or the bevel goes through the wood',
    changes: {
      'top.thickness': 5,
      'top.tip': 2,
      'top.wingRise': 0.2,
      'pins.bevelAngle': 60,
      'pins.bevelDiameter': 8.6,
      'saddle.depth': 3,
      'top.blend': 15,
      'pins.drill': 4,
    },
  },
  {
    path: 'pins.bevelAngle',
    why: 'where the crown slopes as it does at the outer pins',
    changes: {
      ...shortBlock,
      'top.crown': 'set',
      'top.crownRadius': 150,
      'top.block': 90,
      'top.blend': 15,
      'pins.spread': 70,
      'pins.bevelAngle': 140,
    },
  },
  {
    path: 'pins.spread',
    why: 'for 6 holes of this size in this middle block',
    changes: { 'pins.spread': 84 },
  },
  {
    path: 'pins.spread',
    why: 'for 6 holes of this size in this middle block',
    changes: { 'pins.spread': 34 },
  },
  {
    path: 'pins.behindSlot',
    why: 'for holes that keep 1.5 mm from the back edge and 0.5 mm from the slot',
    changes: { 'pins.behindSlot': 24 },
  },
  {
    path: 'pins.behindSlot',
    why: 'for holes that keep 1.5 mm from the back edge and 0.5 mm from the slot',
    changes: { 'pins.behindSlot': 5 },
  },
  {
    path: 'pins.channelWidth',
    why: 'in a hole of this drill',
    changes: { ...channel, 'pins.channelWidth': 4.8 },
  },
  {
    path: 'pins.channelDepth',
    why: 'over this length',
    changes: { ...channel, 'pins.channelDepth': 0.3, 'pins.channelLength': 9 },
  },
  {
    path: 'pins.channelDepth',
    why: 'in this thickness',
    changes: {
      ...channel,
      'top.thickness': 6,
      'saddle.depth': 3,
      'pins.channelDepth': 5.5,
      'top.tip': 2,
      'top.blend': 15,
    },
  },
  {
    path: 'pins.channelLength',
    why: 'in the block, short of the slot and clear of the next pin',
    changes: { ...channel, 'pins.channelLength': 12 },
  },
  {
    path: 'pins.channelLength',
    why: 'in the block, short of the slot and clear of the next pin',
    changes: {
      ...channel,
      'footprint.length': 180,
      'top.block': 110,
      'strings.count': 12,
      'strings.spread': 120,
      'pins.spread': 79,
      'pins.drill': 5.5,
      'pins.taper': 0,
      'pins.bevel': 'none',
      'pins.behindSlot': 9,
      'pins.channelLength': 9,
      'pins.channelDepth': 4,
    },
  },
];

/** At the limit that a refusal names the field is allowed, or what is wrong is of another kind; just beyond it is not. */
test.each(MISFITS)('$path: $why', ({ path, why, changes }) => {
  const text = designText(changes);
  const problems = problemsOf(text);
  const found = problems.find((p) => p.path === path && p.allowed.includes(why));
  expect(found, problems.map(sayProblem).join('\n') || 'it was accepted').toBeDefined();
  if (!found) return;
  expect(found.code).toBe('does-not-fit');
  expect(found.remedy).toMatch(/^[A-Z].*\.$/);
  expect(applies(path, text), 'it names a field that has no say').toBe(true);
  const [, words, said] = /^(at most|at least) (-?[\d.]+)/.exec(found.allowed) ?? [];
  expect(words, found.allowed).toBeDefined();
  expect(found.value).not.toBe(said);
  const limit = Number(said);
  const still = problemsOf(designText({ ...changes, [path]: limit })).filter((p) => p.path === path);
  expect(still.map(sayProblem), `${path} at its limit, ${limit}`).toEqual([]);
  const beyond = limit + (words === 'at most' ? 0.03 : -0.03);
  const again = problemsOf(designText({ ...changes, [path]: beyond }));
  expect(
    again.map((p) => p.path),
    `${path} just beyond its limit, at ${beyond}`,
  ).toContain(path);
});

/** Beyond the limit another spread may still do, so it is not the limit of all. */
test.each<[string, Changes]>([
  ['pins.bevelDiameter', { 'pins.bevelDiameter': 14 }],
  ['pins.mouth', { 'strings.count': 12, 'pins.bevel': 'none', 'pins.mouth': 9 }],
  ['pins.drill', { 'strings.count': 12, 'pins.bevel': 'none', 'pins.taper': 0, 'pins.drill': 8 }],
])('%s is what makes holes too wide for any spread, and its limit fits as things stand', (path, changes) => {
  const [problem, ...others] = problemsOf(designText(changes));
  expect(others).toEqual([]);
  expect(problem).toMatchObject({ path, allowed: expect.stringMatching(/^at most [\d.]+ mm for \d+ holes/) });
  const limit = Number(/[\d.]+/.exec(problem?.allowed ?? '')?.[0]);
  expect(problemsOf(designText({ ...changes, [path]: limit })).map(sayProblem)).toEqual([]);
});

test('a rise that no tip makes room for is named itself, with what it may be', () => {
  const changes = { 'top.block': 120, 'top.wingRise': 5, 'pins.spread': 50 };
  const [problem] = problemsOf(designText(changes));
  expect(problem).toMatchObject({
    path: 'top.wingRise',
    allowed: expect.stringMatching(/^at most 2\.\d+ mm/),
  });
  const limit = Number(/[\d.]+/.exec(problem?.allowed ?? '')?.[0]);
  const again = problemsOf(designText({ ...changes, 'top.wingRise': limit })).map((p) => p.path);
  expect(again).not.toContain('top.wingRise');
  expect(again).not.toContain('top.tip');
});

test('a step that no tip and no rise gives is asked of the thickness', () => {
  const changes = { 'top.block': 140, 'top.crown': 'set', 'top.crownRadius': 200, 'pins.spread': 50 };
  const [problem] = problemsOf(designText(changes));
  expect(problem).toMatchObject({ path: 'top.thickness', allowed: expect.stringMatching(/^at least 1\d/) });
  const limit = Number(/[\d.]+/.exec(problem?.allowed ?? '')?.[0]);
  const again = problemsOf(designText({ ...changes, 'top.thickness': limit })).map((p) => p.path);
  expect(again).not.toContain('top.thickness');
  expect(again).not.toContain('top.tip');
});

describe('misfits without a number', () => {
  test('equal gaps need a diameter for each string', () => {
    const text = designText({ 'strings.spacing': 'gaps', 'strings.count': 7 });
    const six = text.strings.diameters as readonly number[];
    expect(problemsOf(change(text, { 'strings.diameters': six.slice(0, 6) }))).toMatchObject([
      {
        code: 'does-not-fit',
        path: 'strings.diameters',
        value: '6 entries',
        allowed: 'one for each of 7 strings',
      },
    ]);
    const one = { 'strings.spacing': 'gaps', 'strings.diameters': ['0.012 in'] };
    expect(problemsOf(designText(one))).toMatchObject([{ value: '1 entry' }]);
  });

  test('half-round tips need a last piece of the wing that is longer than their round', () => {
    const changes = { 'footprint.tip': 'round', 'footprint.sweepLength': 44 };
    expect(problemsOf(designText(changes))).toMatchObject([
      { code: 'does-not-fit', path: 'footprint.tip', value: 'half round' },
    ]);
    expect(problemsOf(designText({ ...changes, 'footprint.sweepLength': 34 }))).toEqual([]);
  });
});
