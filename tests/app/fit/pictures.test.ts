import { describe, expect, test } from 'vitest';
import { elevationPicture } from '../../../src/app/fit/elevationPicture.ts';
import { intonationPicture } from '../../../src/app/fit/intonationPicture.ts';
import { planPicture } from '../../../src/app/fit/planPicture.ts';
import { setbackPicture } from '../../../src/app/fit/setbackPicture.ts';
import { WIDTH } from '../../../src/app/picture/mark.ts';
import { fitOf, someFits } from './fitOf.ts';
import { extent, markOf, placeOf, pointsOf } from './marks.ts';

describe.each(Object.entries(someFits))('the pictures of %s', (_name, changes) => {
  const { design, curves, fit, report } = fitOf(changes);
  const { crowns } = report;
  const plan = planPicture(curves, fit, crowns, 0);
  const setbacks = setbackPicture(design, curves, fit, crowns, 0);
  const shown = [0, fit.strings.length - 1];
  const pictures = {
    plan,
    setbacks,
    'one string’s cents': intonationPicture(fit, crowns, 0, false),
    'all cents': intonationPicture(fit, crowns, 1, true),
    ...Object.fromEntries(shown.map((i) => [`elevation ${i + 1}`, elevationPicture(curves, fit, report, i)])),
  };

  test.each(Object.entries(pictures))('%s: nothing outside its box, no name twice', (_, drawn) => {
    const { xs, ys } = extent(drawn);
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(-0.5);
    expect(Math.max(...xs)).toBeLessThanOrEqual(WIDTH + 0.5);
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(-0.5);
    expect(Math.max(...ys)).toBeLessThanOrEqual(drawn.height + 0.5);
    const names = drawn.marks.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  test.each(Object.entries(pictures))('%s: no word stands on another', (_, drawn) => {
    const boxes = drawn.marks.flatMap((mark) => {
      if (mark.kind !== 'word') return [];
      const { xs, ys } = extent({ height: 0, marks: [mark] });
      return [
        {
          name: mark.name,
          left: Math.min(...xs),
          right: Math.max(...xs),
          top: Math.min(...ys) + 1,
          low: Math.max(...ys),
        },
      ];
    });
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1)) {
        const apart = a.right <= b.left || b.right <= a.left || a.low <= b.top || b.low <= a.top;
        expect(apart, `${a.name} and ${b.name}`).toBe(true);
      }
  });

  test('the plan is to scale: crowns, pins and scale line lie as on the part', () => {
    const [x0, y0] = placeOf(plan, 'pin 1');
    const last = curves.pins.length;
    const [x1, y1] = placeOf(plan, `pin ${last}`);
    const [first, end] = [curves.pins[0], curves.pins[last - 1]];
    if (!first || !end) throw new Error('no pins');
    const scale = Math.hypot(x1 - x0, y1 - y0) / Math.hypot(end.at[0] - first.at[0], end.at[1] - first.at[1]);
    for (const [i, { at }] of crowns.entries()) {
      const [x, y] = placeOf(plan, `crown ${i + 1}`);
      expect((x - x0) / scale, 'to the right').toBeCloseTo(at[0] - first.at[0], 6);
      expect((y0 - y) / scale, 'toward the nut is up').toBeCloseTo(at[1] - first.at[1], 6);
    }
    const [, scaleLine] = pointsOf(plan, 'scaleLine')[0] ?? [];
    expect((y0 - (scaleLine ?? 0)) / scale).toBeCloseTo(fit.slot.line.centreMm - first.at[1], 6);
  });

  test('set-backs are as many times larger along the strings as is said', () => {
    const scale =
      Math.abs(placeOf(plan, 'crown 1')[0] - placeOf(plan, `crown ${crowns.length}`)[0]) /
      Math.abs((crowns[0]?.at[0] ?? 0) - (crowns[crowns.length - 1]?.at[0] ?? 0));
    const [, zero = 0] = pointsOf(setbacks, 'scaleLine')[0] ?? [];
    for (const [i, { saddleMm }] of fit.slot.wanted.entries())
      expect((placeOf(setbacks, `wanted ${i + 1}`)[1] - zero) / (scale * setbacks.times)).toBeCloseTo(
        saddleMm,
        6,
      );
    const [[xa, ya], [xb, yb]] = pointsOf(setbacks, 'slotLine') as [[number, number], [number, number]];
    const hand = design.guitar.hand === 'left' ? -1 : 1;
    const slope = (hand * (ya - yb)) / setbacks.times / (xb - xa);
    expect((Math.atan(slope) * 180) / Math.PI, 'the slot’s angle').toBeCloseTo(fit.slot.line.angleDeg, 6);
    const [[xc, yc], [xd, yd]] = pointsOf(setbacks, 'least') as [[number, number], [number, number]];
    expect((Math.atan((hand * (yc - yd)) / setbacks.times / (xd - xc)) * 180) / Math.PI).toBeCloseTo(
      fit.slot.least.angleDeg,
      6,
    );
  });

  test('the plot’s lines read back as the report’s cents', () => {
    for (const all of [false, true]) {
      const plot = intonationPicture(fit, crowns, 0, all);
      const [, zero = 0] = pointsOf(plot, 'zero')[0] ?? [];
      const bare = pointsOf(plot, 'bare 1');
      const most = crowns[0]?.cents.bare[11] ?? 0;
      const scale = (zero - (bare[11]?.[1] ?? 0)) / most;
      for (const way of ['bare', 'onSlot', 'filed'] as const)
        for (const [k, [, y]] of pointsOf(plot, `${way} 1`).entries())
          expect((zero - y) / scale, `${way}, fret ${k + 1}`).toBeCloseTo(crowns[0]?.cents[way][k] ?? 0, 6);
      expect(plot.marks.filter(({ name }) => name.startsWith('bare '))).toHaveLength(all ? crowns.length : 1);
      const ticks = plot.marks.filter(({ name }) => /^(tick|zero)/.test(name));
      expect(ticks.length).toBeGreaterThan(2);
      expect(ticks.length).toBeLessThan(10);
    }
  });

  test.each(shown)('the elevation is to scale and breaks by the report’s angle, string %i', (i) => {
    const drawn = elevationPicture(curves, fit, report, i);
    const over = report.breaks[i]?.over;
    const height = report.crowns[i]?.height ?? 0;
    const [[, low], [, high]] = pointsOf(drawn, 'height') as [[number, number], [number, number]];
    const scale = (low - high) / height;
    const [a, b, c] = pointsOf(drawn, 'string');
    if (!a || !b || !c || !over) throw new Error('no string');
    const turn = Math.atan2(c[1] - b[1], b[0] - c[0]) - Math.atan2(b[1] - a[1], a[0] - b[0]);
    expect((turn * 180) / Math.PI, 'drawn break angle').toBeCloseTo(over.angle, 6);
    const arc = pointsOf(drawn, 'break');
    const [start, end] = [arc[0], arc[arc.length - 1]];
    if (!start || !end) throw new Error('no arc');
    const chord = Math.hypot(end[0] - start[0], end[1] - start[1]);
    expect(chord, 'its arc').toBeCloseTo(2 * scale * 11 * Math.sin((over.angle * Math.PI) / 360), 6);
    expect(markOf(drawn, 'breakAngle')).toMatchObject({ text: `${over.angle.toFixed(1)}°` });
    const xs = pointsOf(drawn, 'wood 1').map(([x]) => x);
    expect(Math.max(...xs), 'the nut is to the right').toBeLessThan(a[0]);
  });
});

test('a left-handed guitar’s pictures are the mirror image', () => {
  const [right, left] = [fitOf(), fitOf({ 'guitar.hand': 'left' })];
  const plans = [right, left].map(({ curves, fit, report }) => planPicture(curves, fit, report.crowns, 0));
  const larger = [right, left].map(({ design, curves, fit, report }) =>
    setbackPicture(design, curves, fit, report.crowns, 0),
  );
  for (const [a, b] of [plans, larger]) {
    if (!a || !b) throw new Error('two pictures');
    for (let i = 1; i <= 6; i++) {
      const [x, y] = placeOf(a, `crown ${i}`);
      const [mirrored, same] = placeOf(b, `crown ${i}`);
      expect(mirrored).toBeCloseTo(WIDTH - x, 6);
      expect(same).toBeCloseTo(y, 6);
    }
  }
});

test('more action moves what the strings ask for away from the scale line', () => {
  const low = fitOf();
  const high = fitOf({ 'action.treble': 2.6, 'action.bass': 3.2 });
  const asked = ({ design, curves, fit, report }: typeof low) => {
    const drawn = setbackPicture(design, curves, fit, report.crowns, 0);
    return (placeOf(drawn, 'wanted 6')[1] - (pointsOf(drawn, 'scaleLine')[0]?.[1] ?? 0)) / drawn.times;
  };
  expect(asked(high)).toBeGreaterThan(asked(low) + 1);
});
