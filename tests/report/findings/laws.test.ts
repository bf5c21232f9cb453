import { describe, expect, test } from 'vitest';
import { polygon } from '../../../models/curves/chain.ts';
import type { Curves } from '../../../models/curves/curves.ts';
import { curvesBox } from '../../../models/curves/curvesBox.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';
import { distanceToSides } from '../../../models/curves/polygons.ts';
import type { Point } from '../../../models/curves/segment.ts';
import { floorOver, slotFloor, slotToPart } from '../../../models/curves/slot.ts';
import { STARTER_FILES } from '../../../src/cli/starterFiles.ts';
import { type AcceptedDesign, acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import type { Finding, Judged } from '../../../src/report/findings/finding.ts';
import { findings } from '../../../src/report/findings/findings.ts';
import { judgedOf } from '../../../src/report/findings/judgedOf.ts';
import { MENDABLE, remedyWords } from '../../../src/report/findings/remedyWords.ts';
import { RULES } from '../../../src/report/findings/rules.ts';
import { change } from '../../support/change.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { tableField } from '../../support/draws.ts';
import { PAIRS } from './pairs.ts';
import { foundBy, judgedWith, sound } from './sound.ts';

const random = acceptedDesigns(150, 421).accepted;
const judged: readonly Judged[] = random.map((accepted) => judgedOf(accepted));
const found: readonly (readonly Finding[])[] = judged.map((one) => findings(one));

describe('over random designs', () => {
  test('what is found is said in full, with finite numbers', () => {
    for (const finding of found.flat()) {
      const said = JSON.stringify(finding);
      expect(said).not.toMatch(/NaN|Infinity|undefined|null/);
      expect(finding.text, said).toMatch(/^[A-Z\d−].*\.$/);
      expect(finding.source, said).toMatch(/^[A-Z].*\.$/);
      expect(finding.found, said).toMatch(/^[\da-z−]/);
      expect(finding.limit, said).toMatch(/^[\da-z−]/);
      // a minus is a minus, never a hyphen before a number
      expect(`${finding.text} ${finding.found} ${finding.limit}`, said).not.toMatch(/(^| )-\d/);
      expect(finding.place.flat(2).every(Number.isFinite), said).toBe(true);
    }
  });

  test('errors stand before warnings, warnings before notes', () => {
    for (const list of found) {
      const order = list.map(({ severity }) => ['error', 'warning', 'note'].indexOf(severity));
      expect(order).toEqual([...order].sort());
    }
  });

  test('every field that is named is in the table, and every mending number has its words', () => {
    for (const { path, limitPath, mends } of found.flat()) {
      expect(() => tableField(path), path).not.toThrow();
      if (limitPath) expect(limitPath).toMatch(/^limits\./);
      if (limitPath) expect(() => tableField(limitPath), limitPath).not.toThrow();
      for (const mend of mends) expect(MENDABLE, `${mend} of ${path}`).toContain(mend);
    }
  });

  test('most rules are tripped by some and not by others', () => {
    const share = (id: string) =>
      found.filter((list) => list.some((one) => one.id === id)).length / found.length;
    const idle = RULES.map(({ id }) => id).filter((id) => share(id) === 0 || share(id) === 1);
    expect(idle.length, idle.join(', ')).toBeLessThan(RULES.length / 4);
  });

  test('about one thing only, nothing else is found, and nothing of it is missing', () => {
    for (const one of judged.slice(0, 30)) {
      const parts = (['fit', 'wood', 'making', 'usual'] as const).flatMap((about) => findings(one, about));
      expect(parts.map(({ id }) => id).sort()).toEqual(
        findings(one)
          .map(({ id }) => id)
          .sort(),
      );
    }
  });
});

/** How far a place may stand out of the box round wood and strings, mm: these pass over it, and may be spread wider. */
const OUT = 3;

function outOfBox({ accepted, report }: Judged, { place }: Finding): boolean {
  const [x0, y0, z0, x1, y1, z1] = curvesBox(accepted.curves);
  const top = Math.max(z1, ...report.crowns.map(({ height }) => height));
  const half = Math.max(x1, -x0, ...report.crowns.map(({ at }) => Math.abs(at[0])));
  return place
    .flat()
    .some(
      ([x, y, z]) =>
        Math.abs(x) > half + OUT || y < y0 - OUT || y > y1 + OUT || z < z0 - OUT || z > top + OUT,
    );
}

describe('places', () => {
  test('lie on the part, for random designs', () => {
    for (const [i, one] of judged.entries())
      for (const finding of found[i] ?? []) expect(outOfBox(one, finding), finding.id).toBe(false);
  });

  test.each(PAIRS)('$id: $path $trips has lines of two points at least', ({ id, base, path, trips }) => {
    const one = judgedWith({ ...base, [path]: trips });
    const finding = findings(one).find((each) => each.id === id);
    expect(finding).toBeDefined();
    for (const line of finding?.place ?? []) expect(line.length).toBeGreaterThan(1);
    if (finding) expect(outOfBox(one, finding)).toBe(false);
  });

  test('what is about wood, and can be pointed at, has a place', () => {
    const about = RULES.filter((rule) => rule.about !== 'usual' && rule.id !== 'mass').map(({ id }) => id);
    for (const { id, base, path, trips } of PAIRS.filter((pair) => about.includes(pair.id)))
      expect(foundBy(id, { ...base, [path]: trips })?.place.length, id).toBeGreaterThan(0);
  });
});

/** A place (u, v) round the slot, every `step` mm, at a share of its depth. */
function slotRound({ slot, profile }: Curves, share: number): readonly (readonly [Point, Point])[] {
  return polygon(slot.plan, 1e-4).flatMap((from, i, all) => {
    const to = all[(i + 1) % all.length] ?? from;
    const pieces = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / 0.1));
    return Array.from({ length: pieces }, (_, k): readonly [Point, Point] => {
      const t = k / pieces;
      const [u, v] = [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])];
      const [x, y] = slotToPart(slot, profile.thickness, u, v, share * slotFloor(slot, u));
      return [
        [u, v],
        [x, y],
      ];
    });
  });
}

/** The limit so high that a rule always says its number, mm. */
const says = (id: string, accepted: AcceptedDesign, limit: string): number =>
  Number.parseFloat(
    RULES.find((rule) => rule.id === id)
      ?.judge(judgedOf(acceptDesign(change(accepted.text, { [limit]: 15 }))))
      ?.found.replace('−', '-') ?? 'NaN',
  );

describe('by brute sampling', () => {
  const round = random.filter(({ design }) => design.saddle.ends === 'round').slice(0, 25);

  test('the wood before the slot', () => {
    const tilted = round.filter(({ design }) => design.saddle.tilt > 2);
    expect(tilted.length).toBeGreaterThan(5);
    for (const accepted of round) {
      const outline = polygon(accepted.curves.outline, 0.001);
      const least = Math.min(
        ...[0, 1].flatMap((share) =>
          slotRound(accepted.curves, share)
            .filter(([[, v]]) => v >= 0)
            .map(([, at]) => distanceToSides(outline, at)),
        ),
      );
      if (least > 14.9) continue;
      expect(Math.abs(says('wood-before-slot', accepted, 'limits.woodBefore') - least)).toBeLessThan(0.03);
    }
  });

  test('the wood behind the slot', () => {
    for (const accepted of round) {
      const { slot, profile, pins } = accepted.curves;
      const down = Math.cos(slot.tilt);
      const least = Math.min(
        ...pins.flatMap((pin) => {
          const floor = Math.min(pin.top, floorOver(slot, profile.thickness, pin.at[0]));
          return [pin.top, floor].map((z) => {
            const radius = z === pin.top ? pin.reach : holeRadius(pin.outline.reamed, z);
            const wall = polygon(slot.plan, 1e-4).map(([u, v]): Point => {
              // where the wall's straight line through (u, v) passes the level z
              const w = (z - profile.thickness - v * Math.sin(slot.tilt)) / down;
              const [x, y] = slotToPart(slot, profile.thickness, u, v, w);
              return [x, y];
            });
            return distanceToSides(wall, pin.at) - radius;
          });
        }),
      );
      if (least > 14.9) continue;
      // the level cut's ends are ellipses: taken as circles they are off by a few hundredths at most
      expect(Math.abs(says('wood-behind-slot', accepted, 'limits.woodBehind') - least)).toBeLessThan(0.06);
    }
  });

  test('the wood from pin holes to the outline', () => {
    for (const accepted of random.slice(0, 25)) {
      const outline = polygon(accepted.curves.outline, 0.001);
      const least = Math.min(
        ...accepted.curves.pins.map((pin) => distanceToSides(outline, pin.at) - pin.reach),
      );
      if (least > 14.9) continue;
      expect(Math.abs(says('wood-behind-pins', accepted, 'limits.behindPins') - least)).toBeLessThan(0.01);
    }
  });
});

describe('starters', () => {
  test.each(STARTER_FILES.map(({ name, json }) => ({ name, json })))('$name has no error', ({ json }) => {
    const list = findings(judgedOf(acceptDesign(json)));
    expect(list.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
});

test('the mass is worked out only when a rule asks for it, and all other rules are quick', () => {
  const accepted = acceptDesign(initialDesign());
  let weighed = 0;
  const { report } = judgedOf(accepted);
  const one: Judged = {
    accepted,
    report,
    get massG() {
      weighed++;
      return 27;
    },
  };
  findings(one, 'fit');
  findings(one, 'making');
  findings(one, 'usual');
  expect(weighed).toBe(0);
  findings(one, 'wood');
  expect(weighed).toBeGreaterThan(0);
});

test('a remedy’s words say the number with its unit', () => {
  expect(remedyWords('top.tip', 2.5)).toBe('Make the wing tip 2.5 mm thick');
  expect(remedyWords('saddle.angle', -0.5)).toBe('Make the slot’s angle −0.5°');
  expect(() => remedyWords('limits.tipLeast', 2)).toThrow(/no remedy changes limits.tipLeast/);
});

test('the sound design is accepted as typed', () => {
  expect(acceptDesign(sound()).design.saddle.showing).toBeCloseTo(4.05, 6);
});
