import { type Command, helpText, oneOf, readArguments } from './command.ts';
import { eachDesign } from './eachDesign.ts';
import { type DesignFigures, figuresOf } from './figuresOf.ts';
import { kernelSource } from './kernelSource.ts';

/** Prints what was measured of each design's solid, as JSON. */
export const figures: Command = {
  about: 'print volume, mass, balance, stiffness and load as JSON',
  help: helpText(
    'figures DESIGN.json… [--as drilled|reamed]',
    `Builds the exact solid of each design, checks it and prints its figures as JSON on stdout, and nothing
else there: one object for one design, an array for several, in their order, without those that failed.
- reads a design from stdin.

  name, holes              the design's name, and how its pin holes stand: drilled or reamed
  solid                    by the exact kernel: valid, volumeMm3, areaMm2, boxMm (x0, y0, z0, x1, y1, z1),
                           centroidMm, throughHoles
  surface                  by integrating the drawn curves, without a kernel: volumeMm3, boxMm, centroidMm
  massG, massByHolesG      with the design's density; as asked for, and both as drilled and as reamed
  centroidMm               centre of mass of the solid
  crownRadiusMm            the crown's radius as made
  figures                  from the curves, pin holes as reamed unless said:
    mass                   g: drilled, reamed, saddle and pins where they are weighed, together
    properties             drilled, reamed: volume, centre of mass, inertia of volume about it (mm⁵)
    glue                   areaMm2, centroidMm, secondMm4, frontMm and backMm from its centroid to the edges
    bending                along[] (x, stiffnessNm2), midNm2, braceMm, deflectionMm under 100 N in the
                           middle, twistDegPerNm (an estimate), and parts[]: wings and middle block
    loads                  pullN, coupleNm, glue (MPa) and by string what saddle, slot and pin bear
  sensitivity[]            by dimension: massG and stiffnessNm2 for 0.1 mm more
  aimed                    what follows the aim: path, value, asked, reached; null without one
  caution                  what must be said wherever load figures are shown

  --as drilled|reamed      (drilled)
  --help                   this`,
  ),
  async run(argv, io) {
    const { values, positionals } = readArguments(argv, { as: { type: 'string', default: 'drilled' } });
    const holes = oneOf('--as', values.as, ['drilled', 'reamed']);
    const kernel = kernelSource();
    const made: DesignFigures[] = [];
    const exit = await eachDesign(positionals, io, async (accepted) => {
      made.push(await kernel.use((geometry) => figuresOf(accepted, holes, geometry)));
    });
    const printed = positionals.length === 1 ? made[0] : made;
    if (printed !== undefined) io.out(`${JSON.stringify(printed, null, 2)}\n`);
    return exit;
  },
};
