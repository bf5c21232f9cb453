import type { Intervals } from './interval.ts';
import { rectangleTorsion } from './rectangleTorsion.ts';

/** A section that grows by columns of wood, in order of y. */
export class SliceSum {
  area = 0;
  y = 0;
  z = 0;
  zz = 0;
  #torsion = 0;
  #run = { width: 0, area: 0 };
  readonly #thin: number;

  /** @param thin mm: columns with no thicker stretch part the section in two that twist each by itself */
  constructor(thin: number) {
    this.#thin = thin;
  }

  /** Adds `dy` mm of columns like the one at y. */
  add(y: number, wood: Intervals, dy: number): void {
    let thickest = 0;
    for (const [from, to] of wood) {
      this.addArea(y, from, to, dy);
      this.#torsion += ((to - from) ** 3 * dy) / 3;
      thickest = Math.max(thickest, to - from);
    }
    if (thickest > this.#thin) {
      this.#torsion -= (thickest ** 3 * dy) / 3;
      this.#run.width += dy;
      this.#run.area += thickest * dy;
    } else this.#endRun();
  }

  /** The same for a column that nothing was cut from. */
  addWhole(y: number, from: number, to: number, dy: number): void {
    this.addArea(y, from, to, dy);
    this.#run.width += dy;
    this.#run.area += (to - from) * dy;
  }

  /** Adds to all but torsion. */
  addArea(y: number, from: number, to: number, dy: number): void {
    const area = (to - from) * dy;
    this.area += area;
    this.y += area * y;
    this.z += (area * (from + to)) / 2;
    this.zz += (area * (from * from + from * to + to * to)) / 3;
  }

  /** Saint-Venant's torsion constant: stout parts as rectangles, what joins them as thin strips. mm⁴ */
  torsion(): number {
    this.#endRun();
    return this.#torsion;
  }

  #endRun(): void {
    const { width, area } = this.#run;
    if (width > 0) this.#torsion += rectangleTorsion(width, area / width);
    this.#run = { width: 0, area: 0 };
  }
}
