/** What a command speaks to, so that tests can stand in its place. Files are read and written on the disk itself. */
export interface Io {
  out(text: string): void;
  err(text: string): void;
  /** Whether a person is watching stderr: only then is progress shown. */
  readonly watched: boolean;
  readStdin(): Promise<string>;
}
