/** A circle of a STEP file: its centre and radius, mm. */
export interface StepCircle {
  readonly centre: readonly number[];
  readonly radius: number;
}

/** What the edges of a STEP file (ISO 10303-21 text) run along, and what its faces lie on. */
export interface StepEdges {
  /** How many edges there are of each kind of curve, by the standard's names. */
  readonly kinds: Readonly<Record<string, number>>;
  readonly circles: readonly StepCircle[];
  /** How many faces there are on each kind of surface. */
  readonly surfaces: Readonly<Record<string, number>>;
}

/** Reads the edges and faces of a STEP file by its text alone. */
export function stepEdges(text: string): StepEdges {
  const records = new Map<string, string>();
  for (const [, id = '', record = ''] of text.matchAll(/#(\d+)\s*=\s*(.*?);/gs)) {
    records.set(id, record.replace(/\s+/g, ''));
  }
  const record = (id: string | undefined) => records.get(id ?? '') ?? '';
  const refs = (of: string) => [...of.matchAll(/#(\d+)/g)].map((m) => m[1]);
  const kinds: Record<string, number> = {};
  const surfaces: Record<string, number> = {};
  const circles: StepCircle[] = [];
  const kindOf = (of: string) => /^\(?(\w+)/.exec(of)?.[1] ?? '';
  for (const edge of records.values()) {
    if (edge.startsWith('ADVANCED_FACE(')) {
      const kind = kindOf(record(refs(edge).at(-1)));
      surfaces[kind] = (surfaces[kind] ?? 0) + 1;
    }
    if (!edge.startsWith('EDGE_CURVE(')) continue;
    let curve = record(refs(edge)[2]);
    // an edge with parameters on its faces names its curve in space first
    if (/^(SURFACE|SEAM)_CURVE\(/.test(curve)) curve = record(refs(curve)[0]);
    // what is several things at once, as rational curves are, begins with a bracket
    const kind = kindOf(curve);
    kinds[kind] = (kinds[kind] ?? 0) + 1;
    if (kind !== 'CIRCLE') continue;
    const centre = record(refs(record(refs(curve)[0]))[0]);
    circles.push({
      centre: (/\(([^()]*)\)\)$/.exec(centre)?.[1] ?? '').split(',').map(Number),
      radius: Number(/,([^,]*)\)$/.exec(curve)?.[1]),
    });
  }
  return { kinds, circles, surfaces };
}
