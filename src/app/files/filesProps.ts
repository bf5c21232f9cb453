import type { WrittenFile } from '../../../workers/protocol.ts';

/** What every list of files is given. */
export interface FilesProps {
  /** No file can be written now: the design can't be made, or another is being written. */
  readonly off: boolean;
  readonly save: (what: string, make: () => Promise<WrittenFile>) => void;
}
