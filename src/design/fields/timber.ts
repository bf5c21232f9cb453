import { BONE_KG_M3 } from '../../trade/saddleMass.ts';
import { BRACE_SPRUCE } from '../../trade/woods.ts';
import { choice, density, type Field, length, mass, modulus, text } from './kinds.ts';

export const timber = {
  name: text('Timber', 'Indian rosewood', 120, 'What the bridge is made of.'),
  density: density('Density', [300, 1500], 849, 5, 'At 12 % moisture.'),
  stiffness: modulus(
    'Stiffness along the grain',
    [3, 30],
    12.27,
    0.1,
    'Modulus of elasticity E along the grain.',
  ),
  weighed: choice(
    'Weighed',
    { wood: 'the wood alone', strung: 'with saddle and pins too' },
    'wood',
    'Whether saddle and pins are weighed beside the wood.',
  ),
  saddleDensity: density(
    'Density of the saddle',
    [300, 3500],
    BONE_KG_M3,
    10,
    `A guess of ours: bone has about ${BONE_KG_M3} kg/m³ (from memory). Weigh a blank to know.`,
  ),
  pinMass: mass(
    'One pin',
    [0.05, 10],
    0.7,
    0.05,
    'Mass of one bridge pin. 0.7 g is a guess of ours: weigh a set and divide.',
  ),
  braceWidth: length(
    'Brace to compare with, width',
    [2, 30],
    8,
    0.5,
    'Width of the rectangular bar that the bridge’s stiffness is compared with.',
  ),
  braceStiffness: modulus(
    'Its stiffness along the grain',
    [3, 30],
    BRACE_SPRUCE.stiffnessGPa,
    0.1,
    `Modulus of elasticity of the bar; Sitka spruce has about ${BRACE_SPRUCE.stiffnessGPa} GPa (from memory).`,
  ),
} as const satisfies Readonly<Record<string, Field>>;
