import type { Pen } from './mark.ts';

export interface KeyItem {
  readonly pen: Pen;
  readonly shape?: 'line' | 'ring' | 'dot';
  readonly words: string;
}

/** What the lines of a picture are, under it. */
export function Key({ items }: { items: readonly KeyItem[] }) {
  return (
    <ul className="picture-key">
      {items.map(({ pen, shape = 'line', words }) => (
        <li key={words}>
          <svg width="20" height="10" aria-hidden="true">
            {shape === 'line' ? (
              <path className={`picture-line ${pen} fill-none`} d="M0 5H20" />
            ) : (
              <circle className={`picture-${shape} ${pen}`} cx="10" cy="5" r={shape === 'dot' ? 2.6 : 4} />
            )}
          </svg>
          {words}
        </li>
      ))}
    </ul>
  );
}
