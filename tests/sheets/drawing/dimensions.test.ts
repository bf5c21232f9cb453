import { expect, test } from 'vitest';
import type { AcceptedDesign } from '../../../src/design/acceptDesign.ts';
import type { Laned } from '../../../src/sheets/dimensions/lanes.ts';
import { acrossDimensions } from '../../../src/sheets/drawing/acrossDimensions.ts';
import { alongDimensions } from '../../../src/sheets/drawing/alongDimensions.ts';
import { frontDimensions } from '../../../src/sheets/drawing/frontDimensions.ts';
import { planDimensions } from '../../../src/sheets/drawing/planDimensions.ts';
import { drawingSheets } from '../../../src/sheets/drawingSheets.ts';
import { lengthText } from '../../../src/sheets/lengthText.ts';
import { PAPERS } from '../../../src/sheets/sheet.ts';
import { sectionPin } from '../../../src/sheets/views/sectionPin.ts';
import { dejaVu } from '../../support/dejaVu.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { starter, starters } from '../../support/starters.ts';

const all = [...starters.values(), ...acceptedDesigns(30, 21).accepted];

function dimensionsOf(accepted: AcceptedDesign): readonly Laned[] {
  return [
    ...planDimensions(accepted, 'mm'),
    ...frontDimensions(accepted, 'mm'),
    ...acrossDimensions(accepted, sectionPin(accepted.curves), 'mm'),
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
    for (const { label, side, from, to, lean = 0 } of dimensionsOf(accepted)) {
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

test('what the design asks for stands on the drawing, each once', () => {
  for (const accepted of starters.values()) {
    const { design } = accepted;
    const { footprint: f, pins: p, saddle: s, top: t } = design;
    const sheets = drawingSheets(accepted, dejaVu, { paper: PAPERS.A4, units: 'mm', date: '2026-11-25' });
    const labels = sheets.flatMap(({ inks }) =>
      inks.flatMap((ink) => (ink.kind === 'text' && ink.layer === 'dimensions' ? [ink.text] : [])),
    );
    const say = (mm: number) => lengthText(mm, 'mm');
    const wanted = [
      say(f.length),
      say(t.block),
      `${say(s.slotWidth)} +0.05/0`,
      `${design.strings.count}× ⌀${say(p.drill)} +0.1/0`,
      `R${say(t.crownRadius)} crown`,
      `${p.spacing === 'equal' ? `${design.strings.count - 1} × ${say(p.spread / (design.strings.count - 1))} (= ${say(p.spread)})` : say(p.spread)}`,
      ...(p.bevel === 'cut' ? [`⌀${say(p.bevelDiameter)} × ${say(p.bevelAngle)}°`] : []),
      ...(s.ends === 'round' ? [say(s.slotLength)] : []),
    ];
    for (const label of wanted)
      expect(
        labels.filter((one) => one === label),
        `${design.guitar.name}: ${label} among ${labels.join(', ')}`,
      ).toHaveLength(1);
    for (const mm of [f.depthCentre, t.thickness, t.tip, f.slotBehindFront, p.behindSlot])
      expect(labels, design.guitar.name).toContain(say(mm));
    expect(
      labels.some((one) => one.startsWith(say(s.depth))),
      `${design.guitar.name}: slot depth`,
    ).toBe(true);
  }
});

test('in inches, a hole drilled by a fraction is called by it', () => {
  const [, sections] = drawingSheets(starter('Plover'), dejaVu, {
    paper: PAPERS.Letter,
    units: 'in',
    date: '',
  });
  const texts = sections?.inks.flatMap((ink) => (ink.kind === 'text' ? [ink.text] : []));
  expect(texts).toContain('6× ⌀3/16 +0.004/0');
  expect(texts).toContain('0.126 +0.002/0');
});
