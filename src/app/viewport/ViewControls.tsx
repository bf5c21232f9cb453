import { SET_VIEWS, type SetView } from './pose.ts';

interface Props {
  /** Nothing to look at: the buttons wait. */
  readonly disabled: boolean;
  /** The set view that the camera stands at, if it does. */
  readonly seen: SetView | undefined;
  /** What stands at the ends of the bridge by the guitar's hand: toward −X and toward +X. */
  readonly ends: readonly [left: string, right: string];
  readonly onLook: (view: SetView) => void;
  readonly onFit: () => void;
  readonly parallel: boolean;
  readonly onParallel: (parallel: boolean) => void;
  readonly edges: boolean;
  readonly onEdges: (edges: boolean) => void;
  readonly cutting: boolean;
  readonly onCutting: (cutting: boolean) => void;
}

/** How the part is looked at: two short rows of buttons with words. */
export function ViewControls(props: Props) {
  return (
    <fieldset className="viewport-controls" aria-label="View" disabled={props.disabled}>
      <div className="viewport-group">
        {(Object.keys(SET_VIEWS) as SetView[]).map((view) => (
          <button
            type="button"
            key={view}
            aria-pressed={props.seen === view}
            onClick={() => props.onLook(view)}
          >
            {view === 'left end' ? props.ends[0] : view === 'right end' ? props.ends[1] : view}
          </button>
        ))}
      </div>
      <div className="viewport-group">
        <button type="button" onClick={props.onFit} title="All of it in the middle of the view">
          Whole part
        </button>
        <Toggle
          on={props.parallel}
          onChange={props.onParallel}
          title="No perspective: equal lengths look equal"
        >
          Parallel
        </Toggle>
        <Toggle on={props.edges} onChange={props.onEdges} title="Lines along the edges">
          Edges
        </Toggle>
        <Toggle on={props.cutting} onChange={props.onCutting} title="Cut the part open">
          Section
        </Toggle>
      </div>
    </fieldset>
  );
}

interface ToggleProps {
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly title: string;
  readonly children: string;
}

function Toggle({ on, onChange, title, children }: ToggleProps) {
  return (
    <button type="button" aria-pressed={on} title={title} onClick={() => onChange(!on)}>
      {children}
    </button>
  );
}
