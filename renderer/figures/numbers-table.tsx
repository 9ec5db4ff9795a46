import { say } from '#shared-core';

interface NumbersTableProps {
  readonly title: string;
  readonly rows: readonly (readonly [name: string, value: string])[];
}

/** The drawing once more as a table, for those who hear it or want the figures. */
export function NumbersTable({ title, rows }: NumbersTableProps) {
  return (
    <details className="why">
      <summary>{say('The numbers')}</summary>
      <table className="numbers">
        <caption className="unseen">{title}</caption>
        <tbody>
          {rows.map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td className="number">{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
