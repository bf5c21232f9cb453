import type { Point } from '../../../models/curves/segment.ts';
import { type Drawn, type Mark, WIDTH } from './mark.ts';
import './picture.css';

interface PictureProps {
  readonly drawn: Drawn;
  /** What it shows, for those who listen to the page. */
  readonly label: string;
  readonly name: string;
}

/** A picture: its marks as lines, rings and words. */
export function Picture({ drawn: { height, marks }, label, name }: PictureProps) {
  return (
    <svg
      className="picture-frame"
      data-picture={name}
      viewBox={`0 0 ${WIDTH} ${round(height)}`}
      role="img"
      aria-label={label}
    >
      {marks.map((mark) => (
        <MarkOf key={mark.name} mark={mark} />
      ))}
    </svg>
  );
}

function MarkOf({ mark }: { mark: Mark }) {
  const { name } = mark;
  if (mark.kind === 'word') {
    const [x, y] = mark.at;
    return (
      <text
        className={`picture-word ${mark.tone}`}
        data-mark={name}
        x={round(x)}
        y={round(y)}
        textAnchor={mark.anchor}
      >
        {mark.text}
      </text>
    );
  }
  if (mark.kind === 'line') {
    return (
      <path
        className={`picture-line ${mark.pen} fill-${mark.fill ?? 'none'}`}
        data-mark={name}
        d={`${path(mark.points)}${mark.closed ? 'Z' : ''}`}
        style={mark.width === undefined ? undefined : { strokeWidth: round(mark.width) }}
      />
    );
  }
  return (
    <circle
      className={`picture-${mark.kind} ${mark.pen}`}
      data-mark={name}
      cx={round(mark.at[0])}
      cy={round(mark.at[1])}
      r={round(mark.radius)}
    />
  );
}

function path(points: readonly Point[]): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');
}

/** A hundredth of a pixel is finer than any screen. */
function round(n: number): number {
  return Math.round(n * 100) / 100 + 0;
}
