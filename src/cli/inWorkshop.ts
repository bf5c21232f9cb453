import { DesignError } from '../design/problem.ts';
import { UseError } from './exit.ts';

/**
 * Work that reads or uses the workshop in a file: what is wrong with the workshop is wrong use, said with the file's name,
 * whether no workshop has such a value or only this design can't be made with it. Throws `UseError`.
 */
export function inWorkshop<T>(file: string | undefined, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const itsOwn =
      error instanceof DesignError && error.problems.every(({ path }) => /^workshop(\.|$)/.test(path));
    if (file === undefined || !itsOwn) throw error;
    throw new UseError(error.message.replace(/^/gm, `--workshop ${file}: `));
  }
}
