import type { Failure } from '../../../workers/protocol.ts';
import { sayProblem } from '../../design/problem.ts';

/** Why the client's promise was refused: `failure` for programs, `message` for a person. */
export class ClientError extends Error {
  override readonly name = 'ClientError';
  constructor(readonly failure: Failure) {
    super(say(failure));
  }
}

function say(failure: Failure): string {
  switch (failure.kind) {
    case 'design':
      return failure.problems.map(sayProblem).join('\n');
    case 'superseded':
      return 'A newer change took its place.';
    default:
      return failure.message;
  }
}
