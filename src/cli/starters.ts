import { type Command, helpText, readArguments } from './command.ts';
import { EXIT, UseError } from './exit.ts';
import { STARTER_FILES } from './starterFiles.ts';

/** Lists the designs to start from. */
export const starters: Command = {
  about: 'list the designs to start from',
  help: helpText(
    'starters',
    'Lists the starters, a line each: the word that `new` takes, and what it is. All are\ninvented for Pinbridge.',
  ),
  async run(argv, io) {
    const { positionals } = readArguments(argv, {});
    if (positionals.length > 0) throw new UseError('starters takes no arguments; `new STARTER` prints one.');
    const width = Math.max(...STARTER_FILES.map(({ name }) => name.length));
    io.out(
      STARTER_FILES.map(({ name, about }) => `${name.toLowerCase().padEnd(width)}  ${about}\n`).join(''),
    );
    return EXIT.done;
  },
};
