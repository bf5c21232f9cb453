import { heapBytes } from '../../models/kernel/kernel.ts';
import { acceptedDesigns } from './designs.ts';
import { draftHeightLimit, roadside } from './roads.ts';

/** `npm run roads -- [count] [seed]`: builds that many random designs, both ways of holes, and says what came of it. */
const count = Number(process.argv[2] ?? 500);
const seed = Number(process.argv[3] ?? 20261125);
const say = (text: string) => process.stdout.write(`${text}\n`);

const sample = acceptedDesigns(count, seed);
say(`${count} designs accepted of ${sample.asked} asked, seed ${seed}; refused for:`);
for (const [reason, n] of [...sample.refusals].sort((a, b) => b[1] - a[1])) say(`  ${n}  ${reason}`);

let side = await roadside();
/** Past 2 GB the kernel dies: a long run takes a new one in time, as the program does. */
const MOST_BYTES = 1.5e9;
const worst = { draft: 0, surface: 0, height: 0, draftHeight: 0 };
const failures: string[] = [];
const fail = (text: string) => {
  failures.push(text);
  say(`  ${text}`);
};
for (const [i, accepted] of sample.accepted.entries()) {
  if (heapBytes(side.kernel) > MOST_BYTES) {
    side.builder.dispose();
    side = await roadside();
  }
  if (i > 0 && i % 50 === 0)
    say(`  ${i} designs built, ${failures.length} builds failed or disagreed so far`);
  for (const holes of ['drilled', 'reamed'] as const) {
    try {
      const off = await side.compare(accepted, holes);
      worst.draft = Math.max(worst.draft, Math.abs(off.draftOff));
      worst.surface = Math.max(worst.surface, Math.abs(off.surfaceOff));
      worst.height = Math.max(worst.height, off.heightOff);
      worst.draftHeight = Math.max(worst.draftHeight, off.draftHeightOff);
      const volumes = Math.max(Math.abs(off.draftOff), Math.abs(off.surfaceOff));
      const limit = draftHeightLimit(accepted.curves);
      if (volumes > 5e-4 || off.heightOff > 0.01 || off.draftHeightOff > limit) {
        fail(
          `${i} ${holes}: draft ${off.draftOff.toExponential(2)}, surface ${off.surfaceOff.toExponential(2)}, heights of the surface ${off.heightOff.toFixed(4)} mm, of the draft ${off.draftHeightOff.toFixed(4)} mm`,
        );
      }
    } catch (error) {
      fail(`${i} ${holes}: ${error instanceof Error ? error.message : error}`);
    }
  }
}
say(
  `largest differences: draft ${worst.draft.toExponential(2)}, surface ${worst.surface.toExponential(2)}, heights of the surface ${worst.height.toFixed(4)} mm, of the draft ${worst.draftHeight.toFixed(4)} mm`,
);
say(`${failures.length} of ${2 * count} builds failed or disagreed`);
process.exit(failures.length > 0 ? 1 : 0);
