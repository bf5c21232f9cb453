interface TabsProps<Name extends string> {
  readonly label: string;
  /** Id of the panel that they turn. */
  readonly panel: string;
  readonly front: Name;
  /** Words by name, in their order. */
  readonly tabs: Readonly<Record<Name, string>>;
  onTurn(name: Name): void;
}

/** Tabs over a panel, walked with the arrow keys. A tab's id is `tab-` and its name. */
export function Tabs<Name extends string>({ label, panel, front, tabs, onTurn }: TabsProps<Name>) {
  const names = Object.keys(tabs) as Name[];
  const turnBy = (by: number) => {
    const next = names[(names.indexOf(front) + by + names.length) % names.length];
    if (next === undefined) return;
    onTurn(next);
    document.getElementById(`tab-${next}`)?.focus();
  };
  return (
    <div className="tabs" role="tablist" aria-label={label}>
      {names.map((name) => (
        <button
          key={name}
          type="button"
          role="tab"
          id={`tab-${name}`}
          aria-selected={name === front}
          aria-controls={panel}
          tabIndex={name === front ? 0 : -1}
          onClick={() => onTurn(name)}
          onKeyDown={(event) => {
            if (event.key === 'ArrowRight') turnBy(1);
            if (event.key === 'ArrowLeft') turnBy(-1);
          }}
        >
          {tabs[name]}
        </button>
      ))}
    </div>
  );
}
