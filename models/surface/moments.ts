/** Sums over a volume about the part's axes: itself in mm³, first moments in mm⁴, second moments in mm⁵. */
export class Moments {
  volume = 0;
  x = 0;
  y = 0;
  z = 0;
  xx = 0;
  yy = 0;
  zz = 0;
  xy = 0;
  xz = 0;
  yz = 0;

  /** Adds what stands over `area` mm² at (x, y) between two heights; a negative area takes it away. */
  add(x: number, y: number, from: number, to: number, area: number): void {
    const volume = (to - from) * area;
    const z = (volume * (from + to)) / 2;
    this.volume += volume;
    this.x += volume * x;
    this.y += volume * y;
    this.z += z;
    this.xx += volume * x * x;
    this.yy += volume * y * y;
    this.zz += (volume * (from * from + from * to + to * to)) / 3;
    this.xy += volume * x * y;
    this.xz += z * x;
    this.yz += z * y;
  }

  /** The same sums to be carried on. */
  copy(): Moments {
    return Object.assign(new Moments(), this);
  }
}
