import { DesignError } from '../../design/problem.ts';
import { ClientError } from '../client/clientError.ts';
import { sayInForm } from '../form/sayInForm.ts';

/** Why a file was not written, and what to do about it. */
export function notWritten(error: unknown): string {
  if (error instanceof DesignError) return `Nothing was written. ${error.problems.map(sayInForm).join(' ')}`;
  const why = error instanceof Error ? error.message : String(error);
  const kind = error instanceof ClientError ? error.failure.kind : undefined;
  switch (kind) {
    case 'kernel':
      return `${why} Nothing was written. Change a number slightly and try again.`;
    case 'stopped':
      return `${why} Nothing was written. Try again.`;
    default:
      return `Nothing was written. ${why}`;
  }
}
