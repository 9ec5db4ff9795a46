import { type Caution, cautionGroups, cautionPlaces } from '#shared-core';

const placeNames: Readonly<Record<(typeof cautionPlaces)[number], string>> = {
  ferment: 'Ferment',
  prepare: 'Prepare',
  prompt: 'Prompts',
  calibrate: 'Calibration',
  debrief: 'Debrief',
  proof: 'Proof',
  report: 'Report',
  worksheet: 'Worksheets',
  pack: 'Pack',
};

/** Which caution is said where, as a page for people, from the list that every place is made from. */
export function cautionPlacesPage(): string {
  const places = Object.values(placeNames);
  return [
    '<!-- Made from the list in this folder by: npx tsx scripts/check-cautions.ts --write -->',
    '# Which caution is said where',
    '',
    'README.md and the page behind “Cautions” hold all of them; a ● says where else. Prepare confirms one by a tick.',
    '`test/renderer/window/cautions-by-place.test.tsx` draws or prints each place and compares it with the list.',
    '',
    ...cautionGroups.flatMap(({ title, cautions }) => [
      `## ${title}`,
      '',
      ...tableLines([['Caution', ...places], ...cautions.map(cautionCells)]),
      '',
    ]),
  ]
    .join('\n')
    .replace(/\n+$/, '\n');
}

function cautionCells({ act, places }: Caution): readonly string[] {
  return [act, ...cautionPlaces.map((place) => (places.includes(place) ? '●' : ''))];
}

/** In columns that also stand level as plain text: names to the left, marks in the middle. */
function tableLines(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, at) =>
    Math.max(...rows.map((row) => row[at]?.length ?? 0)),
  );
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const padded = (cell: string, at: number) => {
    const width = widths[at] ?? 0;
    const left = at === 0 ? 0 : Math.floor((width - cell.length) / 2);
    return `${' '.repeat(left)}${cell}`.padEnd(width);
  };
  const rule = widths.map((width, at) =>
    at === 0 ? '-'.repeat(width) : `:${'-'.repeat(width - 2)}:`,
  );
  const [head = '', ...body] = rows.map((row) => line(row.map(padded)));
  return [head, line(rule), ...body];
}
