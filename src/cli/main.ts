import { text } from 'node:stream/consumers';
import { run } from './run.ts';

// A reader such as head may close the pipe before all is said: that is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

process.exitCode = await run(process.argv.slice(2), {
  out: (words) => void process.stdout.write(words),
  err: (words) => void process.stderr.write(words),
  watched: process.stderr.isTTY === true,
  readStdin: () => text(process.stdin),
});
