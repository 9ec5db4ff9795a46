import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { cautionsProblem } from '../../scripts/check-cautions.ts';
import { readmeCautions } from '../../scripts/checks/readme-cautions.ts';
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
