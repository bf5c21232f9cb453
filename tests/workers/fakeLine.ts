import type { Holes } from '../../models/curves/curves.ts';
import type { DesignText } from '../../src/design/design.ts';
import type {
  Call,
  GeometryCall,
  PartMesh,
  Reply,
  Request,
  Signal,
  Solid,
  WrittenFile,
} from '../../workers/protocol.ts';
import { type Port, type Service, serve } from '../../workers/serve.ts';
import { turn } from '../../workers/turn.ts';
import { designText } from '../support/change.ts';

/** Both ends of a line whose messages are copied and take a turn to arrive, as between a page and a worker. */
export function fakeLine<C extends Call>(onReply: (reply: Reply<C>) => void) {
  let hear: (request: Request<C>) => void = () => {};
  const port: Port<C> = {
    post: (reply, transfer) => {
      const copy = structuredClone(reply, { transfer: [...transfer] });
      setImmediate(() => onReply(copy));
    },
    listen: (listener) => {
      hear = listener;
    },
  };
  const post = (request: Request<C>) => {
    const copy = structuredClone(request);
    setImmediate(() => hear(copy));
  };
  return { port, post };
}

/** What a fake geometry worker does instead of building. */
export interface FakeBuilds {
  /** Between two features; a real build also reads the signal there. */
  step?(ask: { readonly name: string; readonly step: number }): void | Promise<void>;
  readonly heapBytes?: () => number;
  readonly steps?: number;
  readonly warmUp?: (signal: Signal) => Promise<void>;
}

/**
 * A geometry service that builds in `steps` features and reads the signal between them, as the real one does. The
 * answer tells which design it was made from: its thickness is the mesh's only coordinate.
 */
export function fakeGeometry(fake: FakeBuilds): Service<GeometryCall> {
  const heapBytes = fake.heapBytes ?? (() => 1e8);
  async function build(name: string, signal: Signal): Promise<void> {
    for (let step = 1; step <= (fake.steps ?? 3); step++) {
      await turn();
      if (signal.abandoned) throw new Error('abandoned');
      await fake.step?.({ name, step });
    }
  }
  return {
    threads: false,
    heapBytes,
    warmUp: fake.warmUp ?? (async () => {}),
    answer: {
      solid: async ({ design }, signal) => {
        await build('solid', signal);
        return fakeSolid(markOf(design));
      },
      file: async ({ options }) => {
        await build(options.format, { abandoned: false });
        return { name: `bridge.${options.format}`, bytes: new Uint8Array([1, 2, 3]) } satisfies WrittenFile;
      },
      mesh: async ({ design }) => {
        await build('mesh', { abandoned: false });
        return { mesh: fakeSolid(markOf(design)).mesh };
      },
    },
    transfer: (answer) => ('mesh' in answer ? [answer.mesh.positions.buffer as ArrayBuffer] : []),
  };
}

/** A solid whose mesh is one number. */
export function fakeSolid(mark: number): Solid {
  const mesh: PartMesh = {
    positions: new Float32Array([mark]),
    normals: new Float32Array(0),
    triangles: new Uint32Array(0),
    edges: new Float32Array(0),
  };
  return {
    mesh,
    figures: {
      valid: true,
      volumeMm3: 1,
      areaMm2: 1,
      boxMm: [0, 0, 0, 1, 1, 1],
      centroidMm: [0, 0, 0],
      throughHoles: 0,
    },
    ms: 1,
    threads: false,
  };
}

/** A design told from others by its thickness. */
export function marked(mark: number): DesignText {
  const design = designText();
  return { ...design, top: { ...design.top, thickness: mark } };
}

export function markOf(design: DesignText): number {
  return Number(design.top.thickness);
}

export const HOLES: Holes = 'drilled';

/** Serves a fake geometry over a fake line and keeps what it replied. */
export function servedGeometry(fake: FakeBuilds, start?: () => Promise<Service<GeometryCall>>) {
  const replies: Reply<GeometryCall>[] = [];
  const line = fakeLine<GeometryCall>((reply) => replies.push(reply));
  const ended = serve(line.port, start ?? (async () => fakeGeometry(fake)));
  const solid = (id: number) => line.post({ id, call: 'solid', ask: { design: marked(id), holes: HOLES } });
  const file = (id: number) =>
    line.post({
      id,
      call: 'file',
      ask: { design: marked(id), options: { format: 'step', holes: HOLES } },
    });
  return { replies, ended, solid, file, post: line.post };
}
