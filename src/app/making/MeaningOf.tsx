import { useMemo } from 'react';
import type { MeaningTable, Measured } from '../../making/meaning.ts';
import { whatItMeans } from '../../making/whatItMeans.ts';
import type { Workshop } from '../../making/workshop.ts';
import type { Accepted } from '../store/judge.ts';

interface MeaningOfProps {
  readonly accepted: Accepted;
  readonly workshop: Workshop;
  readonly measured: Measured;
}

/** What the measured values mean for action, intonation and strength. */
export function MeaningOf({ accepted, workshop, measured }: MeaningOfProps) {
  const meaning = useMemo(() => whatItMeans(accepted, workshop, measured), [accepted, workshop, measured]);
  return (
    <section className="meaning" aria-live="polite">
      <h2>What the measured values mean</h2>
      {meaning.text.length === 0 && (
        <p className="soft">Nothing is measured yet: type what you measured beside its number.</p>
      )}
      {meaning.text.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {meaning.tables.map((one) => (
        <StringTable key={one.title} {...one} />
      ))}
    </section>
  );
}

function StringTable({ title, head, rows }: MeaningTable) {
  return (
    <table className="meaning-table">
      <caption>{title}</caption>
      <thead>
        <tr>
          {head.map((one) => (
            <th key={one} scope="col">
              {one}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...figures]) => (
          // two strings may have the same note
          <tr key={`${name} ${figures.join(' ')}`}>
            <th scope="row">{name}</th>
            {figures.map((figure, column) => (
              <td key={head[column + 1]}>{figure}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
