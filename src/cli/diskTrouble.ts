/** What Node calls a refusal of the disk's, in words that say what is in the way and what to do. */
const WORDS: ReadonlyMap<string, string> = new Map([
  ['EISDIR', 'a folder of that name is in the way: move it, or take another folder.'],
  ['EEXIST', 'a file of that name is in the way: move it, or name another folder.'],
  ['ENOTDIR', 'a file stands in its path where a folder should be: move it, or name another folder.'],
  ['ENOENT', 'the folder that it should go into is missing: make it, or name another.'],
  ['EACCES', 'you may not write there: change the folder’s rights, or name another.'],
  ['EPERM', 'you may not write there: change the folder’s rights, or name another.'],
  ['EROFS', 'that disk can only be read: name a folder on another.'],
  ['ENOSPC', 'the disk is full: make room, or name a folder on another.'],
  ['ENAMETOOLONG', 'its name is too long for this disk: name a folder with a shorter one.'],
]);

/** Why the disk refused, and what to do about it; in Node's words for what is rare. */
export function diskTrouble(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const known = 'code' in error ? WORDS.get(String(error.code)) : undefined;
  return known ?? error.message;
}
