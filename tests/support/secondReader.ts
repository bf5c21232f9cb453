import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

/** What a STEP file holds according to another program. */
export interface Read {
  readonly solids: number;
  readonly volume: number;
  /** [xMin, yMin, zMin, xMax, yMax, zMax] of a tight box round the exact faces, mm */
  readonly box: readonly number[];
  /** Every flat face. */
  readonly planes: readonly Plane[];
}

/** A plane: its unit normal, of either sense, and a point of it, mm. */
export interface Plane {
  readonly normal: readonly [number, number, number];
  readonly point: readonly [number, number, number];
}

// The old kernel has no types of its own: these are the few calls made here, by its numbered overloads.
interface Point {
  X(): number;
  Y(): number;
  Z(): number;
}
interface OldKernel {
  readonly FS: {
    createDataFile(
      folder: string,
      name: string,
      data: Uint8Array,
      r: boolean,
      w: boolean,
      own: boolean,
    ): void;
    unlink(path: string): void;
  };
  readonly STEPControl_Reader_1: new () => {
    ReadFile(name: string): unknown;
    TransferRoots(): number;
    OneShape(): object;
  };
  readonly GProp_GProps_1: new () => { Mass(): number };
  readonly BRepGProp: {
    VolumeProperties_1(s: object, g: object, closed: boolean, skip: boolean, mesh: boolean): void;
  };
  readonly Bnd_Box_1: new () => { CornerMin(): Point; CornerMax(): Point };
  readonly BRepBndLib: { AddOptimal(s: object, box: object, mesh: boolean, tolerance: boolean): void };
  readonly TopExp_Explorer_2: new (
    s: object,
    find: unknown,
    avoid: unknown,
  ) => { More(): boolean; Next(): void; Current(): object };
  readonly TopAbs_ShapeEnum: {
    readonly TopAbs_SOLID: unknown;
    readonly TopAbs_FACE: unknown;
    readonly TopAbs_SHAPE: unknown;
  };
  readonly TopoDS: { Face_1(s: object): object };
  readonly BRepAdaptor_Surface_2: new (
    face: object,
    restricted: boolean,
  ) => { GetType(): unknown; Plane(): { Axis(): { Direction(): Point }; Location(): Point } };
  readonly GeomAbs_SurfaceType: { readonly GeomAbs_Plane: unknown };
}

/** Loads opencascade.js 1.1.4, a build of OCCT 7.4 by other hands, as a second exact kernel that reads our STEP. */
export async function secondReader(): Promise<(step: Uint8Array) => Read> {
  const folder = path.join(
    path.dirname(createRequire(import.meta.url).resolve('opencascade.js/package.json')),
    'dist',
  );
  const { default: Module } = (await import(
    pathToFileURL(path.join(folder, 'opencascade.wasm.js')).href
  )) as {
    default: new (options: object) => Promise<OldKernel>;
  };
  const wasmBinary = await readFile(path.join(folder, 'opencascade.wasm.wasm'));
  const oc = await new Module({ wasmBinary, print: () => {}, printErr: () => {} });
  return (step) => read(oc, step);
}

function read(oc: OldKernel, step: Uint8Array): Read {
  oc.FS.createDataFile('/', 'part.step', step, true, true, true);
  const reader = new oc.STEPControl_Reader_1();
  reader.ReadFile('part.step');
  reader.TransferRoots();
  const shape = reader.OneShape();
  oc.FS.unlink('/part.step');
  const { TopAbs_SOLID, TopAbs_SHAPE } = oc.TopAbs_ShapeEnum;
  let solids = 0;
  for (const walk = new oc.TopExp_Explorer_2(shape, TopAbs_SOLID, TopAbs_SHAPE); walk.More(); walk.Next())
    solids++;
  const g = new oc.GProp_GProps_1();
  oc.BRepGProp.VolumeProperties_1(shape, g, false, false, false);
  const bounds = new oc.Bnd_Box_1();
  oc.BRepBndLib.AddOptimal(shape, bounds, false, false);
  const [a, b] = [bounds.CornerMin(), bounds.CornerMax()];
  const box = [...coordinates(a), ...coordinates(b)];
  return { solids, volume: g.Mass(), box, planes: planesOf(oc, shape) };
}

const coordinates = (p: Point) => [p.X(), p.Y(), p.Z()] as const;

function planesOf(oc: OldKernel, shape: object): readonly Plane[] {
  const { TopAbs_FACE, TopAbs_SHAPE } = oc.TopAbs_ShapeEnum;
  const planes: Plane[] = [];
  for (const walk = new oc.TopExp_Explorer_2(shape, TopAbs_FACE, TopAbs_SHAPE); walk.More(); walk.Next()) {
    const surface = new oc.BRepAdaptor_Surface_2(oc.TopoDS.Face_1(walk.Current()), false);
    if (surface.GetType() !== oc.GeomAbs_SurfaceType.GeomAbs_Plane) continue;
    const plane = surface.Plane();
    planes.push({ normal: coordinates(plane.Axis().Direction()), point: coordinates(plane.Location()) });
  }
  return planes;
}
