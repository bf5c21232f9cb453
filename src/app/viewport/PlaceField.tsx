import { useState } from 'react';
import { readQuantity } from '../../design/quantity.ts';
import { fixed } from '../../report/said.ts';

interface Props {
  /** mm */
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** From where it is measured, as it follows `3 mm`. */
  readonly from: string;
  readonly onChange: (value: number) => void;
}

/** The place of a cut, shown and typed: in mm, or with a unit such as `1/2 in`. Held within the part. */
export function PlaceField({ value, min, max, from, onChange }: Props) {
  const [typed, setTyped] = useState<string>();
  const take = () => {
    if (typed === undefined) return;
    const read = readQuantity(typed, 'length');
    if (read.ok) onChange(Math.min(max, Math.max(min, read.value)));
    setTyped(undefined);
  };
  return (
    <label className="viewport-place">
      <input
        type="text"
        inputMode="decimal"
        aria-label={`Place of the cut, mm ${from}`}
        value={typed ?? fixed(value, 2)}
        onChange={(event) => setTyped(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') setTyped(undefined);
        }}
      />
      <span>mm {from}</span>
    </label>
  );
}
