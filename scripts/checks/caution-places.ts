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
      row(['Caution', ...places]),
      row(['---', ...places.map(() => ':-:')]),
      ...cautions.map(cautionRow),
      '',
    ]),
  ]
    .join('\n')
    .replace(/\n+$/, '\n');
}

function cautionRow({ act, places }: Caution): string {
  return row([act, ...cautionPlaces.map((place) => (places.includes(place) ? '●' : ''))]);
}

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
