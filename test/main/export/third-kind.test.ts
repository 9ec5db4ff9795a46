import { createHash } from 'node:crypto';
import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { packZip } from '#main';
import type { PrintedDocument } from '#shared-core';
import type { PackKind } from '../../../main/export/pack/pack-kind.ts';
import { byRows } from '../../../main/export/pack/pack-kind.ts';
import { amount, byColumns, tableSheet, words } from '../../../main/export/pack/table.ts';
import { fermentFigure } from '../../../shared-core/figures/ferment-figure.ts';

/** A kind of run that the program knows nothing of: water that cools in a beaker. */
interface Cooling {
  readonly runId: string;
  readonly name: string;
  readonly appVersion: string;
  readonly readings: readonly { readonly timeS: number; readonly beakerC: number }[];
}

type Row = Cooling['readings'][number] & { readonly runId: string };

const page = (title: string): PrintedDocument => ({
  title,
  subtitle: '',
  footer: '',
  blocks: [{ kind: 'paragraph', text: 'It cools.' }],
});

const readingsOf = (studies: readonly Cooling[]) => ({
  name: 'readings',
  title: 'Readings',
  ...byColumns<Row>(
    [
      words('run_id', 'Which run', (row) => row.runId),
      amount('time_s', 's', 'Since it was poured in', (row) => row.timeS),
      amount('beaker_degC', 'Cel', 'Water in the beaker', (row) => row.beakerC, 1),
    ],
    () => studies.flatMap(({ runId, readings }) => readings.map((row) => ({ ...row, runId }))),
  ),
});

const runsOf = (studies: readonly Cooling[]) => ({
  name: 'runs',
  title: 'Runs',
  primaryKey: ['run_id'],
  ...byColumns([words<Cooling>('run_id', 'Which run', ({ runId }) => runId)], () => studies),
});

const cooling: PackKind<Cooling> = {
  description: 'Water that cools.',
  dataSources: ['A thermometer'],
  figures: ({ readings }) => [
    {
      name: 'course',
      drawing: fermentFigure({
        readings: readings.map(({ timeS, beakerC }) => ({
          timeH: timeS / 3600,
          gravity: null,
          massG: null,
          temperatureC: beakerC,
          bubblesPerMin: null,
          isDegassed: false,
        })),
        endGravity: null,
      }),
    },
    { name: 'never', drawing: null },
  ],
  overlay: () => null,
  report: (studies) => page(`Report on ${studies.length}`),
  worksheet: ({ name }) => page(name),
  markingSheet: ({ name }) => page(name),
  key: ({ name }) => page(name),
  groupSheets: () => page('All'),
  readMe: {
    title: 'Water that cools',
    remarksOn: () => ['poured in by hand'],
    files: (isSeveral) => [isSeveral ? 'several' : 'single'],
    remarks: ['None.'],
    cautions: 'pack',
  },
  ownTables: (study, stem) => [byRows({ ...readingsOf([study]), name: `raw/${stem}` })],
  tables: (studies) => [runsOf(studies), readingsOf(studies)],
  sheets: (studies) => [tableSheet(readingsOf(studies), 'Readings')],
  besides: (_, stem) => [{ path: `beakers/${stem}.txt`, content: ['glass'] }],
  notebooks: () => [],
};

test('a kind of run that nobody foresaw gets tables in both dialects, keys, pictures, pages, a workbook and a description', async () => {
  const one = (runId: string, beakerC: number): Cooling => ({
    runId,
    name: 'Beaker',
    appVersion: '1.2.3',
    readings: [
      { timeS: 0, beakerC: 90.04 },
      { timeS: 60.5, beakerC },
    ],
  });
  const { fileName, content } = await packZip({
    kind: cooling,
    work: async () => [one('a', 80.5), one('b', 70.25)],
    createdMs: 0,
  });
  expect(fileName).toBe('a-beaker-and-1-more.zip');
  const pieces: Uint8Array[] = [];
  for await (const piece of content) pieces.push(piece);
  const files = unzipSync(Buffer.concat(pieces));
  const text = (path: string) => strFromU8(files[path] ?? new Uint8Array());
  expect(Object.keys(files)).toEqual([
    'beakers/a-beaker.txt',
    'beakers/b-beaker.txt',
    'data-semicolon/raw/a-beaker.csv',
    'data-semicolon/raw/b-beaker.csv',
    'data-semicolon/readings.csv',
    'data-semicolon/runs.csv',
    'data/raw/a-beaker.csv',
    'data/raw/b-beaker.csv',
    'data/readings.csv',
    'data/runs.csv',
    'figures/a-beaker-1-course.png',
    'figures/a-beaker-1-course.svg',
    'figures/b-beaker-1-course.png',
    'figures/b-beaker-1-course.svg',
    'marking/a-beaker-key.pdf',
    'marking/a-beaker-school.pdf',
    'marking/a-beaker-undergraduate.pdf',
    'marking/b-beaker-key.pdf',
    'marking/b-beaker-school.pdf',
    'marking/b-beaker-undergraduate.pdf',
    'report.docx',
    'report.pdf',
    'workbook.xlsx',
    'worksheets/a-beaker-school.pdf',
    'worksheets/a-beaker-undergraduate.pdf',
    'worksheets/all-groups-school.pdf',
    'worksheets/all-groups-undergraduate.pdf',
    'worksheets/b-beaker-school.pdf',
    'worksheets/b-beaker-undergraduate.pdf',
    'README.txt',
    'datapackage.json',
  ]);
  expect(text('data/readings.csv')).toBe(
    'run_id,time_s,beaker_degC\r\na,0,90\r\na,60.5,80.5\r\nb,0,90\r\nb,60.5,70.3\r\n',
  );
  expect(text('data-semicolon/raw/b-beaker.csv')).toContain('b;60,5;70,3');
  expect(text('README.txt')).toMatch(
    /^Water that cools[\s\S]*a {2}Beaker {2}\(poured in by hand\)/,
  );
  const described = JSON.parse(text('datapackage.json'));
  expect(described).toMatchObject({
    description: 'Water that cools.',
    version: '1.2.3',
    sources: [{ title: 'A thermometer' }],
  });
  const readings = described.resources.find(
    ({ path }: { path: string }) => path === 'data/readings.csv',
  );
  expect(readings.schema.foreignKeys).toEqual([
    { fields: 'run_id', reference: { resource: 'data.runs', fields: 'run_id' } },
  ]);
  expect(readings.schema.fields[2]).toMatchObject({
    unit: 'Cel',
    description: 'Water in the beaker',
  });
  const hash = createHash('sha256')
    .update(files['data/readings.csv'] ?? '')
    .digest('hex');
  expect(readings.hash).toBe(`sha256:${hash}`);
});
