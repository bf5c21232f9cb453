import { Color, type Data3DTexture, ShaderMaterial, type Texture, Vector3, Vector4 } from 'three';
import type { Palette } from './palette.ts';

/** From the eye toward the key light: up, to the left and from the front, so the part is lit as well from any side. */
export const KEY_FROM_EYE = new Vector3(-0.56, 0.54, 0.63).normalize();

const vertexShader = /* glsl */ `
  varying vec3 vPlace;
  varying vec3 vNormal;
  #include <clipping_planes_pars_vertex>
  void main() {
    vPlace = position;
    vNormal = normal;
    vec4 mvPosition = modelViewMatrix * vec4(position, 1.0);
    gl_Position = projectionMatrix * mvPosition;
    #include <clipping_planes_vertex>
  }
`;

// Lengths are mm; x runs along the grain. The numbers of the pattern were chosen by eye, for a brown rosewood.
const fragmentShader = /* glsl */ `
  precision highp sampler3D;
  uniform sampler3D grain;
  uniform sampler2D shade;
  uniform vec4 shadePlan;
  uniform vec2 heights;
  uniform vec3 wood;
  uniform vec3 woodLight;
  uniform vec3 woodDark;
  uniform vec3 fresh;
  uniform vec3 keyFromEye;
  uniform vec3 paper;
  uniform float fade;
  varying vec3 vPlace;
  varying vec3 vNormal;
  #include <common>
  #include <clipping_planes_pars_fragment>

  // Colour of the wood at p; .a is how open its pores are there.
  vec4 woodAt(vec3 p) {
    float wander = texture(grain, p * vec3(0.0016, 0.005, 0.005)).r - 0.5;
    // Growth rings about a pith behind and below the board, a little out of round.
    float ring = length(p.yz - vec2(70.0, -95.0)) + 9.0 * wander;
    float spell = texture(grain, vec3(p.x * 0.001, ring * 0.017, 0.71)).r;
    float year = ring / 1.7 + 3.0 * spell;
    float season = fract(year);
    float late = smoothstep(0.2, 0.9, season) * (1.0 - smoothstep(0.9, 1.0, season));
    float streak = smoothstep(0.44, 0.66, spell);
    float fibre = texture(grain, p * vec3(0.0028, 0.06, 0.06)).g;
    vec3 colour = mix(wood, woodLight, 0.8 * (1.0 - streak) * (1.0 - 0.55 * late));
    colour = mix(colour, woodDark, streak * (0.45 + 0.35 * late) + 0.16 * late);
    colour *= 1.16 - 0.32 * fibre;
    float pore = smoothstep(0.72, 0.9, fibre);
    return vec4(mix(colour, woodDark * 0.5, 0.55 * pore), pore);
  }

  void main() {
    #include <clipping_planes_fragment>
    vec3 n = normalize(vNormal);
    bool inParallel = isOrthographic;
    vec3 eye = inParallel ? vec3(viewMatrix[0][2], viewMatrix[1][2], viewMatrix[2][2])
                          : normalize(cameraPosition - vPlace);
    vec3 viewUp = vec3(viewMatrix[0][1], viewMatrix[1][1], viewMatrix[2][1]);

    // A lamp near enough that its light falls off along the part.
    vec3 toKey = (vec4(keyFromEye, 0.0) * viewMatrix).xyz * 280.0 - vPlace;
    float falloff = pow(78400.0 / dot(toKey, toKey), 0.55);
    vec3 key = normalize(toKey);

    // How far inside a cut (below its lips, above the underside), and how deep in a wide hollow. Walls look more than a
    // cell of the map before them: an outer wall then sees bare ground.
    vec2 plan = (vPlace.xy + n.xy * 1.3 - shadePlan.xy) / shadePlan.zw;
    vec2 around = mix(vec2(heights.x), vec2(heights.y), texture2D(shade, plan).rg);
    float inside = n.z < -0.5 ? 0.0 : around.x - vPlace.z;
    float fromBelow = vPlace.z - heights.x + 0.8;
    float open = 1.0 - 0.8 * smoothstep(0.3, 6.0, min(inside, fromBelow));
    open *= 1.0 - 0.3 * smoothstep(0.0, 3.0, n.z < 0.2 ? 0.0 : around.y - vPlace.z);

    vec4 grainHere = woodAt(vPlace);
    // Slot and holes are cut after the top is finished: fresh wood, paler than what has been oiled.
    vec3 albedo = mix(grainHere.rgb, fresh * (0.75 + 0.5 * grainHere.g), (0.9 - 0.45 * max(n.z, 0.0)) * smoothstep(0.15, 0.5, inside));
    // End grain drinks the light.
    albedo *= 1.0 - 0.3 * n.x * n.x;

    float facing = dot(n, key);
    float direct = max(0.0, (facing + 0.15) / 1.15);
    // Turned over, the part is lit from above as well.
    float sky = 0.5 + 0.5 * mix(abs(n.z), dot(n, viewUp), 0.4);
    vec3 ambient = mix(vec3(0.34, 0.30, 0.27), vec3(0.62, 0.64, 0.68), sky);
    vec3 light = ambient * open * open + vec3(1.75, 1.64, 1.48) * direct * falloff * mix(1.0, open, 0.75);

    // Satin: the fibres along x spread a highlight across them.
    vec3 middle = normalize(key + eye);
    vec3 fibre = normalize(vec3(1.0, 0.0, 0.0) - n * n.x + vec3(0.0, 1e-4, 0.0));
    vec3 acrossFibre = cross(n, fibre);
    float up = max(dot(n, middle), 0.05);
    float lobe = pow2(dot(middle, fibre) / 0.30) + pow2(dot(middle, acrossFibre) / 0.52);
    float satin = exp(-lobe / (up * up)) * step(0.0, facing) * falloff;
    float graze = pow(1.0 - max(dot(n, eye), 0.0), 4.0);
    vec3 sheen = vec3(1.0, 0.95, 0.88) * (0.03 + 0.17 * satin + 0.10 * graze) * sky * open * open * (1.0 - 0.5 * grainHere.a);

    gl_FragColor = vec4(albedo * light + sheen * (1.0 - 0.6 * n.x * n.x), 1.0);
    #include <tonemapping_fragment>
    #include <colorspace_fragment>
    gl_FragColor.rgb = mix(gl_FragColor.rgb, paper, fade);
  }
`;

export type WoodMaterial = ReturnType<typeof woodMaterial>;

/** Satin wood with its grain along x, in the part's own millimetres. Give it a shade map and a palette. */
export function woodMaterial(grain: Data3DTexture) {
  const uniforms = {
    grain: { value: grain },
    shade: { value: null as Texture | null },
    /** xMin, yMin, width, height of the shade map */
    shadePlan: { value: new Vector4(0, 0, 1, 1) },
    /** lowest and highest z of the part */
    heights: { value: [0, 1] },
    wood: { value: new Color() },
    woodLight: { value: new Color() },
    woodDark: { value: new Color() },
    fresh: { value: new Color() },
    keyFromEye: { value: KEY_FROM_EYE },
    paper: { value: new Vector3() },
    fade: { value: 0 },
  };
  const material = new ShaderMaterial({
    vertexShader,
    fragmentShader,
    uniforms,
    clipping: true,
    // Edges lie on the faces: faces step back a little, so that edges never flicker.
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
  return Object.assign(material, { uniforms });
}

/** Colours the wood; `fade` (0 … 1) lets the paper through. */
export function colourWood({ uniforms }: WoodMaterial, palette: Palette, fade: number) {
  uniforms.wood.value.set(palette.wood);
  uniforms.woodLight.value.set(palette.woodLight);
  uniforms.woodDark.value.set(palette.woodDark);
  uniforms.fresh.value.set(palette.woodFresh);
  // The fade happens after colour management, in the numbers of the screen.
  const paper = new Color(palette.paper).convertLinearToSRGB();
  uniforms.paper.value.set(paper.r, paper.g, paper.b);
  uniforms.fade.value = fade;
}
