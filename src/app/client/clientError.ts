import type { Failure } from '../../../workers/protocol.ts';
import { sayInForm } from '../form/sayInForm.ts';

/** Why the client's promise was refused: `failure` for programs, `message` for a person. */
export class ClientError extends Error {
  override readonly name = 'ClientError';
  constructor(readonly failure: Failure) {
    super(sayFailure(failure));
  }
}

/** Why there is no answer, in a sentence or two for whoever asked. */
export function sayFailure(failure: Failure): string {
  switch (failure.kind) {
    case 'design':
      return failure.problems.map(sayInForm).join('\n');
    case 'superseded':
      return 'A newer change took its place.';
    case 'kernel':
      return `The exact solid came out unsound (${failure.message}).`;
    case 'stopped':
      return failure.message;
  }
}
