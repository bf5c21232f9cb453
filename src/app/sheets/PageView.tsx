import { useLayoutEffect, useRef } from 'react';
import type { Page } from './press.ts';

interface PageViewProps {
  readonly page: Page;
  /** Times its own size on the screen; in print it is 1. */
  readonly zoom: number;
  /** Whether it is the one that the screen shows. */
  readonly front: boolean;
}

/** One sheet as paper on the board, drawn by what writes the files. */
export function PageView({ page: { sheet, svg }, zoom, front }: PageViewProps) {
  const paper = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const { documentElement } = new DOMParser().parseFromString(svg, 'image/svg+xml');
    paper.current?.replaceChildren(document.importNode(documentElement, true));
  }, [svg]);
  const { width, height } = sheet.paper;
  return (
    <div
      ref={paper}
      className={front ? 'page-paper front' : 'page-paper'}
      data-sheet={sheet.id}
      style={{ width: `${zoom * width}mm`, height: `${zoom * height}mm` }}
    />
  );
}
