import type { ReactNode } from 'react';

export interface StackingColumn {
  readonly key: string;
  readonly title: ReactNode;
  /** Stands at each cell where the table is stacked; the title, said briefly. */
  readonly label: string;
  /** Sentences take a line of their own where the table is stacked. */
  readonly isSentence?: boolean;
}

export interface StackingRow {
  readonly name: string;
  readonly cells: readonly ReactNode[];
  /** Positions of cells that differ from what they are compared with. */
  readonly different?: readonly number[];
}

interface StackingTableProps {
  readonly name: string;
  /** Whether everybody sees the name, or only those who hear the table. */
  readonly isNameShown?: boolean;
  /** Above the names of the rows. */
  readonly corner: string;
  readonly columns: readonly StackingColumn[];
  readonly rows: readonly StackingRow[];
  /** Cells of a few figures: the table keeps its columns on a phone. */
  readonly isTerse?: boolean;
  /** Where the titles say more than the labels, they stay above the stacked rows. */
  readonly hasLegend?: boolean;
}

/** More columns than this need more than half a window. */
const mostBesideOthers = 5;

/** A table whose rows become blocks where it has not the width for its columns: nothing has to be scrolled sideways. */
export function StackingTable(props: StackingTableProps) {
  const { name, isNameShown = false, corner, columns, rows, hasLegend = false } = props;
  const isMany = columns.length > mostBesideOthers;
  return (
    <div className="stacking" data-columns={isMany ? 'many' : props.isTerse ? 'short' : 'some'}>
      <table className="numbers" data-legend={hasLegend}>
        <caption className={isNameShown ? undefined : 'unseen'}>{name}</caption>
        <thead>
          <tr>
            {corner === '' ? <td /> : <th scope="col">{corner}</th>}
            {columns.map(({ key, title }) => (
              <th key={key} scope="col">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name: rowName, cells, different = [] }) => (
            <tr key={rowName}>
              <th scope="row">{rowName}</th>
              {columns.map(({ key, label, isSentence = false }, index) => (
                <td
                  key={key}
                  className={isSentence ? 'sentence-cell' : 'number'}
                  data-label={label}
                  data-different={different.includes(index)}
                >
                  {cells[index]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
