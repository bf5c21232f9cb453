import { useEffect, useState } from 'react';

/** A value once it has rested for a while: for work that is too long for every step of a drag. */
export function useSettled<T>(value: T, restMs: number): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const rest = setTimeout(() => setSettled(value), restMs);
    return () => clearTimeout(rest);
  }, [value, restMs]);
  return settled;
}
