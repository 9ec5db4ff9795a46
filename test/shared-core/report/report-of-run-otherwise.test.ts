import { describe, expect, test } from 'vitest';
import { runBlocks } from '../../../shared-core/report/report-of-run.ts';
import { settingsTable } from '../../../shared-core/report/report-tables.ts';
import type { RunStudy } from '../../../shared-core/study/study-run.ts';
import { pearOrigin } from '../../support/pear-origin.ts';
import { plainByVolume } from '../by-volume/support/plain-by-volume.ts';
import { plainReport } from './support/plain-report.ts';
import { printedBlocks } from './support/printed-page.ts';

const plain = plainReport();
const linesOf = (changes: Partial<RunStudy>) => printedBlocks(runBlocks({ ...plain, ...changes }));
const withSettings = (changes: Partial<RunStudy['settings']>): RunStudy => ({
  ...plain,
  settings: { ...plain.settings, ...changes },
});
const row = (study: RunStudy, name: string) =>
  settingsTable(study)
    .rows.find(([title]) => title === name)?.[1]
    ?.replaceAll('\u00a0', '~');
const withPlates = (
  changes: Partial<NonNullable<RunStudy['plates']>['plates']>,
): RunStudy['plates'] =>
  plain.plates && { ...plain.plates, plates: { ...plain.plates.plates, ...changes } };

describe('what was set', () => {
  test('says where the air pressure is from', () => {
    const { pressure } = plain.settings;
    const source = (name: typeof pressure.source) =>
      row(withSettings({ pressure: { ...pressure, source: name } }), 'Air pressure')?.split(
        'kPa, ',
      )[1];
    expect((['barometer', 'altitude', 'assumed', 'channel', 'steam'] as const).map(source)).toEqual(
      [
        'from barometer',
        'from altitude, ISO 2533',
        'assumed: nobody entered one',
        'measured during the run',
        'from steam of boiling water, by this probe',
      ],
    );
    // A pressure by steam of an older version says no more of it.
    expect(
      row(withSettings({ pressure: { ...pressure, source: 'steam' } }), 'Head probe in steam'),
    ).toBeUndefined();
  });

  test('of an imported run was stated then, and what the file does not say is not', () => {
    const study = { ...plain, imported: true, startedAtIso: '' };
    expect(settingsTable(study).caption).toBe('Stated when the file was taken in');
    expect([row(study, 'Run'), row(study, 'Began')]).toEqual([
      'plain (imported)',
      'not stated in the file',
    ]);
  });

  test('has the time so far of a run under way, and none of a table', () => {
    expect(row({ ...plain, underWay: true }, 'Lasted')).toBe(
      '1:10:00, under way when this was made',
    );
    const byVolume = { basis: 'table' } as RunStudy['byVolume'];
    expect(row({ ...plain, byVolume }, 'Lasted')).toBe('no times in the table');
  });

  test('tells of the ferment, the probe, the rig and what was tried', () => {
    const study = withSettings({
      ferment: { ...pearOrigin, wentIn: '1 L of pear juice' },
      probe: { ...plain.settings.probe, offsetK: -0.3, gain: 1.001 },
      rig: { ...plain.settings.rig, description: '500 mL flask', plates: 3 },
      trials: [
        { trial: 'sound', worked: true, role: 'teacher' },
        { trial: 'screen', worked: false, role: 'technician' },
      ] as unknown as NonNullable<RunStudy['settings']['trials']>,
    });
    expect(
      ['From the ferment', 'Head probe', 'Rig', 'Kind', 'Tried before heat'].map((name) =>
        row(study, name),
      ),
    ).toEqual([
      '“Pear”, begun 2026-05-01: 8.5 % vol (8.1 to 8.9) by its log; in it 1 L of pear juice',
      'u = 0.1 K, t90 = 15 s, T = −0.3 K + 1.001 × reading',
      '500 mL flask',
      'fractional, 3 plates',
      'call heard at the still (teacher); class screen not read from the back row (technician)',
    ]);
    const unsaid = withSettings({ ferment: { ...pearOrigin, wentIn: '' } });
    expect(row(unsaid, 'From the ferment')).toMatch(/by its log$/);
  });
});

describe('the results', () => {
  test('say what is missing', () => {
    const lines = linesOf({ plateau: null, product: null, plates: null, rehearsal: false });
    expect(lines.slice(0, 4)).toEqual([
      '# Pear-juice ferment',
      '- There was a main fraction.',
      '- No plateau to report: the head never stayed within 1 K for 2 min at 80 % vol or more.',
      '- No cut was measured, so there is no recovery to report.',
    ]);
    expect(linesOf({ books: { ...plain.books, balance: null } })).toContain(
      '- No cut was measured, so there is no recovery to report.',
    );
  });

  test('have stages without an upper end where the azeotrope is within reach, and none where none were counted', () => {
    expect(
      linesOf({ plates: withPlates({ stepped: { value: 3.5, low: 3, high: null } }) }),
    ).toEqual(
      expect.arrayContaining([
        '- Apparent stages at total reflux: 3.5 (3.0 to no upper end).',
        'Stepping the equilibrium curve, total reflux | 3.5 (3.0 to no upper end)',
      ]),
    );
    const none = linesOf({
      plates: withPlates({ stepped: { value: null, low: null, high: null }, fenske: null }),
    });
    expect(none.filter((line) => line.startsWith('- Apparent stages'))).toEqual([]);
    expect(none).toEqual(
      expect.arrayContaining([
        'Stepping the equilibrium curve, total reflux | none (azeotrope or pinch in the way)',
        'Fenske, one mean relative volatility | –',
      ]),
    );
    expect(
      linesOf({ plates: withPlates({ steppedAtReflux: { value: 5, low: 4.5, high: 5.5 } }) }),
    ).toContain('Stepping at the reflux ratio entered | 5.0 (4.5 to 5.5)');
    expect(linesOf({ plates: null }).join('\n')).not.toMatch(/Fenske|equilibrium stages/);
  });

  test('of an imported run say so', () => {
    const told =
      'Imported: the readings were taken in from a file of another logger. Charge, pressure and rig are as stated when it was taken in.';
    expect([linesOf({ imported: true })[2], linesOf({}).includes(told)]).toEqual([told, false]);
  });

  test('of a table by volume have no times', () => {
    const byVolume = plainByVolume([
      [0, 78],
      [20, 80],
      [40, 82],
    ]);
    const lines = linesOf({ byVolume });
    expect(lines).toContain(
      '- Taken by volume: the table has no times, so there are no stages, no plateau and no duration.',
    );
    expect(
      lines.filter((line) => /^\[(Set|Stages|Calls)|^- Plateau|with the stages/.test(line)),
    ).toEqual(['[Set before the run]']);
    const booked = linesOf({ byVolume: { ...byVolume, basis: 'booked' } });
    expect(booked.filter((line) => /^\[(Set|Stages|Calls)|^- Plateau/.test(line))).toHaveLength(4);
  });
});

test('a still without a column is held against Rayleigh alone', () => {
  const rig = { ...plain.settings.rig, plates: 0 };
  const simple = linesOf({ settings: { ...plain.settings, rig } });
  expect(simple).toContain(
    'Simple distillation: for as many moles of distillate Rayleigh’s equation expects 54.8 % vol and 48 % of the ethanol; measured were 76.62–78.18~% vol.',
  );
  expect(linesOf({ simple: null }).join('\n')).not.toContain('Rayleigh');
  expect(linesOf({ product: null }).join('\n')).not.toContain('Rayleigh');
});

test('strength over time is drawn where the monitor told one', () => {
  const caption =
    '<Strength of the head vapour as the monitor told it (means), with what it learned of probe and air pressure during the run. Shaded: 95 % interval. Where it told none there is no line.>';
  const rows = plain.rows.map((row_) => ({
    ...row_,
    vapourAbv: { value: 90, low: 88, high: 92 },
  }));
  expect([linesOf({ rows }).includes(caption), linesOf({}).includes(caption)]).toEqual([
    true,
    false,
  ]);
});

test('calls, sugar and doubts that there were not take no room', () => {
  const { verdicts, books } = plain;
  const lines = linesOf({
    verdicts: { ...verdicts, alarms: [], problems: [] },
    books: { ...books, ferment: null, assumptions: [] },
    corrections: undefined,
    leftOut: undefined,
  });
  expect(lines.filter((line) => /Calls|From sugar|taken for granted/.test(line))).toEqual([]);
});
