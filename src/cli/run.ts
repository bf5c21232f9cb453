import { check } from './check.ts';
import type { Command } from './command.ts';
import { compare } from './compare.ts';
import { EXIT, EXIT_HELP, type Exit, UseError } from './exit.ts';
import { exitOf } from './exitOf.ts';
import { figures } from './figures.ts';
import { fit } from './fit.ts';
import type { Io } from './io.ts';
import { make } from './make.ts';
import { newDesign } from './new.ts';
import { packet } from './packet.ts';
import { sheets } from './sheets.ts';
import { starters } from './starters.ts';
import { steps } from './steps.ts';
import { version } from './version.ts';

const COMMANDS: ReadonlyMap<string, Command> = new Map([
  ['make', make],
  ['sheets', sheets],
  ['steps', steps],
  ['packet', packet],
  ['fit', fit],
  ['check', check],
  ['figures', figures],
  ['compare', compare],
  ['starters', starters],
  ['new', newDesign],
]);

/** The whole command line. `argv` is what stands after the program's name; gives the exit code and never throws. */
export async function run(argv: readonly string[], io: Io): Promise<Exit> {
  const [word = '', ...rest] = argv;
  const command = COMMANDS.get(word);
  try {
    if (command) {
      if (!asksForHelp(rest)) return await command.run(rest, io);
      io.out(command.help);
      return EXIT.done;
    }
    if (word === '--version') {
      io.out(`${version()}\n`);
      return EXIT.done;
    }
    if (word === 'help' || asksForHelp([word])) {
      io.out(COMMANDS.get(rest[0] ?? '')?.help ?? help());
      return EXIT.done;
    }
    throw new UseError(word === '' ? 'No command is given.' : `There is no command ${word}.`);
  } catch (error) {
    io.err(`${error instanceof Error ? error.message : String(error)}\n`);
    if (error instanceof UseError) io.err(`See pinbridge ${command ? `${word} ` : ''}--help\n`);
    return exitOf(error);
  }
}

/** What stands after -- is a file's name, whatever it looks like. */
function asksForHelp(argv: readonly string[]): boolean {
  const end = argv.indexOf('--');
  return (end < 0 ? argv : argv.slice(0, end)).some((word) => word === '--help' || word === '-h');
}

function help(): string {
  const list = [...COMMANDS].map(([word, { about }]) => `  ${word.padEnd(9)} ${about}\n`).join('');
  return `Bridges for steel-string guitars: from a design file to the exact solid.

Usage: pinbridge COMMAND …

${list}
  COMMAND --help   how a command is used
  --version        the program's version

${EXIT_HELP}
`;
}
