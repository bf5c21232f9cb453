import { initialDesign } from '../design/initial.ts';
import { readDesign } from '../design/read.ts';
import { writeDesign } from '../files/designFile.ts';
import { type Command, helpText, readArguments } from './command.ts';
import { EXIT, UseError } from './exit.ts';
import { STARTER_FILES } from './starterFiles.ts';

/** Prints a design to start from. */
export const newDesign: Command = {
  about: 'print a design to start from',
  help: helpText(
    'new STARTER',
    'Prints the starter of that name as a design file on stdout; `new blank` prints a design of the defaults.\n`pinbridge starters` lists the names.',
  ),
  async run(argv, io) {
    const { positionals } = readArguments(argv, {});
    const [given = ''] = positionals;
    if (positionals.length !== 1)
      throw new UseError('new takes one name: blank, or one that `starters` lists.');
    io.out(writeDesign(given.toLowerCase() === 'blank' ? initialDesign() : named(given)));
    return EXIT.done;
  },
};

function named(given: string) {
  const starter = STARTER_FILES.find(({ name }) => name.toLowerCase() === given.toLowerCase());
  if (starter) return readDesign(starter.json).text;
  const known = ['blank', ...STARTER_FILES.map(({ name }) => name.toLowerCase())];
  throw new UseError(`There is no starter called ${given}. There are: ${known.join(', ')}.`);
}
