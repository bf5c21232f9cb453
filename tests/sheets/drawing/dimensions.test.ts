import { expect, test } from 'vitest';
import type { AcceptedDesign } from '../../../src/design/acceptDesign.ts';
import type { Laned } from '../../../src/sheets/dimensions/lanes.ts';
import { acrossDimensions } from '../../../src/sheets/drawing/acrossDimensions.ts';
import { alongDimensions } from '../../../src/sheets/drawing/alongDimensions.ts';
import { frontDimensions } from '../../../src/sheets/drawing/frontDimensions.ts';
import { generalNotes } from '../../../src/sheets/drawing/generalNotes.ts';
import { planDimensions } from '../../../src/sheets/drawing/planDimensions.ts';
import { drawingSheets } from '../../../src/sheets/drawingSheets.ts';
import { angleText, lengthText } from '../../../src/sheets/lengthText.ts';
import { PAPERS } from '../../../src/sheets/sheet.ts';
import { sectionPin } from '../../../src/sheets/views/sectionPin.ts';
import { dejaVu } from '../../support/dejaVu.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { starter, starters } from '../../support/starters.ts';

const all = [...starters.values(), ...acceptedDesigns(30, 21).accepted];

function dimensionsOf(accepted: AcceptedDesign, holes: 'drilled' | 'reamed'): readonly Laned[] {
  return [
    ...planDimensions(accepted, 'mm'),
    ...frontDimensions(accepted, 'mm'),
    ...acrossDimensions(accepted, sectionPin(accepted.curves), { units: 'mm', holes }),
  ];
}

/** The number a label gives for the whole of what it spans. */
function said(label: string): number {
  const whole = /\(= ([\d.]+)\)/.exec(label) ?? /^(?:\d+× )?⌀?([\d.]+)/.exec(label);
  return Number(whole?.[1]);
}

test('every dimension says the distance that it spans', () => {
  for (const accepted of all) {
    const { tilt, angle } = accepted.curves.slot;
    const both = (['drilled', 'reamed'] as const).flatMap((holes) => dimensionsOf(accepted, holes));
    for (const { label, side, from, to, lean = 0 } of both) {
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
      const spans = Math.abs(
        side === 'left' || side === 'right' ? dy : dx * Math.cos(lean) + dy * Math.sin(lean),
      );
      // the section across cuts a slot that is turned and leans: it is drawn wider than it is
      const askew = label.includes('+0.05/0') ? 1 / Math.cos(angle) / Math.cos(tilt) : 1;
      const off = Math.abs(spans - askew * said(label));
      expect(off, `${accepted.design.guitar.name}: ${label} spans ${spans}`).toBeLessThan(
        0.0051 + 0.02 * (askew - 1) * spans,
      );
    }
  }
});

test('the slot’s length is that of the section along it', () => {
  for (const accepted of all) {
    for (const { label, from, to } of alongDimensions(accepted, 'mm'))
      expect(Math.abs(to[0] - from[0] - said(label))).toBeLessThan(0.0051);
  }
});

test('what the design asks for stands on the drawing, each once, with its own tolerance beside it', () => {
  for (const accepted of starters.values()) {
    const { design } = accepted;
    const { footprint: f, pins: p, saddle: s, top: t } = design;
    const labels = labelsOf(accepted, 'drilled');
    const say = (mm: number) => lengthText(mm, 'mm');
    const step = p.spread / (design.strings.count - 1);
    // the tolerances are those of the job note: our own levels
    const wanted = [
      say(f.length),
      say(t.block),
      say(f.depthCentre),
      say(t.tip),
      `${say(t.thickness)} ±0.1`,
      `${say(f.slotBehindFront)} ±0.15`,
      `${say(p.behindSlot)} ±0.2`,
      `${say(s.slotWidth)} +0.05/0`,
      `${say(s.depth)} ±0.1${s.tilt > 0 ? ' along the wall' : ''}`,
      ...(s.angle === 0 ? [] : [`${angleText(Math.abs(s.angle))} ±0.1°`]),
      `${design.strings.count}× ⌀${say(p.drill)} +0.1/0`,
      `R${say(t.crownRadius)} crown`,
      p.spacing === 'equal'
        ? `${design.strings.count - 1} × ${say(step)} ±0.2 (= ${say(p.spread)})`
        : `${say(p.spread)} ±0.2`,
      ...(p.bevel === 'cut' ? [`⌀${say(p.bevelDiameter)} × ${say(p.bevelAngle)}°`] : []),
      ...(s.ends === 'round' ? [say(s.slotLength)] : []),
    ];
    for (const label of wanted)
      expect(
        labels.filter((one) => one === label),
        `${design.guitar.name}: ${label} among ${labels.join(', ')}`,
      ).toHaveLength(wanted.filter((one) => one === label).length);
  }
});

test('what the table of places repeats stands in brackets and without tolerance: ISO 129’s auxiliary dimensions', () => {
  for (const accepted of starters.values()) {
    const [, sections] = drawingSheets(accepted, dejaVu, { ...mmA4, holes: 'drilled' });
    const texts = sections?.inks.flatMap((ink) => (ink.kind === 'text' ? [ink.text] : [])) ?? [];
    expect(texts).toContain('(for reference) x right, y to the nut');
    const places = accepted.curves.pins.flatMap(({ at }) => at.map((mm) => lengthText(mm, 'mm')));
    for (const place of places) expect(texts, accepted.design.guitar.name).toContain(`(${place})`);
    const figures = texts.filter((one) => places.includes(one));
    // a straight dimension of the sections may happen to have a place's number
    const labels = labelsOf(accepted, 'drilled');
    expect(figures.filter((one) => !labels.includes(one))).toEqual([]);
  }
});

const mmA4 = { paper: PAPERS.A4, units: 'mm', date: '2026-11-25' } as const;

function labelsOf(accepted: AcceptedDesign, holes: 'drilled' | 'reamed'): readonly string[] {
  return drawingSheets(accepted, dejaVu, { ...mmA4, holes }).flatMap(({ inks }) =>
    inks.flatMap((ink) => (ink.kind === 'text' && ink.layer === 'dimensions' ? [ink.text] : [])),
  );
}

test('the inch drawing gives the general tolerance in both', () => {
  const said = (units: 'mm' | 'in') => generalNotes(starter('Plover'), { units, holes: 'drilled' }).join(' ');
  // ISO 2768-m, from memory: up to 6 mm ±0.1, 6 to 30 ±0.2; an inch is 25.4 mm
  expect(said('in')).toMatch(
    /to 6 ±0\.1, to 30 ±0\.2,.* mm; in inches .*to 0\.236 ±0\.004, to 1\.181 ±0\.008,/,
  );
  expect(said('mm')).not.toContain('inches');
});

test('in inches, a hole drilled by a fraction is called by it', () => {
  const [, sections] = drawingSheets(starter('Plover'), dejaVu, {
    paper: PAPERS.Letter,
    units: 'in',
    holes: 'drilled',
    date: '',
  });
  const texts = sections?.inks.flatMap((ink) => (ink.kind === 'text' ? [ink.text] : []));
  expect(texts).toContain('6× ⌀3/16 +0.004/0');
  expect(texts).toContain('0.126 +0.002/0');
});
