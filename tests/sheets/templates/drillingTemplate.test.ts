import { expect, test } from 'vitest';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { placeRows } from '../../../src/sheets/drawing/placeTable.ts';
import { drawingSheets } from '../../../src/sheets/drawingSheets.ts';
import { PAPERS } from '../../../src/sheets/sheet.ts';
import { drillingTemplate } from '../../../src/sheets/templates/drillingTemplate.ts';
import { dejaVu } from '../../support/dejaVu.ts';
import { starter, starters } from '../../support/starters.ts';

test('the slot’s crosses are for a cutter of its width, whatever cutter is at hand, and the note says so', () => {
  for (const [name, accepted] of starters) {
    const { slot } = accepted.curves;
    const said = drillingTemplate(accepted, 'mm', dejaVu).notes.join(' ');
    expect(said, name).not.toContain('from end cross to end cross');
    const ends = placeRows(accepted).filter(({ of }) => of === 'slot');
    if (!slot.roundEnds) {
      expect(said, name).toContain('open at both ends');
      expect(ends, name).toEqual([]);
      continue;
    }
    expect(said, name).toContain('The cut reaches from end to end of the slot drawn');
    const width = Number(/round ends, for a cutter of ([\d.]+)\.( |$)/.exec(said)?.[1]);
    // derived: from its cross a cutter reaches half its diameter further, which is the slot's end
    for (const { at } of ends)
      expect(Math.hypot(...at) + width / 2, `${name}: ${said}`).toBeCloseTo(slot.halfLength, 2);
  }
});

test('the table of places calls the slot’s ends by treble and bass, the treble on the side of string 1', () => {
  for (const hand of ['right', 'left'] as const) {
    const { text } = starter('Plover');
    const accepted = acceptDesign({ ...text, guitar: { ...text.guitar, hand } });
    const [bass, treble] = placeRows(accepted).filter(({ of }) => of === 'slot');
    const first = accepted.curves.pins[0]?.at[0] ?? 0;
    expect([bass?.name, treble?.name]).toEqual(['bass', 'treble']);
    expect(Math.sign(treble?.at[0] ?? 0), hand).toBe(Math.sign(first));
    expect(Math.sign(bass?.at[0] ?? 0), hand).toBe(-Math.sign(first));
    const [, sections] = drawingSheets(accepted, dejaVu, {
      paper: PAPERS.A4,
      units: 'mm',
      holes: 'drilled',
      date: '',
    });
    const texts = sections?.inks.flatMap((ink) => (ink.kind === 'text' ? [ink.text] : [])) ?? [];
    const from = texts.indexOf('centre of slot end,');
    expect(texts.slice(from, from + 2)).toEqual(['centre of slot end,', 'bass']);
    expect(texts).not.toContain('slot, left');
  }
});
