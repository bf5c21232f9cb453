import { expect, test } from 'vitest';
import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { jobByHand } from '../../../src/making/jobByHand.ts';
import { usualWorkshop } from '../../../src/making/workshop.ts';
import { frontTemplate } from '../../../src/sheets/templates/frontTemplate.ts';
import { starter } from '../../support/starters.ts';

const { text } = starter('Plover');
const withEdges = (frontEdge: 'straight' | 'soundhole', backEdge: 'straight' | 'tail') =>
  acceptDesign({
    ...text,
    footprint: {
      ...text.footprint,
      frontEdge,
      backEdge,
      ...(frontEdge === 'straight' && backEdge === 'straight'
        ? { depthCentre: 30, depthWing: 30 }
        : { depthCentre: 36, depthWing: 27 }),
    },
  });

// derived: the copies are projections, and a curve is longer than its projection
test.each([
  ['straight', 'straight', /Glue one copy on the front edge and one on the back edge/],
  [
    'straight',
    'tail',
    /Glue only the front copy, on the straight front edge\. The back edge is curved.*card/,
  ],
  [
    'soundhole',
    'straight',
    /Glue only the back copy, on the straight back edge\. The front edge is curved.*card/,
  ],
  ['soundhole', 'tail', /Don’t glue it: both edges are curved.*card/],
] as const)('front edge %s, back edge %s: glued on straight edges alone', (front, back, said) => {
  const accepted = withEdges(front, back);
  const notes = frontTemplate(accepted, 'mm').notes.join(' ');
  expect(notes).toMatch(said);
  expect(notes).toContain('The lowest line’s ends lie at the glue face’s tips');
  // the step that works from it says the same
  const step = jobByHand(accepted, usualWorkshop(accepted.design.saddle.slotWidth)).find(
    ({ template }) => template === 'front',
  );
  const first = step?.work[0] ?? '';
  const edge = /^Glue .* on the (front|back) edge/.exec(first)?.[1];
  expect(edge, first).toBe(front === 'straight' ? 'front' : back === 'straight' ? 'back' : undefined);
  expect(first).toContain('lowest line’s ends at the glue face’s tips');
});
