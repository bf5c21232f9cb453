import type { ReactNode } from 'react';
import { given, mend, type Problem } from '../../design/problem.ts';
import type { OrderText } from '../store/state.ts';

interface OrderInput {
  readonly id: string;
  readonly 'aria-invalid': boolean;
  readonly 'aria-describedby': string;
}

interface OrderFieldProps {
  readonly name: keyof OrderText;
  readonly label: string;
  /** Of the whole order. */
  readonly problems: readonly Problem[];
  readonly children: (input: OrderInput) => ReactNode;
}

/** One question of an order, with what is wrong with its answer. */
export function OrderField({ name, label, problems, children }: OrderFieldProps) {
  const id = `order-${name}`;
  const own = problems.filter(({ path }) => path === `order.${name}`);
  return (
    <div className={`order-field ${name}`}>
      <label htmlFor={id}>{label}</label>
      {children({ id, 'aria-invalid': own.length > 0, 'aria-describedby': `${id}-problem` })}
      <p id={`${id}-problem`} className="amiss" aria-live="polite">
        {own
          .map((problem) => (problem.value === 'NaN' ? mend(problem) : `${given(problem)}: ${mend(problem)}`))
          .join(' ')}
      </p>
    </div>
  );
}
