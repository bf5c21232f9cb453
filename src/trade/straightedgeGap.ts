/**
 * Gap between a straightedge laid on the frets along the centre line and a place of the bridge's top, mm: negative when
 * the straightedge would meet wood below the top's edge. About 0–1.5 is common practice. On the slot's line it
 * is p − thickness; elsewhere the frets' plane has risen by y·tan θ less.
 *
 * @param fretPlane p at the saddle line (see `fretPlaneHeight`), mm
 * @param neckAngle of the frets' plane to the glue plane, degrees, positive when it rises toward the bridge
 * @param y of the place, mm toward the nut from the slot's line
 * @param top z of the bridge's top there, mm
 */
export function straightedgeGap(fretPlane: number, neckAngle: number, y: number, top: number): number {
  return fretPlane - y * Math.tan((neckAngle * Math.PI) / 180) - top;
}
