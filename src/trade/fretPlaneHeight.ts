const RADIANS = Math.PI / 180;

/** How the height of the frets' plane over the soundboard at the bridge is known. Millimetres and degrees. */
export type FretPlane =
  /** A straightedge on the frets, bridge off: its underside over the soundboard at the saddle line. */
  | { readonly by: 'straightedge'; readonly overSoundboard: number }
  /** From how the neck is set. */
  | {
      readonly by: 'neck';
      /** z_b: fret tops over the rim's plane at the joint: fretboard, fret and whatever lies under them. */
      readonly overJoint: number;
      /** x_b: nut to the joint. */
      readonly jointFromNut: number;
      /** S: nut to the saddle line. */
      readonly saddleFromNut: number;
      /** θ: positive when the frets' plane rises toward the bridge. */
      readonly neckAngle: number;
      /** How much higher than at the joint the soundboard stands at the bridge. */
      readonly domeRise: number;
    };

/**
 * p: height of the plane of the fret tops over the glue plane at the saddle line, on the centre line, mm.
 * `frets-plane`: p = z_b + (S − x_b)·tan θ − dome rise; derived, similar triangles.
 */
export function fretPlaneHeight(known: FretPlane): number {
  if (known.by === 'straightedge') return known.overSoundboard;
  const beyond = known.saddleFromNut - known.jointFromNut;
  return known.overJoint + beyond * Math.tan(known.neckAngle * RADIANS) - known.domeRise;
}
