import { type Command, helpText, readArguments } from './command.ts';
import { eachDesign } from './eachDesign.ts';
import { FIT_NOTES } from './fitNotes.ts';
import { type DesignFit, fitOf } from './fitOf.ts';
import { fitTable } from './fitTable.ts';
import { wrapText } from './wrapText.ts';

/** Prints how each design fits its guitar, as JSON or as tables. */
export const fit: Command = {
  about: 'print how a bridge fits its guitar: slot, strings, saddle, as JSON or a table',
  help: helpText(
    'fit DESIGN.json… [--table]',
    `Solves each design from its guitar and prints as JSON on stdout, and nothing else there, how it fits: one
object for one design, an array for several, in their order, without those that failed. No solid is built.
- reads a design from stdin. Lengths are mm, angles degrees, forces N; strings stand treble first; what has
treble, centre and bass is meant at the first string, on the guitar's centre line and at the last string.

  name, hand, scaleMm      of the design: its name, right or left, the scale length
  slot                     the middle line of the saddle slot
    angleDeg               positive carries the bass end away from the nut
    setbackMm              how far beyond the scale length: treble, centre, bass
    nutToSlotMm            from the scale's end at the nut, along the guitar: treble, centre, bass
    firmEnds               α: how firmly nut and saddle clamp a string, 0 to 2, no unit
    least                  angleDeg and setbackMm as solved with α = 1, a lower bound
  strings[]                one for each string
    note, frequencyHz      what it is tuned to, and its frequency, Hz
    diameterMm, coreMm     over the wrap, and of the steel core
    massGM                 mass by length, g/m
    tensionN, stressGPa    its pull, N, and what the core bears, GPa
    inharmonicity          B of f·n·√(1 + B·n²), no unit
    xMm                    its place at the saddle, + to the guitar's +X: treble, of a left-handed one bass
    setbackMm              the set-back it asks for
    measured               whether that is the builder's own
    nutSetbackMm           how far its nut stands behind the scale's end; negative is toward the saddle
    onSlotMm               the set-back of a crown on the slot's middle there, a saddle's lean counted
    residualMm             what it asks for beyond that, positive away from the nut
    filedMm                how far its crown is filed from the slot's middle, positive away from the nut
    filable                whether the saddle is wide enough to file the whole residual
    residualCents12        error at the 12th fret with its crown on the slot's middle, cents, sharp positive
    cents                  errors at frets 1 to 12, cents: bare (uncompensated), onSlot, filed (as made)
    heightOverTopMm        its underside at the saddle, over the soundboard on the centre line
    saddleShowingMm        saddle over the bridge's top under it, along the saddle
    saddleInSlotMm         saddle in the wood under it, along the saddle
    breakAngleDeg          what it turns through over the saddle in elevation; null with no wood behind
    straightToPin          whether it goes straight from saddle to pin hole, touching no wood between
    sideAngleDeg           what it turns in plan over the saddle, positive toward +X
    saddleDownN            its load on the saddle downward, N; null where there is no break angle
    saddleForwardN         its load on the saddle toward the nut, N; null where there is no break angle
    correctedSetbackMm     what brings its measured cents at the 12th to 0; null if none were measured, or
                           something was misread (see remarks)
    saddleChangeMm         what to add to the saddle, along it, for the wanted action, negative to take off;
                           null if no action was measured
  totalTensionN            all strings together, N
  thicknessMm              glue plane to the uncut top, at the middle of the slot
  crownRadiusMm            of the bridge's top
  fretPlaneMm              the fret tops' plane over the soundboard at the saddle, on the centre line
  straightedgeGapMm        a straightedge on the frets over the bridge's top there; about 0 to 1.5 is usual
  spreadMm                 first to last, centre to centre: strings at the saddle, pins
  saddle
    lengthMm               along the slot
    blankMm                length and thickness (least, most), least height, finished height; null if the
                           saddle is too short for its strings
    topMm                  its top, along the slot and over the slot's floor at the middle, left to right, as
                           arcs: from, to, centre, radius, turn (-1 clockwise); null like blankMm
  numbers                  by field: saddle.angle (degrees), saddle.setback, saddle.depth, saddle.showing,
                           top.thickness, top.crownRadius (mm), each as
    value, by, solved      what goes into the part, whether it is solved or set, what the guitar asks for
  remarks[]                what to know of the fit before cutting, of all that check finds: id, severity
                           (error, warning, note), path (the field to look at), text

${FIT_NOTES.flatMap((note) => wrapText(note, 104)).join('\n')}

  --table                  tables for a terminal instead of JSON
  --help                   this`,
  ),
  async run(argv, io) {
    const { values, positionals } = readArguments(argv, { table: { type: 'boolean', default: false } });
    const made: DesignFit[] = [];
    const exit = await eachDesign(positionals, io, async (accepted) => {
      made.push(fitOf(accepted));
    });
    if (values.table) io.out(made.map(fitTable).join('\n\n'));
    else {
      const printed = positionals.length === 1 ? made[0] : made;
      if (printed !== undefined) io.out(`${JSON.stringify(printed, null, 2)}\n`);
    }
    return exit;
  },
};
