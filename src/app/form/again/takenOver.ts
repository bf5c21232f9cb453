import type { DesignText } from '../../../design/design.ts';
import type { MeasuredAgain } from '../../../trade/fit/measuredAgain.ts';
import { entryAt } from '../strings/stringLists.ts';

/**
 * The design with corrected set-backs as its measured ones, to a hundredth of a millimetre, and the cents that they came
 * from cleared: they have been heard. Strings without a corrected one stay as they are.
 */
export function withSetbacksTaken(
  text: DesignText,
  { setbacks }: Pick<MeasuredAgain, 'setbacks'>,
): DesignText {
  const { strings, action } = text;
  const length = Math.max(setbacks.length, lengthOf(strings.setbacks), lengthOf(action.cents));
  const all = Array.from({ length }, (_, i) => i);
  return {
    ...text,
    strings: {
      ...strings,
      setbacks: all.map((i) => hundredths(setbacks[i]) ?? entryAt(strings.setbacks, i)),
    },
    action: {
      ...action,
      cents: all.map((i) => (setbacks[i] === undefined ? entryAt(action.cents, i) : '')),
    },
  };
}

/** The design with the saddle showing this much more (mm; less is negative), and the action it came from cleared. */
export function withShowingTaken(text: DesignText, showing: number, change: number): DesignText {
  return {
    ...text,
    saddle: { ...text.saddle, showing: hundredths(showing + change) ?? showing },
    action: { ...text.action, measured: ['', ''] },
  };
}

function hundredths(mm: number | undefined): number | undefined {
  return mm === undefined ? undefined : Math.round(mm * 100) / 100;
}

function lengthOf(typed: unknown): number {
  return Array.isArray(typed) ? typed.length : 0;
}
