// npm test: types, lint, then the tests from quick to slow; stops at the first stage that fails and names it.
// The last line of output is 'N passed, N failed', of all tests together.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const countsFile = path.join(root, 'node_modules/.cache', `test-counts-${process.pid}.json`);

const stages = [
  { name: 'types', command: ['tsc', '-b'] },
  { name: 'lint', command: ['biome', 'check', '--error-on-warnings'] },
  { name: 'unit', command: ['vitest', 'run', '--project', 'unit'], counted: true },
  { name: 'kernel', command: ['vitest', 'run', '--project', 'kernel'], counted: true },
  { name: 'browser', command: ['vitest', 'run', '--project', 'browser'], counted: true },
];

/** @returns {{ passed: number, failed: number }} what tests/support/closing-line.ts wrote, and then removes it */
function readCounts() {
  try {
    return JSON.parse(readFileSync(countsFile, 'utf8'));
  } catch {
    return { passed: 0, failed: 0 };
  } finally {
    rmSync(countsFile, { force: true });
  }
}

mkdirSync(path.dirname(countsFile), { recursive: true });
const total = { passed: 0, failed: 0 };
/** @type {string | undefined} */
let stoppedAt;

for (const { name, command, counted } of stages) {
  const [program = '', ...rest] = command;
  console.log(`\n=== ${name}`);
  const began = performance.now();
  const run = spawnSync(program, rest, {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
    env: {
      ...process.env,
      PATH: `${path.join(root, 'node_modules/.bin')}${path.delimiter}${process.env.PATH}`,
      TEST_COUNTS_FILE: countsFile,
    },
  });
  if (run.error) console.error(run.error.message);
  const counts = counted ? readCounts() : { passed: 0, failed: 0 };
  total.passed += counts.passed;
  total.failed += counts.failed;
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  if (run.status !== 0) {
    // Types, lint or a runner that died count nothing themselves: the closing line must not say '0 failed'.
    if (counts.failed === 0) total.failed += 1;
    stoppedAt = name;
    console.log(`=== ${name} failed after ${seconds} s`);
    break;
  }
  console.log(`=== ${name} passed in ${seconds} s`);
}

const after = stages.slice(stages.findIndex(({ name }) => name === stoppedAt) + 1).map(({ name }) => name);
if (stoppedAt) {
  const left = after.length > 0 ? ` Not run: ${after.join(', ')}.` : '';
  console.log(`\nStopped at the stage '${stoppedAt}', which failed: see above.${left}`);
}
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = stoppedAt ? 1 : 0;
