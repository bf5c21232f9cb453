/** What the process ends with. Of several the worst, which is the highest, is given. */
export const EXIT = { done: 0, design: 1, use: 2, file: 3, kernel: 4 } as const;

export type Exit = (typeof EXIT)[keyof typeof EXIT];

/** For every help text. */
export const EXIT_HELP = `Exit codes (with several designs, the highest that occurred):
  0  done
  1  a design can't be made as it is, or a finding says that it can't work
  2  wrong use of the command line
  3  a file can't be read or written
  4  the solid kernel refused, or the check on its result did`;

/** The command line was used wrongly. */
export class UseError extends Error {
  override readonly name = 'UseError';
}

/** A file could not be read or written. */
export class FileError extends Error {
  override readonly name = 'FileError';
}
