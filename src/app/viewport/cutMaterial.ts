import { Color, DoubleSide, ShaderMaterial, Vector3 } from 'three';
import type { Palette } from './palette.ts';

const vertexShader = /* glsl */ `
  attribute vec2 inCut;
  varying vec2 vInCut;
  void main() {
    vInCut = inCut;
    gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  }
`;

// Tones are mixed in the numbers of the screen: the cut is a drawing, not a lit thing.
const fragmentShader = /* glsl */ `
  uniform vec3 wood;
  uniform vec3 ink;
  uniform vec3 paper;
  uniform float fade;
  uniform float spacing;
  varying vec2 vInCut;
  void main() {
    float along = (vInCut.x + vInCut.y) * 0.70710678;
    float width = fwidth(along);
    float off = abs(fract(along / spacing) - 0.5) * spacing;
    float line = 1.0 - smoothstep(0.35 * width, 1.15 * width, off);
    gl_FragColor = vec4(mix(mix(wood, ink, 0.55 * line), paper, fade), 1.0);
  }
`;

export type CutMaterial = ReturnType<typeof cutMaterial>;

/** The cut face: fresh, light wood with hatching at 45°. Its geometry carries `inCut`, mm in the plane of the cut. */
export function cutMaterial() {
  const uniforms = {
    wood: { value: new Vector3() },
    ink: { value: new Vector3() },
    paper: { value: new Vector3() },
    fade: { value: 0 },
    /** mm from one line of the hatching to the next */
    spacing: { value: 1.5 },
  };
  const material = new ShaderMaterial({
    vertexShader,
    fragmentShader,
    uniforms,
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
  return Object.assign(material, { uniforms });
}

export function colourCut({ uniforms }: CutMaterial, palette: Palette, fade: number) {
  const screen = (css: string, to: Vector3) => {
    const { r, g, b } = new Color(css).convertLinearToSRGB();
    to.set(r, g, b);
  };
  screen(palette.cut, uniforms.wood.value);
  screen(palette.ink, uniforms.ink.value);
  screen(palette.paper, uniforms.paper.value);
  uniforms.fade.value = fade;
}

/** mm between lines of the hatching when a pixel is this many mm: 1.5 mm, halved or doubled to stay 6 to 12 px apart. */
export function hatchSpacing(mmPerPixel: number): number {
  return 1.5 * 2 ** Math.round(Math.log2((8.5 * mmPerPixel) / 1.5));
}
