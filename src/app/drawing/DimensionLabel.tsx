import type { CSSProperties } from 'react';
import type { Mark } from './compose.ts';

interface DimensionLabelProps {
  readonly mark: Mark;
  readonly selected: boolean;
  readonly hidden: boolean;
  onPress(path: string): void;
}

/** A dimension's text: a button that opens it, or plain text when it only tells what follows from others. */
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
  if (path === undefined) {
    return (
      <span className="drawing-label" style={style}>
        {dimension.text}
      </span>
    );
  }
  return (
    <button
      type="button"
      className={selected ? 'drawing-label live selected' : 'drawing-label live'}
      style={style}
      data-path={path}
      aria-label={`${dimension.spoken}, edit`}
      onClick={() => onPress(path)}
    >
      {dimension.text}
    </button>
  );
}
