import { type DocumentTable, inDecimals, told } from '#shared-core';
import { StackingTable } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';

/** A table of the report in the words and decimals of the reader; on a narrow screen row by row. */
export function ToldTable({
  table: { caption, columns, rows },
}: {
  readonly table: DocumentTable;
}) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const [corner, ...others] = columns;
  return (
    <StackingTable
      name={told(caption)}
      isNameShown
      isTerse
      corner={told(corner?.title ?? '')}
      columns={others.map(({ title }, place) => ({
        key: `${place} ${title}`,
        title: told(title),
        label: told(title),
      }))}
      rows={rows.map(([name = '', ...cells]) => ({
        name: told(name),
        cells: cells.map((cell) => inDecimals(told(cell), decimal)),
      }))}
    />
  );
}
