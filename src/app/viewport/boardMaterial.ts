import { Color, ShaderMaterial, type Texture, Vector4 } from 'three';
import type { Palette } from './palette.ts';
import { KEY_FROM_EYE } from './woodMaterial.ts';

const vertexShader = /* glsl */ `
  varying vec3 vPlace;
  void main() {
    vPlace = (modelMatrix * vec4(position, 1.0)).xyz;
    gl_Position = projectionMatrix * viewMatrix * vec4(vPlace, 1.0);
  }
`;

const fragmentShader = /* glsl */ `
  uniform sampler2D shade;
  uniform vec4 shadePlan;
  uniform vec4 cut;
  uniform vec3 keyFromEye;
  uniform vec3 shadow;
  uniform float strength;
  varying vec3 vPlace;

  void main() {
    // The shadow leans away from the lamp.
    vec3 key = (vec4(keyFromEye, 0.0) * viewMatrix).xyz;
    vec2 lean = key.xy / max(key.z, 0.35) * 3.5;
    vec2 plan = (vPlace.xy - shadePlan.xy) / shadePlan.zw;
    vec2 leaning = (vPlace.xy + lean - shadePlan.xy) / shadePlan.zw;
    float covered = 0.7 * texture2D(shade, plan).b + 0.7 * texture2D(shade, leaning).a;
    // No shadow under what the section took away.
    float kept = smoothstep(-6.0, 6.0, dot(vec4(vPlace, 1.0), cut));
    gl_FragColor = vec4(shadow, strength * smoothstep(0.02, 1.0, covered) * kept);
    #include <colorspace_fragment>
  }
`;

export type BoardMaterial = ReturnType<typeof boardMaterial>;

/** The part's soft shadow on the drawing board, which is whatever stands behind the canvas. */
export function boardMaterial() {
  const uniforms = {
    shade: { value: null as Texture | null },
    shadePlan: { value: new Vector4(0, 0, 1, 1) },
    /** Plane (normal, constant) of the section: what lies on its negative side is away. */
    cut: { value: new Vector4(0, 0, 0, 100) },
    keyFromEye: { value: KEY_FROM_EYE },
    shadow: { value: new Color() },
    strength: { value: 0 },
  };
  const material = new ShaderMaterial({
    vertexShader,
    fragmentShader,
    uniforms,
    transparent: true,
    depthWrite: false,
  });
  return Object.assign(material, { uniforms });
}

export function colourBoard({ uniforms }: BoardMaterial, palette: Palette) {
  uniforms.shadow.value.set(palette.shadow);
  uniforms.strength.value = palette.shadowStrength;
}
