import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { Board } from '../../../src/app/drawing/Board.tsx';
import { Drawing } from '../../../src/app/drawing/Drawing.tsx';
import { type AcceptedDesign, acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { someDesigns } from './someDesigns.ts';

const nothing = () => undefined;

function markup(name: string, props: { selected?: string; stale?: boolean } = {}): string {
  const { curves, text } = someDesigns[name] as AcceptedDesign;
  return renderToStaticMarkup(
    <Board
      curves={curves}
      text={text}
      size={{ width: 1200, height: 500 }}
      selected={props.selected}
      holes="drilled"
      stale={props.stale ?? false}
      onSelect={nothing}
      onEdit={nothing}
    />,
  );
}

describe('the drawing', () => {
  test('every dimension is a button that says what it is and that it can be typed over', () => {
    const html = markup('taper, typed in inches, tilted slot');
    expect(html).toContain('aria-label="Wing tip 3.0 mm, edit"');
    expect(html).toContain('aria-label="Length 6 1/8 in, edit"');
    expect(html.match(/<button /g)).toHaveLength(15);
  });

  test('a solved dimension is a button that shows its field', () => {
    const text = initialDesign();
    const html = renderToStaticMarkup(
      <Board
        curves={acceptDesign(text).curves}
        text={text}
        size={{ width: 1200, height: 500 }}
        selected="saddle.angle"
        holes="drilled"
        stale={false}
        onSelect={nothing}
        onEdit={nothing}
      />,
    );
    expect(html).toContain('aria-label="Slot angle 2.96°, solved, show"');
    expect(html).toContain('>(2.96°)</button>');
    expect(html).toContain('drawing-label live solved selected');
  });

  test('the selected dimension and its edge are lit, and only they', () => {
    const html = markup('usual', { selected: 'top.tip' });
    expect(html.match(/drawing-label live selected/g)).toHaveLength(1);
    expect(html.match(/drawing-dimension selected/g)).toHaveLength(1);
    // the end face of either wing
    expect(html.match(/"drawing-lit /g)).toHaveLength(2);
    expect(markup('usual')).not.toContain('drawing-lit');
  });

  test('no two lines are the same, whatever is lit', () => {
    for (const selected of ['footprint.backEdge', 'footprint.depthCentre', 'pins.channel', 'saddle.depth']) {
      const html = markup('five pins, channels', { selected });
      const lit = html.match(/class="drawing-lit [^>]*/g) ?? [];
      expect(lit.length, selected).toBeGreaterThan(0);
      expect(new Set(lit).size, selected).toBe(lit.length);
    }
  });

  test('a drawing of an older design is marked as such', () => {
    expect(markup('usual', { stale: true })).toContain('drawing-board stale');
    expect(markup('usual')).not.toContain('stale');
  });

  test('colours come from the page alone', () => {
    expect(markup('usual')).not.toMatch(/#[0-9a-f]{3,8}"|rgb/);
  });
});

test('without curves there is a quiet hint', () => {
  const { text } = someDesigns.usual as AcceptedDesign;
  const html = renderToStaticMarkup(
    <Drawing
      curves={undefined}
      text={text}
      selected={undefined}
      holes="drilled"
      stale={false}
      onSelect={nothing}
      onEdit={nothing}
    />,
  );
  expect(html).toContain('drawing-hint');
  expect(html).not.toContain('<svg');
});
