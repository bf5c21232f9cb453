import { DesignError } from '../src/design/problem.ts';
import type { Failure } from './protocol.ts';

/** The typed failure that an error thrown by a build becomes. */
export function failureOf(error: unknown): Failure {
  if (error instanceof DesignError) return { kind: 'design', problems: error.problems };
  return { kind: 'kernel', message: messageOf(error) };
}

/**
 * Whether an error leaves a WebAssembly kernel unusable: a trap, an abort or an exhausted stack unwinds without the
 * kernel's own clean-up, so that nothing it says afterwards can be trusted.
 */
export function isFatal(error: unknown): boolean {
  if (error instanceof WebAssembly.RuntimeError || error instanceof RangeError) return true;
  return error instanceof Error && error.cause !== undefined && isFatal(error.cause);
}

/** An error's message, or whatever else was thrown, as text. */
export function messageOf(error: unknown): string {
  return error instanceof Error && error.message !== '' ? error.message : String(error);
}
