/** One corner of a polyline, and the bulge of the piece that begins there. */
export interface Vertex {
  readonly x: number;
  readonly y: number;
  readonly bulge?: number;
}

/**
 * Area (mm², positive counter-clockwise) and length (mm) of a closed polyline with bulges, from nothing but its
 * corners: a bulge b over a chord c stands for an arc that turns through θ = 4·atan(b), of radius c / (2·sin(θ/2)).
 */
export function polylineFigures(vertices: readonly Vertex[]): { area: number; length: number } {
  let area = 0;
  let length = 0;
  vertices.forEach((a, i) => {
    const b = vertices[(i + 1) % vertices.length] as Vertex;
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    area += (a.x * b.y - b.x * a.y) / 2;
    const turn = 4 * Math.atan(a.bulge ?? 0);
    if (turn === 0) {
      length += chord;
      return;
    }
    const radius = chord / (2 * Math.sin(turn / 2));
    area += (radius * radius * (turn - Math.sin(turn))) / 2;
    length += radius * turn;
  });
  return { area, length };
}
