import type { Client, ClientState } from '../../src/app/client/client.ts';
import { ClientError } from '../../src/app/client/clientError.ts';
import type { KeptDesign, Shelf } from '../../src/app/keep/shelf.ts';
import type { DesignText } from '../../src/design/design.ts';
import type { Draft, Failure, Solid } from '../../workers/protocol.ts';

const mesh = {
  positions: new Float32Array(0),
  normals: new Float32Array(0),
  triangles: new Uint32Array(0),
  edges: new Float32Array(0),
};

export const aDraft = (volumeMm3: number): Draft => ({ mesh: { ...mesh }, volumeMm3, ms: 15 });

export const aSolid = (volumeMm3: number): Solid => ({
  mesh: { ...mesh },
  ms: 310,
  threads: true,
  figures: {
    valid: true,
    volumeMm3,
    areaMm2: 13_000,
    boxMm: [-76, -25, 0, 76, 11, 9.5],
    centroidMm: [0, -6, 4],
    throughHoles: 6,
  },
});

interface Asked<Answer> {
  readonly text: DesignText;
  readonly holes: string;
  readonly answer: (answer: Answer) => void;
  readonly refuse: (failure: Failure) => void;
}

/** A client whose questions wait until the test answers them. */
export function clientDouble() {
  const drafts: Asked<Draft>[] = [];
  const solids: Asked<Solid>[] = [];
  const ask = <Answer>(asked: Asked<Answer>[], text: DesignText, holes: string) =>
    new Promise<Answer>((answer, reject) => {
      asked.push({ text, holes, answer, refuse: (failure) => reject(new ClientError(failure)) });
    });
  const listeners = new Set<(state: ClientState) => void>();
  const client: Client = {
    draft: (text, holes) => ask(drafts, text, holes),
    solid: (text, holes) => ask(solids, text, holes),
    file: () => Promise.reject(new ClientError({ kind: 'stopped', message: 'no files here' })),
    mesh: () => Promise.reject(new ClientError({ kind: 'stopped', message: 'no files here' })),
    onState: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    dispose: () => {},
  };
  const say = (state: ClientState) => {
    for (const listener of listeners) listener(state);
  };
  return { client, drafts, solids, say };
}

/** A shelf in memory, which can be made to refuse. */
export function shelfDouble() {
  const designs = new Map<string, KeptDesign>();
  const control = { refuses: false };
  const allowed = async () => {
    if (control.refuses) throw new DOMException('refused', 'InvalidStateError');
  };
  const shelf: Shelf = {
    get: (name) => allowed().then(() => designs.get(name)),
    set: (name, design) => allowed().then(() => void designs.set(name, structuredClone(design))),
    all: () => allowed().then(() => [...designs]),
    remove: (name) => allowed().then(() => void designs.delete(name)),
  };
  return { shelf, designs, control };
}
