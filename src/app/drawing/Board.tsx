import { useMemo, useRef, useState } from 'react';
import type { Curves, Holes } from '../../../models/curves/curves.ts';
import type { DesignText } from '../../design/design.ts';
import type { Aimed } from '../../report/aim/aimedDesign.ts';
import { arrange } from './arrange.ts';
import { DimensionInput } from './DimensionInput.tsx';
import { DimensionLabel } from './DimensionLabel.tsx';
import { DimensionLines } from './DimensionLines.tsx';
import { dimensions } from './dimensions.ts';
import { drawingShapes } from './drawingShapes.ts';
import { fieldText } from './fieldText.ts';
import { PartLines } from './PartLines.tsx';
import { partExtent } from './partOnSheet.ts';
import type { Size } from './placeViews.ts';

export interface BoardProps {
  readonly curves: Curves;
  /** The design as typed: what its dimensions say. */
  readonly text: DesignText;
  /** The dimension that follows the design's aim. */
  readonly aimed?: Aimed | undefined;
  /** How the pin holes stand. */
  readonly holes: Holes;
  /** Path of the selected field. */
  readonly selected: string | undefined;
  onSelect(path: string): void;
  /** A dimension was typed anew. */
  onEdit(path: string, typed: string): void;
  /** Whether the curves are of an older design than the text. */
  readonly stale: boolean;
  readonly size: Size;
}

/** The drawing at a known size. */
export function Board({ curves, text, aimed, holes, selected, onSelect, onEdit, stale, size }: BoardProps) {
  const [editing, setEditing] = useState<string>();
  const board = useRef<HTMLDivElement>(null);
  const shapes = useMemo(() => drawingShapes(curves, text, holes), [curves, text, holes]);
  const extent = useMemo(() => partExtent(shapes), [shapes]);
  const wanted = useMemo(() => dimensions(curves, text, aimed), [curves, text, aimed]);
  const layout = useMemo(() => arrange(size, extent, wanted, selected), [size, extent, wanted, selected]);
  if (!layout) return null;

  const edited = layout.marks.find(({ dimension: { path, solved } }) => path === editing && !solved);
  const leave = (path: string) => {
    setEditing(undefined);
    // the caret goes back to where it was called from, once the label stands there again
    requestAnimationFrame(() =>
      board.current?.querySelector<HTMLElement>(`[data-path="${path}"]`)?.focus({ preventScroll: true }),
    );
  };
  return (
    <div className={stale ? 'drawing-board stale' : 'drawing-board'} ref={board}>
      <svg className="drawing-lines" width={size.width} height={size.height} aria-hidden="true">
        <PartLines shapes={shapes} views={layout.views} selected={selected} />
        {layout.marks.map((mark) => (
          <DimensionLines
            key={mark.dimension.spoken}
            mark={mark}
            selected={mark.dimension.path === selected}
          />
        ))}
      </svg>
      {layout.marks.map((mark) => (
        <DimensionLabel
          key={mark.dimension.path}
          mark={mark}
          selected={mark.dimension.path === selected}
          hidden={mark === edited}
          onPress={(path) => {
            onSelect(path);
            if (!mark.dimension.solved) setEditing(path);
          }}
        />
      ))}
      {edited && editing !== undefined && (
        <DimensionInput
          key={editing}
          label={edited.label}
          text={fieldText(text, editing)}
          size={size}
          onEnter={(typed) => {
            leave(editing);
            onEdit(editing, typed);
          }}
          onEscape={() => leave(editing)}
          onLeave={(typed) => {
            setEditing(undefined);
            if (typed !== undefined) onEdit(editing, typed);
          }}
        />
      )}
    </div>
  );
}
