import { groundText } from '../../making/groundText.ts';
import type { Setting } from '../../making/step.ts';
import { measure } from '../../report/said.ts';
import { toleranceText } from '../../trade/toleranceText.ts';
import type { Verdict } from './measuredIn.ts';

interface SettingLineProps {
  readonly setting: Setting;
  readonly measurable: boolean;
  /** The measured value as typed. */
  readonly typed: string;
  readonly verdict: Verdict | undefined;
  readonly onMeasure: (value: string) => void;
}

/** One number to set or to measure; its name opens to where it comes from. */
export function SettingLine({ setting, measurable, typed, verdict, onMeasure }: SettingLineProps) {
  const { id, label, value, unit, decimals, tolerance } = setting;
  return (
    <div className="setting" data-setting={id}>
      <details>
        <summary>{label}</summary>
        <p className="setting-ground">{groundText(setting)}</p>
      </details>
      <span className="wanted">{measure(value, unit, decimals)}</span>
      <span className="tolerance">{tolerance && toleranceText(tolerance)}</span>
      {measurable && (
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          placeholder="measured"
          aria-label={`Measured: ${label}`}
          aria-invalid={verdict?.ok === false}
          aria-describedby={`${id}-verdict`}
          value={typed}
          onChange={(event) => onMeasure(event.target.value)}
        />
      )}
      <p id={`${id}-verdict`} className={`verdict ${tone(verdict)}`} aria-live="polite">
        {verdict && (verdict.ok ? verdict.judgement.text : verdict.words)}
      </p>
    </div>
  );
}

function tone(verdict: Verdict | undefined): string {
  if (!verdict) return '';
  if (!verdict.ok || verdict.judgement.within === false) return 'amiss';
  return verdict.judgement.within ? 'well' : '';
}
