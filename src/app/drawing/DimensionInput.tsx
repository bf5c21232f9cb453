import { useLayoutEffect, useRef, useState } from 'react';
import type { FieldText } from './fieldText.ts';
import { type Label, labelWidth } from './label.ts';
import type { Size } from './placeViews.ts';

/** Narrower than this, px, a number can't be typed in comfort. */
const LEAST_WIDTH = 56;
const HEIGHT = 24;
/** How near to the drawing's sides the input may come, px. */
const INSET = 4;

interface DimensionInputProps {
  readonly label: Label;
  readonly text: FieldText;
  readonly size: Size;
  onEnter(typed: string): void;
  onEscape(): void;
  /** The caret went elsewhere; `typed` is undefined when it left the text as it was. */
  onLeave(typed: string | undefined): void;
}

/** The input that stands over a dimension while it is typed anew. Enter or leaving keeps it, Escape does not. */
export function DimensionInput({ label, text, size, onEnter, onEscape, onLeave }: DimensionInputProps) {
  const [typed, setTyped] = useState(text.typed);
  const input = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => input.current?.select(), []);
  // an answered input loses the caret as it goes, which is no second answer
  const answered = useRef(false);
  const answer = (say: () => void) => {
    if (answered.current) return;
    answered.current = true;
    say();
  };
  const width = Math.min(size.width - 2 * INSET, Math.max(LEAST_WIDTH, labelWidth(text.typed) + 16));
  const within = (at: number, most: number) => Math.min(most - INSET, Math.max(INSET, at));
  return (
    <input
      ref={input}
      className="drawing-input"
      type="text"
      inputMode="decimal"
      autoComplete="off"
      spellCheck={false}
      aria-label={text.label}
      value={typed}
      style={{
        left: within(label.middle[0] - width / 2, size.width - width),
        top: within(label.middle[1] - HEIGHT / 2, size.height - HEIGHT),
        width,
        height: HEIGHT,
      }}
      onChange={(event) => setTyped(event.target.value)}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== 'Escape') return;
        // the page's own Escape lets go of the field
        event.preventDefault();
        if (event.key === 'Enter') answer(() => onEnter(typed.trim()));
        else answer(onEscape);
      }}
      onBlur={() => answer(() => onLeave(typed === text.typed ? undefined : typed.trim()))}
    />
  );
}
