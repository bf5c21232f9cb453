import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { isMeasured } from '../making/isMeasured.ts';
import { jobByHand } from '../making/jobByHand.ts';
import { type Judgement, judgeMeasured } from '../making/judgeMeasured.ts';
import { madeUp } from '../making/madeUp.ts';
import type { Meaning } from '../making/meaning.ts';
import { readMeasured } from '../making/readMeasured.ts';
import type { Setting, Step } from '../making/step.ts';
import { whatItMeans } from '../making/whatItMeans.ts';
import type { Workshop } from '../making/workshop.ts';
import { fingerprint } from '../sheets/fingerprint.ts';
import { type Caution, cautionFor } from '../trade/cautions.ts';
import type { Tolerance } from '../trade/tolerances.ts';

/** A setting as `steps` prints it. */
export interface SettingSteps extends Omit<Setting, 'tolerance'> {
  readonly tolerance: Tolerance | null;
  /** Whether it is one to measure. */
  readonly measure: boolean;
  readonly measured: number | null;
  readonly judgement: (Omit<Judgement, 'within'> & { readonly within: boolean | null }) | null;
}

/** The job by hand as `steps` prints it. */
export interface DesignSteps {
  readonly name: string;
  readonly fingerprint: string;
  readonly workshop: Workshop;
  readonly steps: readonly (Omit<Step, 'settings' | 'cautions' | 'template'> & {
    readonly settings: readonly SettingSteps[];
    readonly cautions: readonly Caution[];
    readonly template: Step['template'] | null;
  })[];
  /** What the measured values mean; null when none are given. */
  readonly meaning: (Omit<Meaning, 'density'> & { readonly density: number | null }) | null;
}

/**
 * The steps of a design in a workshop, with measured values judged. Throws `DesignError` when the cutter is too wide or a
 * measured value is none.
 *
 * @param json measured values by the id of their setting; undefined for none
 */
export function stepsOf(accepted: AcceptedDesign, workshop: Workshop, json: unknown): DesignSteps {
  const designed = jobByHand(accepted, workshop);
  const measured = json === undefined ? undefined : readMeasured(json, designed);
  const steps = madeUp(designed, accepted, measured ?? {});
  const settingOf = (setting: Setting, step: Step): SettingSteps => {
    const value = measured?.[setting.id];
    const judged = value === undefined ? undefined : judgeMeasured(setting, value);
    return {
      ...setting,
      tolerance: setting.tolerance ?? null,
      measure: isMeasured(setting, step),
      measured: value ?? null,
      judgement: judged ? { ...judged, within: judged.within ?? null } : null,
    };
  };
  const meaning = measured && whatItMeans(accepted, workshop, measured);
  return {
    name: accepted.design.guitar.name,
    fingerprint: fingerprint(accepted.text),
    workshop,
    steps: steps.map((step) => ({
      ...step,
      settings: step.settings.map((setting) => settingOf(setting, step)),
      cautions: step.cautions.map((id) => cautionFor(id, accepted.design.timber.name)),
      template: step.template ?? null,
    })),
    meaning: meaning ? { ...meaning, density: meaning.density ?? null } : null,
  };
}
