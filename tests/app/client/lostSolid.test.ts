import { afterEach, expect, test, vi } from 'vitest';
import { type Client, createClient } from '../../../src/app/client/client.ts';
import { type Building, keepBuilding } from '../../../src/app/part/keepBuilding.ts';
import { shownPart } from '../../../src/app/store/shownPart.ts';
import { createAppStore } from '../../../src/app/store/store.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { type FakeWorkers, fakeWorkers, QUICK } from './fakeWorkers.ts';

const later = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));
const until = (check: () => void) => vi.waitFor(check, { timeout: 5000, interval: 2 });

let client: Client | undefined;
let building: Building | undefined;
afterEach(() => {
  building?.stop();
  client?.dispose();
});

/** The page's own chain from document to worker; the worker dies in each of the first `deaths` builds. */
function bench(deaths: number) {
  let builds = 0;
  const workers: FakeWorkers = fakeWorkers({
    steps: 1,
    step: async () => {
      builds += 1;
      if (builds > deaths) return;
      workers.crash('ran out of memory');
      await new Promise(() => {});
    },
  });
  const store = createAppStore({ text: initialDesign() });
  client = createClient(workers, QUICK);
  building = keepBuilding(store, client);
  const shown = () => shownPart(store.getState());
  return { store, building, workers, shown, builds: () => builds };
}

test('a worker that dies once gives the exact solid all the same, without a press', async () => {
  const { shown, builds, workers } = bench(1);
  await until(() => expect(shown().stamp).toBe('solid'));
  expect([builds(), workers.starts.length]).toEqual([2, 2]);
});

test('a worker that dies of a design each time is asked twice, then waits for the press', async () => {
  const { shown, builds, building, workers } = bench(2);
  await until(() =>
    expect(shown().trouble).toEqual({ kind: 'stopped', message: 'The exact solid ran out of memory.' }),
  );
  await later(20 * QUICK.pauseMs);
  expect([builds(), workers.starts.length], 'no loop').toEqual([2, 3]);
  building.again();
  await until(() => expect(shown()).toMatchObject({ stamp: 'solid', trouble: undefined }));
  expect(builds()).toBe(3);
});
