import type { Chain } from '../../models/curves/segment.ts';
import type { AcceptedDesign } from '../design/acceptDesign.ts';
import type { Finding } from '../report/findings/finding.ts';
import { findings } from '../report/findings/findings.ts';
import { judgedOf } from '../report/findings/judgedOf.ts';
import { type FitReport, fitReport } from '../trade/fit/fitReport.ts';
import type { Fit, SolvablePath } from '../trade/fit/placeDesign.ts';
import type { SaddleBlank } from '../trade/saddleBlank.ts';
import type { SlotLine } from '../trade/slotLine.ts';
import { straightedgeGap } from '../trade/straightedgeGap.ts';
import { stringSpread } from '../trade/stringSpread.ts';
import { type StringFit, stringFitOf } from './stringFitOf.ts';

/** A distance at the first string, on the guitar's centre line and at the last string, mm. */
export interface Across {
  readonly treble: number;
  readonly centre: number;
  readonly bass: number;
}

/** A number that follows from the guitar or is set by hand. mm, or degrees for the slot's angle. */
export interface NumberFit {
  /** As it goes into the part. */
  readonly value: number;
  readonly by: 'solved' | 'set';
  /** What the guitar asks for, the other numbers being as they are. */
  readonly solved: number;
}

/** What `fit` prints of one design. Its help says what every key is. */
export interface DesignFit {
  readonly name: string;
  readonly hand: 'right' | 'left';
  readonly scaleMm: number;
  readonly slot: {
    readonly angleDeg: number;
    readonly setbackMm: Across;
    readonly nutToSlotMm: Across;
    readonly firmEnds: number;
    /** With ends that clamp least, α = 1. */
    readonly least: { readonly angleDeg: number; readonly setbackMm: Across };
  };
  readonly strings: readonly StringFit[];
  readonly totalTensionN: number;
  readonly thicknessMm: number;
  readonly crownRadiusMm: number;
  readonly fretPlaneMm: number;
  /** Between a straightedge on the frets and the bridge's top, at the slot's middle. */
  readonly straightedgeGapMm: number;
  readonly spreadMm: { readonly saddle: number; readonly pins: number };
  readonly saddle: {
    readonly lengthMm: number;
    /** Null when the saddle is too short for its strings. */
    readonly blankMm: SaddleBlank | null;
    readonly topMm: Chain | null;
  };
  readonly numbers: Readonly<Record<SolvablePath, NumberFit>>;
  /** What the rules of the fit find, errors first. */
  readonly remarks: readonly Pick<Finding, 'id' | 'severity' | 'path' | 'text'>[];
}

/** How a design fits its guitar, from its curves alone. */
export function fitOf(accepted: AcceptedDesign): DesignFit {
  const { design, curves, fit } = accepted;
  const report = fitReport(design, curves, fit);
  const { guitar, saddle } = design;
  const { line, least } = fit.slot;
  const setbackMm = across(line);
  return {
    name: guitar.name,
    hand: guitar.hand,
    scaleMm: guitar.scale,
    slot: {
      angleDeg: line.angleDeg,
      setbackMm,
      nutToSlotMm: {
        treble: guitar.scale + setbackMm.treble,
        centre: guitar.scale + setbackMm.centre,
        bass: guitar.scale + setbackMm.bass,
      },
      firmEnds: saddle.firmEnds,
      least: { angleDeg: least.angleDeg, setbackMm: across(least) },
    },
    strings: fit.strings.map((_, i) => stringFitOf({ fit }, report, i)),
    totalTensionN: fit.strings.reduce((sum, { tensionN }) => sum + tensionN, 0),
    thicknessMm: curves.profile.thickness,
    crownRadiusMm: curves.profile.crownRadius,
    fretPlaneMm: fit.height.fretPlane,
    straightedgeGapMm: straightedgeGap(fit.height.fretPlane, 0, 0, curves.profile.thickness),
    spreadMm: {
      saddle: stringSpread(fit.strings.map(({ x }) => [x, 0])).overall,
      pins: stringSpread(curves.pins.map(({ at }) => at)).overall,
    },
    saddle: saddleOf(report),
    numbers: numbersOf(fit),
    remarks: findings(judgedOf(accepted, report), 'fit').map(({ id, severity, path, text }) => ({
      id,
      severity,
      path,
      text,
    })),
  };
}

const across = ({ trebleMm, centreMm, bassMm }: SlotLine): Across => ({
  treble: trebleMm,
  centre: centreMm,
  bass: bassMm,
});

function saddleOf({ saddle }: FitReport): DesignFit['saddle'] {
  return { lengthMm: saddle.length, blankMm: saddle.blank ?? null, topMm: saddle.top ?? null };
}

function numbersOf({ solved }: Fit): DesignFit['numbers'] {
  const number = (path: SolvablePath): NumberFit => {
    const { used, by, solved: asked } = solved[path];
    return { value: used, by, solved: asked };
  };
  return {
    'saddle.angle': number('saddle.angle'),
    'saddle.setback': number('saddle.setback'),
    'saddle.depth': number('saddle.depth'),
    'saddle.showing': number('saddle.showing'),
    'top.thickness': number('top.thickness'),
    'top.crownRadius': number('top.crownRadius'),
  };
}
