import { DesignError } from '../design/problem.ts';
import { EXIT, type Exit, FileError, UseError } from './exit.ts';

/** The exit code that an error stands for: what is of no other kind came out of the kernel. */
export function exitOf(error: unknown): Exit {
  if (error instanceof DesignError) return EXIT.design;
  if (error instanceof UseError) return EXIT.use;
  if (error instanceof FileError) return EXIT.file;
  return EXIT.kernel;
}
