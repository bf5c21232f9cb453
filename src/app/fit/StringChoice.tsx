import type { TunedString } from '../../trade/fit/tunedStrings.ts';

interface StringChoiceProps {
  readonly strings: readonly TunedString[];
  readonly shown: number;
  onChoose(i: number): void;
}

/** More strings than this are told by their numbers alone: courses have two strings of one note. */
const BY_NOTE = 7;

/** Which string the pictures show: one row of choices, walked with the arrow keys. */
export function StringChoice({ strings, shown, onChoose }: StringChoiceProps) {
  return (
    <fieldset className="segments fit-strings">
      <legend className="unseen">String shown</legend>
      {strings.map(({ note, x }, i) => (
        <label key={x}>
          <input
            type="radio"
            name="fit-string"
            checked={i === shown}
            aria-label={`String ${i + 1}, ${note}`}
            onChange={() => onChoose(i)}
          />
          <span aria-hidden="true">{strings.length > BY_NOTE ? i + 1 : note}</span>
        </label>
      ))}
    </fieldset>
  );
}
