import { expect, test } from 'vitest';
import type { RunByVolume } from '../../../shared-core/by-volume/run-by-volume.ts';
import { volumeBlocks } from '../../../shared-core/report/volume-blocks.ts';
import { plainByVolume } from '../by-volume/support/plain-by-volume.ts';
import { plainReport } from './support/plain-report.ts';

const study = plainReport({
  byVolume: plainByVolume(
    [
      [0, 78.4],
      [20, 80.4],
      [35, 81.9],
    ],
    { basis: 'booked' },
  ),
});

const blocksWith = (changes: Partial<RunByVolume>) =>
  volumeBlocks({ ...study, byVolume: study.byVolume && { ...study.byVolume, ...changes } });
const paragraphs = (changes: Partial<RunByVolume>) =>
  blocksWith(changes).flatMap((block) => (block.kind === 'paragraph' ? [block.text] : []));
const captions = (changes: Partial<RunByVolume>) =>
  blocksWith(changes).flatMap((block) => (block.kind === 'figure' ? [block.caption] : []));

test('the head beside a simple still is told by its mean, within a kelvin by its greatest alone', () => {
  const told = (mean: number, greatest: number) =>
    paragraphs({ aboveRayleighK: { mean, greatest }, doubt: null });
  expect([told(-5.04, -9.26), told(2.12, 3.4), told(-0.99, -1.44)]).toEqual([
    [
      'On average the head was 5.0 K cooler, so its vapour was stronger, than a simple still of this charge would show; at most they differ by 9.3 K.',
    ],
    [
      'On average the head was 2.1 K hotter than a simple still of this charge would show; at most they differ by 3.4 K.',
    ],
    ['The head was within 1.4 K of what a simple still of this charge would show.'],
  ]);
  expect(told(1, 1.2)[0]).toMatch(/^On average the head was 1\.0 K hotter/);
  expect(paragraphs({ aboveRayleighK: null, doubt: null })).toEqual([]);
});

test('a doubt of the volumes is said here, but of a table, where it stands among the problems of the run', () => {
  const doubt = 'More ethanol came over than was charged.';
  const told = (basis: RunByVolume['basis']) => paragraphs({ aboveRayleighK: null, doubt, basis });
  expect([told('booked'), told('table')]).toEqual([[doubt], []]);
});

test('the figure says where its volumes are from, and whether the column is drawn', () => {
  const rectified = [{ volumeMl: 0, headC: 79, strengthAbv: 90 }];
  expect(captions({ basis: 'drip-rate', rectified: null })[0]).toBe(
    'Head temperature against the distillate collected, from the drip rate stated, as at an even heat. Dashed: what the charge would give in a simple still.',
  );
  expect(captions({ basis: 'table', rectified })[0]).toBe(
    'Head temperature against the distillate collected, as the table gives them. Dashed: what the charge would give in a simple still, and in the column described at the reflux entered.',
  );
});

test('cuts are listed with their ends and their mean strength, all together last', () => {
  const table = (collected: RunByVolume['collected']) =>
    blocksWith({
      collected,
      verdict: {
        mainFraction: true,
        because: '',
        cuts: [
          {
            cut: 'as-wanted',
            fromMl: 2,
            toMl: 22.04,
            meanAbv: { value: 92, low: 90.2, high: 93.8 },
          },
        ],
      },
    }).find((block) => block.kind === 'table');
  const listed = table({ volumeMl: 30, abv: { value: 72, low: 70, high: 74 } });
  expect(listed?.columns.map(({ title, align }) => `${title}: ${align}`)).toEqual([
    'Part: start',
    'From: end',
    'To: end',
    'Mean strength: end',
  ]);
  expect(listed?.rows.map((row) => row.map((cell) => cell.replaceAll('\u00a0', '~')))).toEqual([
    ['As strong as wanted', '2.0~mL', '22.0~mL', '90.2–93.8~% vol'],
    ['All together', '0.0~mL', '30.0~mL', '70.0–74.0~% vol'],
  ]);
  expect(table(null)?.rows).toHaveLength(1);
});

test('without volumes there is nothing of this', () => {
  expect(volumeBlocks({ ...study, byVolume: null })).toEqual([]);
});
