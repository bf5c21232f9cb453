import { useId } from 'react';
import { litShapes } from './litShapes.ts';
import { pathOf } from './pathOf.ts';
import type { Views } from './placeViews.ts';
import type { Shape } from './shape.ts';

interface PartLinesProps {
  readonly shapes: readonly Shape[];
  readonly views: Views;
  readonly selected: string | undefined;
}

/** The part in its views, the lines of the selected field lit up. */
export function PartLines({ shapes, views, selected }: PartLinesProps) {
  const hatch = useId();
  const lit = litShapes(selected);
  const paths = shapes.flatMap((shape) => {
    const view = views[shape.view];
    return view ? [{ shape, d: pathOf(shape.chain, view, shape.closed, shape.pose) }] : [];
  });
  return (
    <>
      <defs>
        <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path className="drawing-hatch" d="M2.5 0V5" />
        </pattern>
      </defs>
      {paths
        .filter(({ shape }) => shape.pen !== 'none')
        .map(({ shape, d }) => (
          <path
            key={`${shape.view} ${shape.name} ${d}`}
            className={`drawing-${shape.pen}`}
            d={d}
            fill={shape.view === 'section' && shape.name === 'body' ? `url(#${hatch})` : 'none'}
          />
        ))}
      {paths
        .filter(({ shape }) => lit.includes(shape.name))
        .map(({ shape, d }) => (
          <path
            key={`${shape.view} ${shape.name} ${d}`}
            className={`drawing-lit drawing-lit-${shape.pen}`}
            d={d}
          />
        ))}
    </>
  );
}
