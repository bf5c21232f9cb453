import type { Typed } from '../../design/design.ts';

/** A typed value as short text for a line of words. */
export function plainText(typed: Typed): string {
  return typeof typed === 'string' || typeof typed === 'number' ? String(typed).trim() : typed.join(' ');
}
