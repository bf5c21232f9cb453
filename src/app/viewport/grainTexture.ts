import { Data3DTexture, LinearFilter, LinearMipmapNearestFilter, RepeatWrapping, RGFormat } from 'three';

const SIZE = 64;

/**
 * A cube of noise that repeats without a seam. Red wanders slowly (growth rings, streaks); green is fine (pores). Made once,
 * from a fixed seed, so that the same part always shows the same wood.
 */
export function grainTexture(): Data3DTexture {
  const slow = [lattice(8, 1), lattice(16, 2), lattice(32, 3)] as const;
  const fine = lattice(SIZE, 4);
  const data = new Uint8Array(2 * SIZE ** 3);
  for (let k = 0, i = 0; k < SIZE; k++) {
    for (let j = 0; j < SIZE; j++) {
      for (let h = 0; h < SIZE; h++, i += 2) {
        const value = 0.55 * slow[0](h, j, k) + 0.3 * slow[1](h, j, k) + 0.15 * slow[2](h, j, k);
        data[i] = Math.round(255 * value);
        data[i + 1] = Math.round(255 * fine(h, j, k));
      }
    }
  }
  const texture = new Data3DTexture(data, SIZE, SIZE, SIZE);
  texture.format = RGFormat;
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.wrapR = RepeatWrapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapNearestFilter;
  texture.generateMipmaps = true;
  texture.unpackAlignment = 1;
  texture.needsUpdate = true;
  return texture;
}

/** Random values 0 … 1 on a lattice of `cells` to the cube's side, smoothly joined. */
function lattice(cells: number, seed: number): (x: number, y: number, z: number) => number {
  const values = new Float32Array(cells ** 3);
  let state = seed * 0x9e3779b9;
  for (let i = 0; i < values.length; i++) {
    // A linear congruential step (Numerical Recipes); its high bits are random enough for wood.
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    values[i] = (state >>> 8) / 2 ** 24;
  }
  const at = (x: number, y: number, z: number) =>
    values[(x % cells) + cells * ((y % cells) + cells * (z % cells))] as number;
  const mix = (a: number, b: number, t: number) => a + (b - a) * t;
  const scale = cells / SIZE;
  return (x, y, z) => {
    const [i, j, k] = [Math.floor(x * scale), Math.floor(y * scale), Math.floor(z * scale)];
    const [u, v, w] = [smooth(x * scale - i), smooth(y * scale - j), smooth(z * scale - k)];
    const near = mix(mix(at(i, j, k), at(i + 1, j, k), u), mix(at(i, j + 1, k), at(i + 1, j + 1, k), u), v);
    const far = mix(
      mix(at(i, j, k + 1), at(i + 1, j, k + 1), u),
      mix(at(i, j + 1, k + 1), at(i + 1, j + 1, k + 1), u),
      v,
    );
    return mix(near, far, w);
  };
}

const smooth = (t: number) => t * t * (3 - 2 * t);
