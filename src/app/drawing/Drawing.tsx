import { useRef } from 'react';
import type { Curves } from '../../../models/curves/curves.ts';
import { Board, type BoardProps } from './Board.tsx';
import './drawing.css';
import { useSize } from './useSize.ts';

export interface DrawingProps extends Omit<BoardProps, 'curves' | 'size'> {
  /** The bridge to draw, or undefined when there has been none yet. */
  readonly curves: Curves | undefined;
}

/** The live drawing: plan, long profile and section with dimensions that can be typed over. It fills its parent. */
export function Drawing({ curves, ...rest }: DrawingProps) {
  const frame = useRef<HTMLDivElement>(null);
  const size = useSize(frame);
  return (
    <div className="drawing" ref={frame}>
      {curves && size && <Board curves={curves} size={size} {...rest} />}
      {!curves && (
        <p className="drawing-hint">The drawing appears here as soon as the dimensions fit together.</p>
      )}
    </div>
  );
}
