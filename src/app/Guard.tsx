import { Component, type ReactNode } from 'react';

interface Props {
  /** What is lost when it fails: `The drawing`. */
  readonly what: string;
  /** A new value gives it another try. */
  readonly again: unknown;
  readonly children: ReactNode;
}

interface State {
  readonly error: Error | undefined;
  readonly again: unknown;
}

/** Keeps a fault in one part of the page from taking the whole bench, and the design on it, away. */
export class Guard extends Component<Props, State> {
  override state: State = { error: undefined, again: this.props.again };

  static getDerivedStateFromError(error: Error): Partial<State> {
    return { error };
  }

  static getDerivedStateFromProps({ again }: Props, state: State): State | null {
    return again === state.again ? null : { error: undefined, again };
  }

  override render(): ReactNode {
    const { error } = this.state;
    if (!error) return this.props.children;
    return (
      <div className="guard" role="alert">
        <p className="amiss">{this.props.what} failed: this is a fault of the program, not of your design.</p>
        <p>Your design is safe: undo the last change, or save it. The fault says: {error.message}</p>
      </div>
    );
  }
}
