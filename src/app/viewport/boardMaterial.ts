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
  uniform vec3 centre;
  uniform float strength;
  varying vec3 vPlace;

  // A chain line along 'along', 1 px wide: long dash, gap, short dash, gap (ISO 128, 04.1).
  float chainLine(float across, float along) {
    float width = fwidth(across);
    float line = 1.0 - smoothstep(0.5 * width, 1.3 * width, abs(across));
    float phase = mod(abs(along) + 4.0, 12.0);
    return line * (phase < 8.0 || (phase > 9.5 && phase < 10.5) ? 1.0 : 0.0);
  }

  void main() {
    // The shadow leans away from the lamp.
    vec3 key = (vec4(keyFromEye, 0.0) * viewMatrix).xyz;
    vec2 lean = key.xy / max(key.z, 0.35) * 3.5;
    vec2 plan = (vPlace.xy - shadePlan.xy) / shadePlan.zw;
    vec2 leaning = (vPlace.xy + lean - shadePlan.xy) / shadePlan.zw;
    float covered = 0.7 * texture2D(shade, plan).b + 0.7 * texture2D(shade, leaning).a;
    // No shadow under what the section took away.
    float kept = smoothstep(-6.0, 6.0, dot(vec4(vPlace, 1.0), cut));
    float dark = strength * smoothstep(0.02, 1.0, covered) * kept;

    float line = max(chainLine(vPlace.y, vPlace.x), chainLine(vPlace.x, vPlace.y));
    vec2 end = smoothstep(vec2(0.0), vec2(0.12), 0.5 - abs(plan - 0.5));
    line *= 0.55 * min(end.x, end.y);

    float alpha = dark + line * (1.0 - dark);
    gl_FragColor = vec4((shadow * dark + centre * line * (1.0 - dark)) / max(alpha, 1e-4), alpha);
    #include <colorspace_fragment>
  }
`;

export type BoardMaterial = ReturnType<typeof boardMaterial>;

/** The drawing board: the part's soft shadow and the two centre lines, on whatever stands behind the canvas. */
export function boardMaterial() {
  const uniforms = {
    shade: { value: null as Texture | null },
    shadePlan: { value: new Vector4(0, 0, 1, 1) },
    /** Plane (normal, constant) of the section: what lies on its negative side is away. */
    cut: { value: new Vector4(0, 0, 0, 100) },
    keyFromEye: { value: KEY_FROM_EYE },
    shadow: { value: new Color() },
    centre: { value: new Color() },
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
  uniforms.centre.value.set(palette.centre);
  uniforms.strength.value = palette.shadowStrength;
}
