import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Size } from './placeViews.ts';

/** An element's size in px, followed as it changes; undefined until it is known. */
export function useSize(element: RefObject<HTMLElement | null>): Size | undefined {
  const [size, setSize] = useState<Size>();
  useLayoutEffect(() => {
    const { current } = element;
    if (!current) return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = current;
      setSize((was) => (was?.width === width && was.height === height ? was : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
