import type { Holes, Pin } from '../curves/curves.ts';
import type { MeshBuilder } from './meshBuilder.ts';

/**
 * Adds one pin hole's cut: its outline turned about the pin's axis. The polygon is drawn a little outside the circle,
 * so that it covers as much: chords alone would leave wood in every hole.
 */
export function pinMesh(mesh: MeshBuilder, pin: Pin, holes: Holes, deviation: number): void {
  const outline = pin.outline[holes];
  const widest = Math.max(...outline.map(([r]) => r));
  // drawn so, its corners stray furthest: by r·φ²/12, φ the angle between them (derived)
  const n = Math.max(8, Math.ceil((2 * Math.PI) / Math.sqrt((12 * deviation) / widest)));
  const turn = (2 * Math.PI) / n;
  const swell = Math.sqrt(turn / Math.sin(turn));
  const spokes = Array.from({ length: n }, (_, i) => [Math.cos(i * turn), Math.sin(i * turn)] as const);

  const rings = outline.map(([r, z]) =>
    r === 0
      ? [mesh.point([pin.at[0], pin.at[1], z])]
      : spokes.map(([c, s]) => mesh.point([pin.at[0] + r * swell * c, pin.at[1] + r * swell * s, z])),
  );
  for (let k = 1; k < rings.length; k++) {
    const [low, high] = [rings[k - 1] as number[], rings[k] as number[]];
    const [[r0, z0], [r1, z1]] = [outline[k - 1], outline[k]] as [
      readonly [number, number],
      readonly [number, number],
    ];
    const length = Math.hypot(r1 - r0, z1 - z0);
    const [out, up] = [(z1 - z0) / length, (r0 - r1) / length];
    const vertices = (ring: readonly number[]) =>
      spokes.map(([c, s], i) => mesh.vertex(ring[i % ring.length] as number, [out * c, out * s, up]));
    const [lows, highs] = [vertices(low), vertices(high)];
    for (let i = 0; i < n; i++) {
      const next = (i + 1) % n;
      const [a, b] = [lows[i] as number, lows[next] as number];
      const [c, d] = [highs[i] as number, highs[next] as number];
      if (low.length > 1) mesh.triangle(a, b, d);
      if (high.length > 1) mesh.triangle(a, d, c);
    }
  }
}
