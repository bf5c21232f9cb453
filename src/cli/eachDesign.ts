import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { EXIT, type Exit, UseError } from './exit.ts';
import { exitOf } from './exitOf.ts';
import type { Io } from './io.ts';
import { readDesignAt } from './readDesignAt.ts';

/**
 * Does a command's work for one design after another, going on past those that fail: each error is told on stderr
 * under the design's place. Gives the worst of the exit codes. Throws `UseError` when there is nothing to do.
 */
export async function eachDesign(
  places: readonly string[],
  io: Io,
  work: (accepted: AcceptedDesign, place: string) => Promise<void>,
): Promise<Exit> {
  if (places.length === 0) throw new UseError('No design is named. Give a file, or - for stdin.');
  if (places.filter((place) => place === '-').length > 1)
    throw new UseError('- stands twice: stdin can be read only once.');
  let worst: Exit = EXIT.done;
  for (const [i, place] of places.entries()) {
    const shown = place === '-' ? 'stdin' : place;
    if (io.watched) io.err(`[${i + 1}/${places.length}] ${shown}\n`);
    try {
      await work(await readDesignAt(place, io), place);
    } catch (error) {
      const lines = (error instanceof Error ? error.message : String(error)).split('\n');
      io.err(lines.map((line) => `${shown}: ${line}\n`).join(''));
      const exit = exitOf(error);
      if (exit > worst) worst = exit;
    }
  }
  return worst;
}
