import { useEffect, useState } from 'react';

/** A value once it has rested for a while, none before: for work that is too long for every step of a drag. */
export function useSettled<T>(value: T, restMs: number): T | undefined {
  const [settled, setSettled] = useState<T>();
  useEffect(() => {
    const rest = setTimeout(() => setSettled(value), restMs);
    return () => clearTimeout(rest);
  }, [value, restMs]);
  return settled;
}
