import { spawnSync } from 'node:child_process';

/** Debian's own: another python3 that stands first on PATH doesn't see Debian's packages. */
export const PYTHON = '/usr/bin/python3';

/** Set where the server has installed the readers; elsewhere they are used if they are there. */
const required = process.env.OUTSIDE_READERS === 'required';

/** Whether a reader answers, said aloud when it doesn't: its tests are then left out. */
function answers(what: string, command: string, ...args: string[]): boolean {
  const there = required || spawnSync(command, args).status === 0;
  if (!there) process.stdout.write(`${what} is left out: ${command} ${args.join(' ')} doesn't answer\n`);
  return there;
}

export const hasPoppler = answers('The PDF reader', 'pdftoppm', '-v');
export const hasEzdxf = answers('The DXF audit', PYTHON, '-c', 'import ezdxf');
export const hasUnzip = answers('The system’s unzip', 'unzip', '-v');
export const hasPython = answers('The second ZIP reader', PYTHON, '-c', 'import zipfile');

/** What a command prints. Throws with its own words when it fails. */
export function said(command: string, ...args: string[]): string {
  const { status, stdout, stderr, error } = spawnSync(command, args, { encoding: 'utf8', maxBuffer: 1e9 });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}: ${error?.message ?? stderr}`);
  return stdout;
}
