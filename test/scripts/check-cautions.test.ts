import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { cautionsProblem, placesProblem } from '../../scripts/check-cautions.ts';
import { readmeCautions } from '../../scripts/checks/readme-cautions.ts';
import { cautionPlaces } from '../../shared-core/cautions/caution.ts';
import { cautions } from '../../shared-core/cautions/cautions.ts';

const readme = readFileSync(path.join(import.meta.dirname, '..', '..', 'README.md'), 'utf8');

test('README.md says every caution of the list, and no other', () => {
  expect(cautionsProblem(readme)).toBeNull();
  const said = readmeCautions().replaceAll(/\s+/g, ' ');
  expect(cautions.filter(({ act, because }) => !said.includes(`**${act}** ${because}`))).toEqual(
    [],
  );
  expect(said.match(/- \*\*/g)).toHaveLength(cautions.length);
});

test('a caution struck out, changed or added by hand is found', () => {
  const [first = ''] = readmeCautions().match(/- \*\*.*/) ?? [];
  expect([
    cautionsProblem(readme.replace(first, '')),
    cautionsProblem(readme.replace('Steam burns.', 'Steam is warm.')),
    cautionsProblem(readme.replace(first, `- One more.\n${first}`)),
    cautionsProblem(readme.replace(/<!-- Made[^>]*-->/, '')),
  ]).not.toContain(null);
});

const placesFile = path.join(import.meta.dirname, '../../shared-core/cautions/PLACES.md');
const placesPage = readFileSync(placesFile, 'utf8');

test('the table of cautions and places has a row for each caution, with a mark where the list says it is said', () => {
  expect(placesProblem(placesPage)).toBeNull();
  const rows = placesPage.split('\n').filter((line) => /^\| (?!Caution |--)/.test(line));
  const marked = rows.map((line) => {
    const [act, ...cells] = line.split('|').slice(1, -1);
    return [act?.trim(), cautionPlaces.filter((_, index) => cells[index]?.trim() === '●')];
  });
  expect(marked).toEqual(
    cautions.map(({ act, places }) => [act, cautionPlaces.filter((one) => places.includes(one))]),
  );
});

test('a mark set or taken away by hand is found', () => {
  expect([
    placesProblem(placesPage.replace('●', '')),
    placesProblem(placesPage.replace(/\| {9}\|/, '|    ●    |')),
  ]).not.toContain(null);
});
