import { useEffect } from 'react';

/** Frees what a thing holds of the graphics memory when another takes its place, and at the end. */
export function useDispose(thing: { dispose(): void }) {
  useEffect(() => () => thing.dispose(), [thing]);
}
