import { WORKSHOP } from '../../making/workshop.ts';
import type { Bench, Benches } from '../store/state.ts';

export const BENCHES_KEY = 'pinbridge-benches';
/** Benches that are kept, newest first: a few hundred bytes each. */
const MOST = 60;

/** What was ticked and measured before in this browser. What can't be read is left out. */
export function rememberedBenches(): Benches {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(BENCHES_KEY) ?? 'null');
    if (!isGroup(kept)) return {};
    return Object.fromEntries(
      Object.entries(kept).flatMap(([fingerprint, one]) => {
        const bench = readBench(one);
        return bench ? [[fingerprint, bench]] : [];
      }),
    );
  } catch {
    // storage refused, or something else in its place
    return {};
  }
}

/**
 * Changes one bench and keeps it beside the others. What another window has written meanwhile is what is changed, so that
 * nothing it ticked or measured is lost. Gives all that there are.
 *
 * @param known here, should the browser keep nothing
 * @param change the bench from what there is
 */
export function changeBench(
  known: Benches,
  fingerprint: string,
  change: (benches: Benches) => Bench,
): Benches {
  const present = { ...known, ...rememberedBenches() };
  const all = Object.entries({ ...present, [fingerprint]: change(present) });
  const benches = Object.fromEntries(all.sort(([, a], [, b]) => b.at - a.at).slice(0, MOST));
  try {
    localStorage.setItem(BENCHES_KEY, JSON.stringify(benches));
  } catch {
    // refused: it holds until the page is left
  }
  return benches;
}

function readBench(json: unknown): Bench | undefined {
  if (!isGroup(json)) return undefined;
  const { name, workshop, ticked, measured, at } = json;
  if (typeof name !== 'string' || !isTime(at) || !Array.isArray(ticked)) return undefined;
  if (!isGroup(workshop) || !isGroup(measured)) return undefined;
  return {
    name,
    // a field that this version doesn't know can't be mended on the page
    workshop: strings(pick(workshop, Object.keys(WORKSHOP))),
    ticked: ticked.filter((one) => typeof one === 'string'),
    measured: strings(measured),
    at,
  };
}

/** A time that has been: one to come would stay the newest for ever. */
function isTime(at: unknown): at is number {
  return typeof at === 'number' && at >= 0 && at <= Date.now();
}

function pick(group: Readonly<Record<string, unknown>>, keys: readonly string[]) {
  return Object.fromEntries(Object.entries(group).filter(([key]) => keys.includes(key)));
}

function isGroup(json: unknown): json is Readonly<Record<string, unknown>> {
  return typeof json === 'object' && json !== null && !Array.isArray(json);
}

function strings(group: Readonly<Record<string, unknown>>): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(group).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
}
