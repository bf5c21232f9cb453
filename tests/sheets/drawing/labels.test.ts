import { describe, expect, test } from 'vitest';
import { line, type Point } from '../../../models/curves/segment.ts';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { drawingSheets } from '../../../src/sheets/drawingSheets.ts';
import { PAPERS } from '../../../src/sheets/sheet.ts';
import { dejaVu } from '../../support/dejaVu.ts';
import { acceptedDesigns } from '../../support/designs.ts';
import { starter, starters } from '../../support/starters.ts';
import { strayed } from '../../support/strayed.ts';
import { tight } from '../../support/tight.ts';

const { text } = starter('Plover');
/** A wing's slope whose text once lay along the end elevation. */
const bench = acceptDesign({
  ...text,
  guitar: {
    ...text.guitar,
    scale: 648,
    fretboardRadius: 400,
    soundboard: 'sphere',
    soundboardRadius: '8.5 m',
  },
});
const sheetsOf = (accepted: typeof bench, paper: 'A4' | 'Letter') =>
  drawingSheets(accepted, dejaVu, { paper: PAPERS[paper], units: 'mm', holes: 'drilled', date: '' });

describe('a leader and its text keep off the other views', () => {
  const random = acceptedDesigns(6, 5).accepted.map((one, i) => [`random design ${i}`, one] as const);
  test.each([['a flat crown', bench] as const, ...starters, ...random])('%s', (_, accepted) => {
    for (const paper of ['A4', 'Letter'] as const)
      expect(sheetsOf(accepted, paper).flatMap((sheet) => strayed(sheet, dejaVu))).toEqual([]);
  });

  test('the check finds one that lies on another view', () => {
    const [views] = sheetsOf(bench, 'A4');
    if (!views) throw new Error('no sheet');
    const leader = views.inks.find(
      (ink) => ink.kind === 'line' && ink.layer === 'dimensions' && !ink.closed && ink.chain.length === 2,
    );
    const thick = views.inks.find(
      (ink) => ink.kind === 'line' && ink.layer === 'profile' && ink.pen === 'outline',
    );
    const plan = views.inks.find(
      (ink) => ink.kind === 'line' && ink.layer === 'outline' && ink.pen === 'outline',
    );
    if (leader?.kind !== 'line' || thick?.kind !== 'line' || plan?.kind !== 'line')
      throw new Error('no leader');
    const from: Point = thick.chain[0]?.from ?? [0, 0];
    const over: Point = plan.chain[0]?.from ?? [0, 0];
    const strays = {
      ...leader,
      chain: [line(from, over), line(over, [over[0] + 1, over[1]])],
    };
    expect(strayed({ ...views, inks: [...views.inks, strays] }, dejaVu)).toHaveLength(1);
  });
});

describe('half a text’s height of air between a text and another dimension’s line', () => {
  test.each([...starters])('%s', (_, accepted) => {
    expect(sheetsOf(accepted, 'A4').flatMap((sheet) => tight(sheet, dejaVu))).toEqual([]);
  });
});
