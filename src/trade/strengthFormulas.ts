import { type Formula, ground } from './formula.ts';

/** What strings do to a bridge, and how heavy and stiff it is. A part of `FORMULAS`. */
export const STRENGTH_FORMULAS = {
  B1: {
    name: 'String couple',
    text: 'M = Σ T·h, T each string’s tension, h its height over the soundboard at the saddle, whatever the break angle',
    grounds: [ground('derived', 'equilibrium; the strings are taken to run level from the nut')],
  },
  B6: {
    name: 'Load on the glue',
    text: 'mean shear = Σ T/A; peel at the edge toward the tail = M·c/I, c that edge’s distance from the glue face’s centroid, I its second moment about the line along the bridge through it: 6·M/(b·w²) for a rectangle',
    grounds: [
      ground(
        'derived',
        'bridge and soundboard taken as rigid, which wood is not; that the pinned ball ends press the soundboard to the bridge from beneath is left out; no strength of a glue line was found in a source, so there is none to hold this against',
      ),
    ],
  },
  B7: {
    name: 'Load on the slot’s walls',
    text: 'front F = H′·(1 + e/d) at its mouth, back H′·e/d at its foot, e what shows of the saddle and d what is in the slot, along the saddle; H′ = H·cos τ − V·sin τ, square to a saddle that leans back by τ',
    grounds: [
      ground(
        'derived',
        'equilibrium of a rigid saddle that is loose in its slot, without friction; the slot’s angle in plan is left out',
      ),
    ],
  },
  B8: {
    name: 'Front wall of the slot',
    text: '6·F·a/(s·t²): a cantilever of height a (the slot’s depth), thickness t (the least wood in front) and width s (half the way to each neighbour), loaded at its edge',
    grounds: [
      ground(
        'derived',
        'plain bending; the wall’s hold on its neighbours and on the slot’s ends is left out, so that the figure is too high: a warning only',
      ),
    ],
  },
  'pin-bearing': {
    name: 'Pin bearing',
    text: 'T·cos t₂/(D·t): what the string pulls the front of its hole toward the nut, over the hole’s diameter half way down × the wood’s thickness there; t₂ its slope behind the saddle',
    grounds: [
      ground(
        'derived',
        'an estimate: no friction, the string goes straight down in its hole, and string and pin together press evenly on the whole front wall; in truth the hole’s mouth bears most',
      ),
    ],
  },
  W5: {
    name: 'Bending stiffness',
    text: 'E·I, E along the grain, I the section’s second moment of area about its own level axis; b·h³/12 for a rectangle',
    grounds: [ground('derived', 'the standard beam; E is taken to be the same throughout')],
  },
  W6: {
    name: 'Deflection',
    text: 'δ = ∫ M·m/(E·I(x)) dx, M the load’s bending moment, m that of a unit load at the same place; on two supports with the load in the middle',
    grounds: [
      ground(
        'derived',
        'the standard beam of varying section on supports under both tips; what shear adds, about a twentieth, is left out',
      ),
    ],
  },
  'equal-brace': {
    name: 'The brace it equals',
    text: 'h = (12·E·I/(E_b·b))^(1/3), the height of a rectangular bar of width b and modulus E_b that is as stiff',
    grounds: [ground('derived', 'the standard beam')],
  },
  twisting: {
    name: 'Twisting stiffness',
    text: 'φ = ∫ c(x)/(G·J(x)) dx from the middle to the tips, c what is left of a couple that the strings put in at the middle and the glue takes up evenly along the length; J Saint-Venant’s torsion constant of each section as a sum of rectangles; G = E·(0.111 + 0.063)/2: half way between a quarter-sawn bridge (growth rings upright, G_LR) and a flat-sawn one (G_LT), since which it is isn’t known',
    grounds: [
      ground('derived', 'an estimate: what the choice between the two leaves open is ± 28 %'),
      ground('memory', 'Saint-Venant’s formula for rectangles, of standard handbooks'),
      ground('quoted', 'the ratios to E of sugar maple, USDA Wood Handbook, taken for every wood'),
    ],
  },
  mass: {
    name: 'Mass',
    text: 'density × volume',
    grounds: [
      ground('derived', 'wood taken as even throughout'),
      ground('memory', 'the density of bone, about 1900 kg/m³, where a saddle of bone is counted'),
    ],
  },
  'glue-area': {
    name: 'Glue area',
    text: 'A = ∫ dA inside the outline, less the holes; I = ∫ y² dA about its centroid’s line along the bridge',
    grounds: [ground('derived', 'plane geometry; the glue face’s hollow is left out')],
  },
  sensitivity: {
    name: 'What 0.1 mm does',
    text: '0.1 mm·(f(x + δ) − f(x − δ))/(2·δ), x one dimension, everything else that is set left as it is',
    grounds: [ground('derived', 'a central difference')],
  },
} as const satisfies Readonly<Record<string, Formula>>;
