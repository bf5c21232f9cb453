import type { Curves, Holes } from '../curves/curves.ts';
import { cut } from '../kernel/booleans.ts';
import type { Kernel, Shape } from '../kernel/kernel.ts';
import { KernelError, step } from '../kernel/kernelError.ts';
import { meshOf } from '../kernel/mesh.ts';
import { Scope } from '../kernel/scope.ts';
import type { PartMesh } from '../mesh/partMesh.ts';
import { body } from './body.ts';
import { channelTool } from './channelTool.ts';
import { gate } from './gate.ts';
import { pinTool } from './pinTool.ts';
import { slotTool } from './slotTool.ts';
import type { SolidFigures } from './solidFigures.ts';

/** An exact solid that has passed the gate. Its shape lives until the builder's next build. */
export interface BuiltSolid {
  readonly shape: Shape;
  readonly mesh: PartMesh;
  readonly figures: SolidFigures;
}

export interface BridgeBuilder {
  /**
   * Builds the solid of a bridge. Features whose curves haven't changed since the last build are taken as they are.
   * `between` is awaited before each feature: it may let messages in, and abandon the build by throwing.
   * Throws `KernelError` when the kernel or the gate refuses.
   */
  build(curves: Curves, holes: Holes, between?: () => Promise<void>): Promise<BuiltSolid>;
  /** Frees everything that is kept between builds. */
  dispose(): void;
}

/** Triangles for the screen stray at most this from the solid: mm, radians. */
const MESH = { deviation: 0.02, angle: 0.3 } as const;

/**
 * Ways to make the holes, tried in turn until the gate lets the solid pass: how near two faces count as one (mm), and
 * whether all holes are cut in one go. Where a countersink or a channel just grazes another face one way fails that
 * another does not.
 */
const WAYS = [
  { fuzzy: 1e-4, together: true },
  { fuzzy: 1e-3, together: true },
  { fuzzy: 1e-5, together: true },
  { fuzzy: 1e-4, together: false },
] as const;
type Way = (typeof WAYS)[number];

/** One feature of the chain: what of the curves it reads, and how it turns the shape so far into the next. */
interface Feature {
  readonly name: string;
  readonly reads: (curves: Curves, holes: Holes, way: Way) => unknown;
  readonly make: (scope: Scope, before: Shape | undefined, curves: Curves, holes: Holes, way: Way) => Shape;
}

/** A finished feature: the solid up to and including it, under the key of all that it was made from. */
interface Kept {
  readonly key: string;
  readonly shape: Shape;
  readonly scope: Scope;
}

/**
 * @param draftVolume another kernel's volume of the same part, mm³, for the gate
 */
export function createBridgeBuilder(
  kernel: Kernel,
  draftVolume: (curves: Curves, holes: Holes) => number,
): BridgeBuilder {
  const features = chain(kernel);
  const kept: Kept[] = [];
  const keepOnly = (count: number) => {
    for (const k of kept.splice(count).reverse()) k.scope.free();
  };
  const buildOneWay = async (curves: Curves, holes: Holes, way: Way, between: () => Promise<void>) => {
    let key = '';
    for (const [i, feature] of features.entries()) {
      key += JSON.stringify(feature.reads(curves, holes, way));
      if (kept[i]?.key === key) continue;
      keepOnly(i);
      await between();
      const scope = new Scope();
      try {
        const before = kept[i - 1]?.shape;
        kept.push({
          key,
          scope,
          shape: step(kernel, feature.name, () => feature.make(scope, before, curves, holes, way)),
        });
      } catch (error) {
        scope.free();
        throw error;
      }
    }
    await between();
    const { shape } = kept[features.length - 1] as Kept;
    return step(kernel, 'check of the finished solid', (): BuiltSolid => {
      const mesh = meshOf(kernel, shape, MESH.deviation, MESH.angle);
      return { shape, mesh, figures: gate(kernel, shape, mesh, curves, draftVolume(curves, holes)) };
    });
  };
  return {
    async build(curves, holes, between = async () => {}) {
      let refusal: unknown;
      for (const way of WAYS) {
        try {
          return await buildOneWay(curves, holes, way, between);
        } catch (error) {
          // with nothing kept it was the body that failed, which no way changes
          if (!(error instanceof KernelError) || kept.length === 0) throw error;
          refusal ??= error;
        }
      }
      throw refusal;
    },
    dispose: () => keepOnly(0),
  };
}

/**
 * The features in order. The slot is last: it is what changes most while a bridge is fitted to its guitar, and on the
 * kept rest it costs a tenth of a whole build.
 */
function chain(kernel: Kernel): readonly Feature[] {
  return [
    {
      name: 'body',
      reads: ({ outline, profile, underside, edge }) => [outline, profile, underside, edge],
      make: (scope, _before, curves) => body(kernel, scope, curves),
    },
    {
      name: 'pin holes',
      reads: ({ pins, channels }, holes, way) => [pins.map((p) => [p.at, p.outline[holes]]), channels, way],
      make: (scope, before, curves, holes, { fuzzy, together }) => {
        const tools = [
          ...curves.pins.map((pin) => pinTool(kernel, scope, pin, holes)),
          ...curves.channels.map((channel) => channelTool(kernel, scope, channel)),
        ];
        return together
          ? cut(kernel, scope, before as Shape, tools, fuzzy)
          : tools.reduce((shape, tool) => cut(kernel, scope, shape, [tool], fuzzy), before as Shape);
      },
    },
    {
      name: 'saddle slot',
      reads: ({ slot }) => slot,
      make: (scope, before, curves) => cut(kernel, scope, before as Shape, [slotTool(kernel, scope, curves)]),
    },
  ];
}
