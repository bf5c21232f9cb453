import { zipSync } from 'fflate';

/** One file for a ZIP, or out of it. */
export interface FileEntry {
  /** With `/` between folders, if any. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Most bytes that the systems' file names may have. */
const LONGEST = 255;

/**
 * Made on Unix (3), a plain file that its owner may write and all may read. Of files from DOS, which is what the library
 * says otherwise, a common unzip takes no notice that their names are UTF-8.
 */
const MADE_ON_UNIX = { os: 3, attrs: (0o100644 << 16) >>> 0 } as const;

/** What no system minds in a name: `[` and `]` stand in names that other formats ask for. */
const FORBIDDEN = /[\p{Cc}\p{Cs}\\:*?"<>|]/u;

/**
 * A ZIP of these files in this order, each with `date` as its time (of the clock of UTC, to two seconds: the format
 * knows no zones): the same files and date give the same bytes. Names beyond ASCII are marked as UTF-8.
 *
 * Throws when a name could not be unpacked everywhere, or would leave the folder that it is unpacked in, or stands
 * there twice (however written: some systems don't tell capitals from small letters).
 */
export function writeZip(files: readonly FileEntry[], date: Date): Uint8Array {
  const names = new Set<string>();
  for (const { name } of files) {
    if (!isSafe(name)) throw new Error(`${JSON.stringify(name)} is no name for a file in a ZIP`);
    const folded = name.normalize('NFC').toLowerCase();
    if (names.has(folded)) throw new Error(`${JSON.stringify(name)} is twice in one ZIP`);
    names.add(folded);
  }
  // the library writes the fields of local time
  const mtime = new Date(
    date.getUTCFullYear(),
    date.getUTCMonth(),
    date.getUTCDate(),
    date.getUTCHours(),
    date.getUTCMinutes(),
    date.getUTCSeconds(),
  );
  return zipSync(Object.fromEntries(files.map(({ name, bytes }) => [name, bytes])), {
    mtime,
    level: 9,
    ...MADE_ON_UNIX,
  });
}

function isSafe(name: string): boolean {
  return name.split('/').every((part) => {
    const bytes = new TextEncoder().encode(part).length;
    return bytes > 0 && bytes <= LONGEST && !/[. ]$/.test(part) && !FORBIDDEN.test(part);
  });
}
