import { type ParseArgsConfig, parseArgs } from 'node:util';
import { EXIT_HELP, type Exit, UseError } from './exit.ts';
import type { Io } from './io.ts';

/** One word of the command line. */
export interface Command {
  /** One line, for the list of commands. */
  readonly about: string;
  readonly help: string;
  run(argv: readonly string[], io: Io): Promise<Exit>;
}

/** A command's help: how it is called, what it does, and the exit codes. */
export function helpText(usage: string, body: string): string {
  return `Usage: pinbridge ${usage}\n\n${body.trim()}\n\n${EXIT_HELP}\n`;
}

type Options = NonNullable<ParseArgsConfig['options']>;
type Read<O extends Options> = ReturnType<
  typeof parseArgs<{ args: string[]; options: O; allowPositionals: true; strict: true }>
>;

/** Node's own reading of the arguments; what it refuses is a `UseError`, a mistyped option named as such. */
export function readArguments<const O extends Options>(argv: readonly string[], options: O): Read<O> {
  try {
    return parseArgs({
      args: joined(argv, options),
      options,
      allowPositionals: true,
      strict: true,
    });
  } catch (error) {
    throw new UseError(sayMisread(error));
  }
}

/**
 * An option and the negative number after it in one word: Node would take `-1` for another option, and the rule of the
 * option itself says better what is allowed.
 */
function joined(argv: readonly string[], options: Options): string[] {
  const out: string[] = [];
  let ended = false;
  for (const word of argv) {
    const last = out[out.length - 1] ?? '';
    ended ||= last === '--';
    const named = !ended && last.startsWith('--') ? options[last.slice(2)] : undefined;
    if (named?.type === 'string' && /^-[.\d]/.test(word)) out[out.length - 1] = `${last}=${word}`;
    else out.push(word);
  }
  return out;
}

function sayMisread(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const unknown = 'code' in error && error.code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION';
  const option = unknown && /'(-[^']*)'/.exec(error.message)?.[1];
  return option ? `There is no option ${option}.` : error.message;
}

/** One of a few words given to an option. Throws `UseError`. */
export function oneOf<const T extends string>(option: string, given: string, allowed: readonly T[]): T {
  const found = allowed.find((word) => word === given);
  if (found === undefined) throw new UseError(`${option} ${given}: it must be ${allowed.join(' or ')}.`);
  return found;
}
