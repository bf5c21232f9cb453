import { isMeasured } from '../../making/isMeasured.ts';
import type { Step } from '../../making/step.ts';
import type { CautionId } from '../../trade/cautions.ts';
import type { Verdict } from './measuredIn.ts';
import { SettingLine } from './SettingLine.tsx';
import { StepCautions } from './StepCautions.tsx';
import { TemplateLink } from './TemplateLink.tsx';

interface StepItemProps {
  readonly step: Step;
  readonly number: number;
  readonly timber: string;
  /** Cautions that come up here for the first time. */
  readonly inFull: readonly CautionId[];
  readonly ticked: boolean;
  readonly measured: Readonly<Record<string, string>>;
  readonly verdicts: ReadonlyMap<string, Verdict>;
  readonly onTick: (ticked: boolean) => void;
  readonly onMeasure: (id: string, value: string) => void;
}

/** One step of the job: its tick, what can hurt, what to do, what to set and what was measured. */
export function StepItem(props: StepItemProps) {
  const { step, number, timber, inFull, ticked, measured, verdicts, onTick, onMeasure } = props;
  return (
    <li className={ticked ? 'step done' : 'step'} data-step={step.id}>
      <h3>
        <label>
          <input
            className="step-tick"
            type="checkbox"
            checked={ticked}
            onChange={(event) => onTick(event.target.checked)}
          />
          {number}. {step.title}
        </label>
        {step.template && <TemplateLink template={step.template} />}
      </h3>
      <StepCautions cautions={step.cautions} inFull={inFull} timber={timber} />
      <p className="needs">Needs: {step.needs.join(', ')}.</p>
      {step.work.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {step.settings.length > 0 && (
        <div className="settings">
          {step.settings.map((setting) => (
            <SettingLine
              key={setting.id}
              setting={setting}
              measurable={isMeasured(setting, step)}
              typed={measured[setting.id] ?? ''}
              verdict={verdicts.get(setting.id)}
              onMeasure={(value) => onMeasure(setting.id, value)}
            />
          ))}
        </div>
      )}
      <p className="check">
        <b>Check:</b> {step.check}
      </p>
    </li>
  );
}
