import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { writeThreeMf } from '../../src/files/threeMf.ts';

const facts = { title: 'Heron', date: new Date('2026-03-04T05:06:07Z') };

/** A tetrahedron as a screen has it, each face with corners of its own: outward, of 1/6 mm³. */
const faces: readonly (readonly [string, string, string])[] = [
  ['0 0 0', '0 1 0', '1 0 0'],
  ['0 0 0', '1 0 0', '0 0 1'],
  ['0 0 0', '0 0 1', '0 1 0'],
  ['1 0 0', '0 1 0', '0 0 1'],
];
const meshOf = (triangles: readonly (readonly string[])[]) => ({
  positions: Float32Array.from(
    triangles.flatMap((f) => f.flatMap((corner) => corner.split(' ').map(Number))),
  ),
  triangles: Uint32Array.from({ length: 3 * triangles.length }, (_, i) => i),
});
const model = (bytes: Uint8Array) => strFromU8(unzipSync(bytes)['3D/3dmodel.model'] as Uint8Array);

test('vertices of one place are one; a triangle that comes to nothing by it is left out', () => {
  // the second differs from a corner by less than a nanometre
  const sliver = ['1 0 0', '1 0.0000001 0', '0 1 0'];
  const turned = ['1 0.0000001 0', '1 0 0', '0 1 0'];
  const text = model(writeThreeMf(meshOf([...faces, sliver, turned]), facts));
  expect(text.match(/<vertex /g)).toHaveLength(4);
  expect(text.match(/<triangle /g)).toHaveLength(4);
});

test('says its unit and title, whatever is in it', () => {
  const text = model(writeThreeMf(meshOf(faces), { ...facts, title: 'a/b <i> & "q" 🪵\u0000' }));
  expect(text).toContain('<model unit="millimeter" ');
  expect(text).toContain('<metadata name="Title">a/b &lt;i&gt; &amp; &quot;q&quot; 🪵 </metadata>');
  expect(text).toContain('<metadata name="CreationDate">2026-03-04</metadata>');
});

test('the same mesh, title and date give the same bytes', () => {
  expect(writeThreeMf(meshOf(faces), facts)).toEqual(writeThreeMf(meshOf(faces), { ...facts }));
});

test.each([
  ['no triangles', []],
  ['a face that is missing', faces.slice(1)],
  ['a face that is there twice', [...faces, faces[0] ?? []]],
  ['a face that is turned over', [[...(faces[0] ?? [])].reverse(), ...faces.slice(1)]],
])('%s is refused', (_what, triangles) => {
  expect(() => writeThreeMf(meshOf(triangles), facts)).toThrow(/not closed/);
});
