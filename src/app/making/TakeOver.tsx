import type { Bench } from '../store/state.ts';

interface TakeOverProps {
  readonly fingerprint: string;
  readonly bench: Bench;
  readonly onTake: () => void;
}

/** What was ticked and measured for an earlier design, offered to one that has nothing yet. */
export function TakeOver({ fingerprint, bench, onTake }: TakeOverProps) {
  const values = Object.keys(bench.measured).length;
  const day = new Date(bench.at).toLocaleDateString('en-GB', { day: 'numeric', month: 'long' });
  return (
    <p className="take-over">
      Design {fingerprint}, “{bench.name}”, has {counted(bench.ticked.length, 'step')} done and{' '}
      {counted(values, 'value')} measured, last on {day}. Was that this bridge, before you changed the design?{' '}
      <button type="button" className="link" onClick={onTake}>
        Take them over
      </button>
    </p>
  );
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}
