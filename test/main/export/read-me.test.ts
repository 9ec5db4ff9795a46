import { expect, test } from 'vitest';
import { cautionsAt, cautionWords, defaultRunSettings, studyRun } from '#shared-core';
import { distillationPackKind } from '../../../main/export/pack/distillation-pack-kind.ts';
import { readMe } from '../../../main/export/pack/read-me.ts';
import { cautions } from '../../../shared-core/cautions/cautions.ts';

const lines = readMe(
  distillationPackKind,
  [
    studyRun({
      runId: 'a',
      name: 'Group of the third table',
      startedAtIso: '',
      rehearsal: false,
      settings: defaultRunSettings,
      appVersion: '0',
      modelVersion: '1',
      inputs: [],
      endS: 60,
    }),
  ],
  [{ path: 'report.pdf' }],
).split('\r\n');

test('the pack says its cautions of the list, and no others', () => {
  const said = lines.filter((line) => cautions.some((caution) => cautionWords(caution) === line));
  expect(said).toEqual(cautionsAt('pack').map(cautionWords));
  const others = lines.filter((line) => !said.includes(line)).join('\n');
  expect(others).not.toMatch(/drink|safety|danger|caution/i);
});

test('the pack does not claim to name nobody, since names of runs are in it as typed', () => {
  const text = lines.join(' ');
  expect(text).toMatch(/Group of the third table/);
  expect(text).not.toMatch(/No names of people are/);
  expect(text).toMatch(/Names of runs and rigs stand here as they were typed/);
});
