import { cutsByVolumeTable, type RunByVolume } from '#shared-core';
import { ToldTable } from '../figures/index.ts';

/** The cuts by the temperature, and what is in all of them together, in the words of the report. */
export function VolumeTable({ byVolume }: { readonly byVolume: RunByVolume }) {
  const table = cutsByVolumeTable(byVolume);
  if (table.rows.length === 0) return null;
  return (
    <div className="volume-cuts">
      <ToldTable table={table} />
    </div>
  );
}
