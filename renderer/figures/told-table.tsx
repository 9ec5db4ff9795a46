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
  const said = rows.map((row) => row.map((cell) => inDecimals(told(cell), decimal)));
  return (
    <StackingTable
      name={told(caption)}
      isNameShown
      isTerse={
        unbrokenBeside(
          columns.map(({ title }) => told(title)),
          said,
        ) <= mostUnbrokenBeside
      }
      corner={told(corner?.title ?? '')}
      columns={others.map(({ title }, place) => ({
        key: `${place} ${title}`,
        title: told(title),
        label: told(title),
      }))}
      rows={said.map(([name = '', ...cells]) => ({ name, cells }))}
    />
  );
}

/** More characters than this are wider than a phone where no line may break between them; 40 were, by 8 px. */
const mostUnbrokenBeside = 36;

/** How many characters stand side by side at least: each column is as wide as the longest of its words and figures. */
function unbrokenBeside(titles: readonly string[], rows: readonly (readonly string[])[]): number {
  return titles.reduce((sum, title, column) => {
    const texts = [title, ...rows.map((row) => row[column] ?? '')];
    return sum + Math.max(...texts.flatMap((text) => text.split(' ')).map(({ length }) => length));
  }, 0);
}
