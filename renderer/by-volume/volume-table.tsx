import { cutsByVolumeTable, inDecimals, type RunByVolume, told } from '#shared-core';
import { usePreferences } from '../parts/index.ts';

/** The cuts by the temperature, and what is in all of them together, in the words of the report. */
export function VolumeTable({ byVolume }: { readonly byVolume: RunByVolume }) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { caption, columns, rows } = cutsByVolumeTable(byVolume);
  if (rows.length === 0) return null;
  return (
    <table className="numbers volume-cuts">
      <caption>{told(caption)}</caption>
      <thead>
        <tr>
          {columns.map(({ title }) => (
            <th key={title} scope="col">
              {told(title)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name = '', ...cells]) => (
          <tr key={name}>
            <th scope="row">{told(name)}</th>
            {cells.map((cell, place) => (
              <td key={columns[place + 1]?.title} className="number">
                {inDecimals(told(cell), decimal)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
