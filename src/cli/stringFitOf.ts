import type { AcceptedDesign } from '../design/acceptDesign.ts';
import type { FitReport } from '../trade/fit/fitReport.ts';

/** Cents at frets 1 to 12: uncompensated, on the slot's middle, and with the crown as filed. */
export interface CentsByFret {
  readonly bare: readonly number[];
  readonly onSlot: readonly number[];
  readonly filed: readonly number[];
}

/** What `fit` prints of one string: mm, N, GPa, cents and degrees; null where there is no such number. */
export interface StringFit {
  readonly note: string;
  readonly frequencyHz: number;
  readonly diameterMm: number;
  readonly coreMm: number;
  readonly massGM: number;
  readonly tensionN: number;
  /** In the core. */
  readonly stressGPa: number;
  readonly inharmonicity: number;
  readonly xMm: number;
  readonly setbackMm: number;
  readonly measured: boolean;
  readonly nutSetbackMm: number;
  readonly onSlotMm: number;
  readonly residualMm: number;
  readonly filedMm: number;
  readonly filable: boolean;
  readonly residualCents12: number;
  readonly cents: CentsByFret;
  readonly heightOverTopMm: number;
  readonly saddleShowingMm: number;
  readonly saddleInSlotMm: number;
  readonly breakAngleDeg: number | null;
  readonly straightToPin: boolean;
  readonly sideAngleDeg: number;
  readonly saddleDownN: number | null;
  readonly saddleForwardN: number | null;
  readonly correctedSetbackMm: number | null;
  readonly saddleChangeMm: number | null;
}

/** What `fit` prints of the i-th string, treble first. */
export function stringFitOf({ fit }: Pick<AcceptedDesign, 'fit'>, report: FitReport, i: number): StringFit {
  const string = at(fit.strings, i);
  const wanted = at(fit.slot.wanted, i);
  const residual = at(fit.slot.residuals, i);
  const crown = at(report.crowns, i);
  const stand = at(report.saddle.stands, i);
  const bent = at(report.breaks, i);
  return {
    note: string.note,
    frequencyHz: string.frequencyHz,
    diameterMm: string.spec.diameterMm,
    coreMm: string.spec.coreMm,
    massGM: string.massKgM * 1000,
    tensionN: string.tensionN,
    stressGPa: string.stressPa / 1e9,
    inharmonicity: string.inharmonicity,
    xMm: string.x,
    setbackMm: wanted.saddleMm,
    measured: wanted.measured,
    nutSetbackMm: wanted.nutMm,
    onSlotMm: residual.onSlotMm,
    residualMm: residual.residualMm,
    filedMm: crown.filed,
    filable: residual.filable,
    residualCents12: residual.cents12,
    cents: crown.cents,
    heightOverTopMm: crown.height,
    saddleShowingMm: stand.showing,
    saddleInSlotMm: stand.inSlot,
    breakAngleDeg: bent.over?.angle ?? null,
    straightToPin: bent.over?.straight ?? false,
    sideAngleDeg: bent.side,
    saddleDownN: bent.load?.down ?? null,
    saddleForwardN: bent.load?.forward ?? null,
    correctedSetbackMm: report.measured.setbacks[i] ?? null,
    saddleChangeMm: report.measured.saddles[i]?.change ?? null,
  };
}

function at<T>(list: readonly T[], i: number): T {
  const found = list[i];
  if (found === undefined) throw new Error(`string ${i + 1} is missing from the fit`);
  return found;
}
