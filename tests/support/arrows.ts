import { builtinModules } from 'node:module';
import path from 'node:path';
import { type Import, importsOf } from './imports.ts';

/** What the files of a room may read beside their own room. Rooms are folders; the longest that fits counts. */
interface Room {
  /** Rooms of which everything may be read. */
  readonly reads: readonly string[];
  /** Rooms of which types may be read. */
  readonly readsTypesOf?: readonly string[];
  /** Single files that may be read from elsewhere. */
  readonly readsFiles?: readonly string[];
  /** Rooms whose workers may be started, by their address. */
  readonly starts?: readonly string[];
  /** 'any' but those that have a home of their own, or the list of those allowed. */
  readonly packages: 'any' | readonly string[];
}

const pure = ['src/design', 'src/trade', 'models/curves', 'models/curves/rim'];
const written = ['models/surface', 'models/mesh', 'src/report', 'src/sheets', 'src/making', 'src/files'];

const rooms: Readonly<Record<string, Room>> = {
  // acceptDesign solves what a design aims at, and that is measured on its wood
  'src/design': { reads: [...pure, 'src/report'], packages: ['fraction.js'] },
  'src/trade': { reads: pure, packages: [] },
  // The error type is a class, hence a value: a curve that cannot be drawn has to throw it.
  'models/curves': {
    reads: [],
    readsTypesOf: ['src/design'],
    readsFiles: ['src/design/problem.ts'],
    packages: [],
  },
  // How the edge runs: what surface and solid have in common.
  'models/curves/rim': { reads: ['models/curves'], packages: [] },
  'models/surface': { reads: ['models/curves', 'src/design', 'models/curves/rim'], packages: [] },
  'src/report': { reads: [...pure, 'models/surface'], packages: [] },
  'models/mesh': { reads: [], packages: [] },
  // Surface, draft and solid test each other, so none may lean on another. Surface and solid share the rim: the draft,
  // which tests it, may not read it.
  'models/draft': { reads: ['models/curves', 'models/mesh', 'src/design'], packages: 'any' },
  'models/kernel': { reads: ['models/curves', 'models/mesh', 'src/design'], packages: 'any' },
  'models/solid': {
    reads: ['models/curves', 'models/mesh', 'models/kernel', 'src/design', 'models/curves/rim'],
    packages: 'any',
  },
  'src/sheets': { reads: [...pure, 'models/surface', 'src/report'], packages: 'any' },
  'src/making': { reads: [...pure, 'models/surface', 'src/report', 'src/sheets'], packages: 'any' },
  'src/files': { reads: [...pure, ...written], packages: 'any' },
  workers: { reads: [...pure, ...written, 'models/draft', 'models/kernel', 'models/solid'], packages: 'any' },
  'src/app': {
    reads: [...pure, ...written, 'public'],
    readsTypesOf: ['workers'],
    readsFiles: ['workers/protocol.ts'],
    starts: ['workers'],
    packages: 'any',
  },
  'src/cli': {
    reads: [...pure, ...written, 'models/draft', 'models/kernel', 'models/solid', 'workers', 'public'],
    packages: 'any',
  },
};

/** Packages that have one home: the folder in which alone they may be imported. */
const homes: readonly { readonly packages: readonly string[]; readonly home: string }[] = [
  { packages: ['replicad', 'replicad-opencascadejs', 'opencascade.js'], home: 'models/kernel' },
  { packages: ['manifold-3d'], home: 'models/draft' },
  { packages: ['react', 'react-dom', 'zustand'], home: 'src/app' },
  { packages: ['three', '@react-three/fiber'], home: 'src/app/viewport' },
];

const within = (file: string, folder: string) => file.startsWith(`${folder}/`);

/** The room a file is in. */
function roomOf(file: string): string | undefined {
  if (within(file, 'public')) return 'public';
  return Object.keys(rooms)
    .filter((room) => within(file, room))
    .sort((a, b) => b.length - a.length)[0];
}

/** The name under which npm knows what an import names. */
function packageOf(from: string): string {
  const [first = '', second = ''] = from.split('/');
  return first.startsWith('@') ? `${first}/${second}` : first;
}

function wrongPackage(file: string, name: string, from: string): string | undefined {
  if (from.startsWith('node:') || builtinModules.includes(from))
    return within(file, 'src/cli') ? undefined : 'Node belongs to src/cli alone';
  const home = homes.find(({ packages }) => packages.includes(packageOf(from)))?.home;
  if (home && !within(file, home)) return `${packageOf(from)} belongs to ${home} alone`;
  const allowed = rooms[name]?.packages ?? [];
  if (allowed === 'any' || allowed.includes(packageOf(from))) return undefined;
  return `${name} may import ${allowed.length > 0 ? `no package but ${allowed.join(', ')}` : 'no package'}`;
}

function wrongRoom(room: Room, name: string, target: string, how: Import['how']): string | undefined {
  const other = roomOf(target);
  if (!other) return 'it lies in none of the rooms';
  const allowed =
    other === name ||
    room.reads.includes(other) ||
    (how === 'types' && room.readsTypesOf?.includes(other)) ||
    (how === 'url' && target.endsWith('.worker.ts') && room.starts?.includes(other)) ||
    room.readsFiles?.includes(target);
  if (allowed) return undefined;
  const may = [
    ...room.reads.filter((read) => read !== name),
    ...(room.readsTypesOf ?? []).map((read) => `types of ${read}`),
    ...(room.readsFiles ?? []),
    ...(room.starts ?? []).map((read) => `addresses of ${read}/*.worker.ts`),
  ];
  return `${name} may read ${may.length > 0 ? may.join(', ') : 'nothing else'}`;
}

/** The first way round in a circle, if any: a → b → a. */
function cycle(reads: ReadonlyMap<string, readonly string[]>): string[] | undefined {
  const done = new Set<string>();
  const trail: string[] = [];
  const visit = (file: string): string[] | undefined => {
    if (trail.includes(file)) return [...trail.slice(trail.indexOf(file)), file];
    if (done.has(file)) return undefined;
    trail.push(file);
    for (const next of reads.get(file) ?? []) {
      const found = visit(next);
      if (found) return found;
    }
    trail.pop();
    done.add(file);
    return undefined;
  };
  for (const file of reads.keys()) {
    const found = visit(file);
    if (found) return found;
  }
  return undefined;
}

/**
 * Checks which file reads which.
 *
 * @param files path (from the repository's top, with /) to text; the text of what is no program is not looked at
 * @returns one line for each wrong arrow, with the file, its import and the rule; and the first cycle
 */
export function wrongArrows(files: ReadonlyMap<string, string>): string[] {
  const wrong: string[] = [];
  const reads = new Map<string, string[]>();
  for (const [file, source] of files) {
    if (!/\.tsx?$/.test(file)) continue;
    const name = roomOf(file);
    const room = name && rooms[name];
    if (!name || !room) {
      wrong.push(`${file} lies in none of the rooms: ${Object.keys(rooms).join(', ')}`);
      continue;
    }
    const targets: string[] = [];
    for (const { from, how } of importsOf(file, source)) {
      let rule: string | undefined;
      if (from.startsWith('.')) {
        const target = path.posix.join(path.posix.dirname(file), from);
        rule = files.has(target) ? wrongRoom(room, name, target, how) : 'there is no such file';
        // A worker is started, not read: that it shares its protocol with the one who starts it is no circle.
        if (how !== 'url') targets.push(target);
      } else {
        rule = wrongPackage(file, name, from);
      }
      if (rule) wrong.push(`${file} imports ${from}: ${rule}`);
    }
    reads.set(file, targets);
  }
  const circle = cycle(reads);
  if (circle) wrong.push(`A cycle: ${circle.join(' → ')}`);
  return wrong;
}
