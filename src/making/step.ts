import type { TemplateId } from '../sheets/templates/templateTitles.ts';
import type { CautionId } from '../trade/cautions.ts';
import type { Known } from '../trade/formula.ts';
import type { Tolerance } from '../trade/tolerances.ts';

/** How a setting is known: `set` is what the builder typed into the design or the workshop. */
export type SettingKnown = Known | 'set';

/** One number to set or to measure. */
export interface Setting {
  /** `step.name`, unique in a job and stable: measured values are kept under it. */
  readonly id: string;
  readonly label: string;
  readonly value: number;
  readonly unit: 'mm' | '°' | 'g' | '';
  readonly decimals: number;
  /** How it comes about; of what is set, by whom. */
  readonly formula: string;
  readonly known: SettingKnown;
  /** Undefined for what is only set, or only told. */
  readonly tolerance: Tolerance | undefined;
}

export type StepId =
  | 'blank'
  | 'thickness'
  | 'outline'
  | 'marking'
  | 'drilling'
  | 'slot'
  | 'underside'
  | 'crown'
  | 'wings'
  | 'edge'
  | 'bevel'
  | 'channels'
  | 'finishing'
  | 'reaming'
  | 'saddle'
  | 'check';

/** One step of the job by hand. */
export interface Step {
  readonly id: StepId;
  readonly title: string;
  /** What to do, a sentence or two an entry, in order. */
  readonly work: readonly string[];
  readonly settings: readonly Setting[];
  /** What to measure, and where. */
  readonly check: string;
  /** What can hurt here: said by `cautionFor`, with the timber's name. */
  readonly cautions: readonly CautionId[];
  readonly needs: readonly string[];
  /** The id of the sheet that it works from. */
  readonly template: TemplateId | undefined;
}

interface Said {
  readonly formula: string;
  readonly known?: SettingKnown;
  readonly tolerance?: Tolerance;
  readonly decimals?: number;
}

const setting =
  (unit: Setting['unit'], decimals: number) =>
  (id: string, label: string, value: number, said: Said): Setting => ({
    id,
    label,
    value,
    unit,
    decimals: said.decimals ?? decimals,
    formula: said.formula,
    known: said.known ?? 'derived',
    tolerance: said.tolerance,
  });

export const length = setting('mm', 2);
export const angle = setting('°', 2);
export const count = setting('', 0);
export const mass = setting('g', 1);

/** The ground of a number that is the design's own. */
export const AS_DESIGNED = { formula: 'as designed', known: 'set' } as const;
