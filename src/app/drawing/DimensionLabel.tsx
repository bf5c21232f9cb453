import type { CSSProperties } from 'react';
import type { Mark } from './compose.ts';

interface DimensionLabelProps {
  readonly mark: Mark;
  readonly selected: boolean;
  readonly hidden: boolean;
  onPress(path: string): void;
}

/** A dimension's text: a button that opens it, or only shows its field when the number is solved. */
export function DimensionLabel({ mark, selected, hidden, onPress }: DimensionLabelProps) {
  const { dimension, label } = mark;
  const { path } = dimension;
  const style: CSSProperties = {
    left: label.middle[0] - label.width / 2,
    top: label.middle[1] - label.height / 2,
    width: label.width,
    height: label.height,
    rotate: `${label.turn}deg`,
    visibility: hidden ? 'hidden' : undefined,
  };
  return (
    <button
      type="button"
      className={`drawing-label live${dimension.solved ? ' solved' : ''}${selected ? ' selected' : ''}`}
      style={style}
      data-path={path}
      aria-label={`${dimension.spoken}, ${dimension.solved ? 'show' : 'edit'}`}
      onClick={() => onPress(path)}
    >
      {dimension.text}
    </button>
  );
}
