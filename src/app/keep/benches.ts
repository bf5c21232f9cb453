import type { Bench, Benches } from '../store/state.ts';

const KEY = 'pinbridge-benches';
/** Benches that are kept, newest first: a few hundred bytes each. */
const MOST = 60;

/** What was ticked and measured before in this browser. What can't be read is left out. */
export function rememberedBenches(): Benches {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
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
 * Keeps one bench beside those that are known here, and those that another window may have written meanwhile. Gives all
 * that there are.
 */
export function rememberBench(known: Benches, fingerprint: string, bench: Bench): Benches {
  const all = Object.entries({ ...known, ...rememberedBenches(), [fingerprint]: bench });
  const benches = Object.fromEntries(all.sort(([, a], [, b]) => b.at - a.at).slice(0, MOST));
  try {
    localStorage.setItem(KEY, JSON.stringify(benches));
  } catch {
    // refused: it holds until the page is left
  }
  return benches;
}

function readBench(json: unknown): Bench | undefined {
  if (!isGroup(json)) return undefined;
  const { name, workshop, ticked, measured, at } = json;
  if (typeof name !== 'string' || typeof at !== 'number' || !Array.isArray(ticked)) return undefined;
  if (!isGroup(workshop) || !isGroup(measured)) return undefined;
  return {
    name,
    workshop: strings(workshop),
    ticked: ticked.filter((one) => typeof one === 'string'),
    measured: strings(measured),
    at,
  };
}

function isGroup(json: unknown): json is Readonly<Record<string, unknown>> {
  return typeof json === 'object' && json !== null && !Array.isArray(json);
}

function strings(group: Readonly<Record<string, unknown>>): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(group).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
}
