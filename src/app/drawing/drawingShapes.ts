import type { Curves, Holes } from '../../../models/curves/curves.ts';
import type { DesignText } from '../../design/design.ts';
import { elevationShapes } from './elevationShapes.ts';
import { planShapes } from './planShapes.ts';
import { sectionShapes } from './sectionShapes.ts';
import type { Shape } from './shape.ts';
import { soundboardOf } from './soundboardOf.ts';

/** Every line of the drawing but its dimensions, mm, straight from the curves. */
export function drawingShapes(curves: Curves, text: DesignText, holes: Holes): readonly Shape[] {
  return [
    ...planShapes(curves, text),
    ...elevationShapes(curves, soundboardOf(text)),
    ...sectionShapes(curves, holes),
  ];
}
