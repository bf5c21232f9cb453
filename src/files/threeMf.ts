import type { PartMesh } from '../../models/mesh/partMesh.ts';
import { decimal } from './decimal.ts';
import { xmlText } from './xmlText.ts';
import { writeZip } from './zip.ts';

/** Places behind the point: a nanometre. Vertices that read alike are one vertex. */
const PLACES = 6;

const CONTENT_TYPES = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
</Types>
`;

const RELATIONSHIPS = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
<Relationship Id="model" Target="/3D/3dmodel.model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
</Relationships>
`;

/**
 * A solid as 3MF (core specification 1.4): one object in millimetres, its triangles outward, vertices of one place
 * being one vertex, so that every edge lies in exactly two triangles. The same mesh, title and date give the same
 * bytes. Throws when the mesh is not closed: a file of it would be refused, or mended by guessing, at the other end.
 */
export function writeThreeMf(
  mesh: Pick<PartMesh, 'positions' | 'triangles'>,
  { title, date }: { readonly title: string; readonly date: Date },
): Uint8Array {
  const { vertices, triangles } = welded(mesh);
  const open = openSides(triangles, vertices.length);
  if (triangles.length === 0 || open > 0)
    throw new Error(
      `This mesh is not closed: ${open} sides of ${triangles.length} triangles have no neighbour`,
    );
  const model = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">',
    `<metadata name="Title">${xmlText(title)}</metadata>`,
    '<metadata name="Application">Pinbridge</metadata>',
    `<metadata name="CreationDate">${date.toISOString().slice(0, 10)}</metadata>`,
    '<resources>',
    `<object id="1" type="model" name="${xmlText(title)}">`,
    '<mesh>',
    '<vertices>',
    ...vertices.map(([x, y, z]) => `<vertex x="${x}" y="${y}" z="${z}"/>`),
    '</vertices>',
    '<triangles>',
    ...triangles.map(([a, b, c]) => `<triangle v1="${a}" v2="${b}" v3="${c}"/>`),
    '</triangles>',
    '</mesh>',
    '</object>',
    '</resources>',
    '<build>',
    '<item objectid="1"/>',
    '</build>',
    '</model>',
    '',
  ].join('\n');
  const encode = (text: string) => new TextEncoder().encode(text);
  return writeZip(
    [
      { name: '[Content_Types].xml', bytes: encode(CONTENT_TYPES) },
      { name: '_rels/.rels', bytes: encode(RELATIONSHIPS) },
      { name: '3D/3dmodel.model', bytes: encode(model) },
    ],
    date,
  );
}

type Triangle = readonly [number, number, number];
/** As written. */
type Vertex = readonly [string, string, string];

/** Vertices that are written alike made one, and the triangles that are left: those with three corners. */
function welded({ positions, triangles }: Pick<PartMesh, 'positions' | 'triangles'>) {
  const known = new Map<string, number>();
  const vertices: Vertex[] = [];
  const written = (i: number) => decimal(positions[i] as number, PLACES);
  const at = Array.from({ length: positions.length / 3 }, (_, v) => {
    const vertex: Vertex = [written(3 * v), written(3 * v + 1), written(3 * v + 2)];
    const key = vertex.join(' ');
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, vertices.length);
    return vertices.push(vertex) - 1;
  });
  const kept: Triangle[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => at[triangles[t + k] as number] as number) as [
      number,
      number,
      number,
    ];
    if (a !== b && b !== c && c !== a) kept.push([a, b, c]);
  }
  return { vertices, triangles: kept };
}

/** How many sides of triangles haven't exactly one neighbour that walks them the other way. */
function openSides(triangles: readonly Triangle[], count: number): number {
  const walked = new Map<number, number>();
  const add = (a: number, b: number) => walked.set(a * count + b, (walked.get(a * count + b) ?? 0) + 1);
  for (const [a, b, c] of triangles) {
    add(a, b);
    add(b, c);
    add(c, a);
  }
  let open = 0;
  for (const [side, times] of walked) {
    const back = (side % count) * count + Math.floor(side / count);
    if (times !== 1 || walked.get(back) !== 1) open++;
  }
  return open;
}
