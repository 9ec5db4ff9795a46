import { describe, expect, test } from 'vitest';
import { classBlocks } from '../../../shared-core/report/class-blocks.ts';
import { comparisonBlocks } from '../../../shared-core/report/comparison-blocks.ts';
import { distillationKind } from '../../../shared-core/report/distillation-kind.ts';
import { discussionBlocks, openingBlocks } from '../../../shared-core/report/hand-in-blocks.ts';
import { footerOf, reportOf } from '../../../shared-core/report/report-of.ts';
import type { RunStudy } from '../../../shared-core/study/study-run.ts';
import { pearOrigin } from '../../support/pear-origin.ts';
import { plainByVolume } from '../by-volume/support/plain-by-volume.ts';
import { plainReport } from './support/plain-report.ts';
import { printedBlocks, printedPage } from './support/printed-page.ts';

const plain = plainReport();
const withPlates = (plates: number | null, changes: Partial<RunStudy> = {}): RunStudy => ({
  ...plain,
  ...changes,
  settings: { ...plain.settings, rig: { ...plain.settings.rig, plates } },
});
const withStrength = (value: number) =>
  plain.product && {
    ...plain.product,
    strengthAbv: { value, low: value - 0.3, high: value + 0.3 },
  };
const recovered = (value: number): RunStudy['books'] => {
  const { balance } = plain.books;
  return {
    ...plain.books,
    balance: balance && {
      ...balance,
      ethanol: {
        ...balance.ethanol,
        recoveryPercent: { ...balance.ethanol.recoveryPercent, value },
      },
    },
  };
};
const bare: RunStudy = {
  ...plain,
  plateau: null,
  product: null,
  plates: null,
  books: { ...plain.books, balance: null },
  verdicts: { ...plain.verdicts, verdict: { mainFraction: false, because: '' } },
  mainFraction: 'no',
  inputs: [],
};

describe('two runs', () => {
  const simple = withPlates(0, { product: withStrength(54.8), books: recovered(70.04) });
  const fractional = withPlates(6, { rehearsal: false });

  test('stand side by side, a row a result', () => {
    expect(printedBlocks(comparisonBlocks([fractional, bare]))).toEqual([
      '# The runs side by side',
      '<Head temperatures, counted from the arrival of vapour.>',
      '[Comparison (±: k = 2)]',
      ' | Run 1 → | Run 2 →',
      'Kind | fractional, 6 plates | not described',
      'Readings | recorded | rehearsal',
      'Plateau | (78.40~±~0.20)~°C | none',
      'Plateau at 101.325 kPa | (79.14~±~0.22)~°C | –',
      'Scatter on the plateau | 0.05~K | –',
      'Mean strength of the cuts measured | 76.62–78.18~% vol | –',
      'Ethanol recovered | (90.0~±~4.9)~% | –',
      'Ethanol accounted for | (93.3~±~5.0)~% | –',
      'Apparent stages | 3.10–3.75 | –',
      'Main fraction | yes | no',
    ]);
  });

  test('of both kinds are compared in a sentence, whichever comes first', () => {
    const sentence = (...studies: readonly RunStudy[]) =>
      printedBlocks(comparisonBlocks(studies)).at(-1);
    // 77.4 − 54.8 within √(0.78² + 0.3²), and 90.0 − 70.0.
    expect(sentence(simple, fractional)).toBe(
      'Simple (run 1) gave 54.50–55.10~% vol, fractional (run 2) 76.62–78.18~% vol: (+22.6~±~0.8)~% vol by the column, with +20.0~% of the charged ethanol recovered. Strength is only comparable for a like share of the charge distilled.',
    );
    expect(sentence(fractional, simple)).toMatch(/^Simple \(run 2\) gave .* fractional \(run 1\)/);
    const worse = withPlates(6, { product: withStrength(50), books: recovered(60) });
    expect(sentence(simple, worse)).toContain('(−4.8~±~0.4)~% vol by the column, with −10.0~% of');
  });

  test('of one kind, or without measured cuts, have no such sentence', () => {
    const last = (...studies: readonly RunStudy[]) =>
      printedBlocks(comparisonBlocks(studies)).at(-1);
    expect(last(simple, simple)).toBe('Main fraction | yes | yes');
    expect(last(simple, { ...fractional, product: null })).toBe('Main fraction | yes | yes');
    const { books } = fractional;
    expect(last(simple, { ...fractional, books: { ...books, balance: null } })).toBe(
      'Main fraction | yes | yes',
    );
  });

  test('may have stages without an upper end', () => {
    const plates = plain.plates && {
      ...plain.plates,
      plates: { ...plain.plates.plates, stepped: { value: 3.5, low: 3.04, high: null } },
    };
    expect(printedBlocks(comparisonBlocks([plain, { ...plain, plates }]))).toContain(
      'Apparent stages | 3.10–3.75 | at least 3.0',
    );
  });

  test('make one report, a page each', () => {
    const lines = printedPage(
      reportOf([
        { ...plain, runId: 'a' },
        { ...plain, runId: 'b' },
      ]),
    );
    expect(lines[0]).toBe('Distillation report: 2 runs / a, b');
    expect(lines.filter((line) => line === '=====')).toHaveLength(2);
    expect(lines).toContain(
      'To separate ethanol from an alcoholic liquid in 2 runs, and to compare what the head temperature, the distillate and the balance of each tell.',
    );
    expect(lines).toContain(
      '6. By more than their uncertainties: in what do the runs differ, and why?',
    );
  });
});

test('one run is compared with nothing', () => {
  expect(comparisonBlocks([plain])).toEqual([]);
});

test('a class has its spread by hand, a digit more for the deviation, and leaves out what was not measured', () => {
  const study = (name: string, plateauC: number, strengthAbv: number, recovery: number) => ({
    ...plain,
    name,
    plateau: plain.plateau && {
      ...plain.plateau,
      mean: { value: plateauC, standardUncertainty: 0.1 },
    },
    product: withStrength(strengthAbv),
    books: recovered(recovery),
    plates: null,
  });
  const group = [study('A', 78.2, 80, 90), study('B', 78.8, 86, 70), { ...bare, name: 'C' }];
  // Means of two; deviations from them over n − 1: √(2 · 0.3²), √(2 · 3²), √(2 · 10²).
  expect(printedBlocks(classBlocks(group))).toEqual([
    '# The class',
    '[Spread over all runs]',
    ' | Plateau / °C → | Cuts / % vol → | Recovered / % → | Stages →',
    'Runs | 2 | 2 | 2 | 0',
    'Mean | 78.5 | 83.0 | 80 | –',
    'Standard deviation | 0.42 | 4.24 | 14.1 | –',
    'Least | 78.2 | 80.0 | 70 | –',
    'Greatest | 78.8 | 86.0 | 90 | –',
    '[Results of all runs; uncertainties stand with each run below]',
    'Run | Plateau / °C → | Cuts / % vol → | Recovered / % → | Stages → | Main fraction →',
    '1  A | 78.2 | 80.0 | 90 | – | yes',
    '2  B | 78.8 | 86.0 | 70 | – | yes',
    '3  C | – | – | – | – | no',
  ]);
});

test('one value has no deviation', () => {
  const lines = printedBlocks(classBlocks([plain, bare]));
  expect(lines).toContain('Standard deviation | – | – | – | –');
  expect(lines).toContain('Mean | 78.4 | 77.4 | 90 | 3.5');
});

describe('what a report is handed in with', () => {
  const opening = (study: RunStudy) => printedBlocks(openingBlocks([study]));

  test('calls the charge fermented only where its ferment is known: a spirit distilled again is none', () => {
    const fermented = { ...plain, settings: { ...plain.settings, ferment: pearOrigin } };
    const aim = (...studies: readonly RunStudy[]) => printedBlocks(openingBlocks(studies))[2];
    expect([aim(fermented), aim(plain), aim(fermented, fermented), aim(fermented, plain)]).toEqual([
      expect.stringContaining('250~mL of a fermented liquid of'),
      expect.stringContaining('250~mL of an alcoholic liquid of'),
      expect.stringContaining('from a fermented liquid in 2 runs'),
      expect.stringContaining('from an alcoholic liquid in 2 runs'),
    ]);
  });

  test('is the rig as described, its kind and its heat', () => {
    const rig = { ...plain.settings.rig, description: '500 mL flask', plates: 3, heatW: 130 };
    const charge = { ...plain.settings.charge, volumeMl: 12_345 };
    const probe = { ...plain.settings.probe, standardUncertaintyK: 0.173205 };
    const lines = opening({ ...plain, settings: { ...plain.settings, rig, charge, probe } });
    expect(lines[2]).toContain('from 12345~mL of an alcoholic liquid of 12~% vol');
    expect(lines.at(-1)).toBe(
      '- Pear-juice ferment: 500 mL flask; fractional, 3 plates; heated with 130~W; thermometer at the still head, standard uncertainty 0.17~K.',
    );
  });

  const discussed = (...studies: readonly RunStudy[]) =>
    printedBlocks(discussionBlocks(studies)).map((line) => line.slice(0, 31));

  test('is discussed by what its data can answer', () => {
    expect(discussed(bare)).toEqual([
      '## Discussion',
      '1. Why did the head show no pla',
      '2. The balance of ethanol can’t',
    ]);
    const { balance } = plain.books;
    const open = balance && { ...balance, ethanol: { ...balance.ethanol, closurePercent: null } };
    expect(
      discussed({ ...bare, books: { ...plain.books, balance: open }, inputs: plain.inputs }),
    ).toEqual([
      '## Discussion',
      '1. Why did the head show no pla',
      '2. The balance of ethanol can’t',
      '3. Which reading makes the reco',
      '4. Was the heat taken off at th',
    ]);
    const byVolume = { basis: 'table' } as RunStudy['byVolume'];
    expect(discussed({ ...bare, byVolume })).toEqual([
      '## Discussion',
      '1. At which volume would you ha',
      '2. The balance of ethanol can’t',
    ]);
    // Readings and other marks say nothing of the heat's end.
    const reading = {
      kind: 'reading',
      timeS: 10,
      channel: 'head',
      value: 78.4,
      unit: '°C',
      quality: 'good',
    } as const;
    expect(discussed({ ...bare, inputs: [reading, ...plain.inputs.slice(0, 2)] })).toHaveLength(3);
    expect(discussed({ ...bare, inputs: [reading, ...plain.inputs] })).toHaveLength(4);
    // One of several is enough.
    expect(discussed(bare, plain)).toHaveLength(7);
  });
});

test('a run that was recorded with another model than the one that judges it here is named with that model', () => {
  const method = (...studies: readonly RunStudy[]) =>
    printedPage(reportOf(studies)).find((line) => line.startsWith('- Stages and calls'));
  const older = { ...plain, modelVersion: '17', recordedModelVersion: '12' };
  const same = { ...plain, modelVersion: '17', recordedModelVersion: '17' };
  const named =
    /same model version\. Recorded with another model version, which may have called otherwise: Pear-juice ferment \(12\)\.$/;
  expect([method(older), method(older, same)]).toEqual([
    expect.stringMatching(named),
    expect.stringMatching(named),
  ]);
  expect([method(same), method(plain)]).toEqual([
    expect.stringMatching(/same model version\.$/),
    expect.stringMatching(/same model version\.$/),
  ]);
});

test('a report of no run is empty, and no fault', () => {
  expect(reportOf([]).title).toBe('Distillation report: 0 runs');
  expect([footerOf([]), printedBlocks(openingBlocks([])).slice(1, 3)]).toEqual([
    '',
    ['## Aim', ''],
  ]);
});

test('the drawings of a run are named in their order, null where there is nothing to draw', () => {
  const names = (study: RunStudy) =>
    distillationKind.figures(study).map(({ name, drawing }) => `${name} ${drawing !== null}`);
  expect(names(plain)).toEqual([
    'temperature true',
    'strength false',
    'ethanol true',
    'stages true',
    'temperature-by-volume false',
    'strength-by-volume false',
    'sugar-to-distillate false',
  ]);
  const table = { ...bare, byVolume: plainByVolume([]) };
  expect(names(table)[0]).toBe('temperature false');
  expect(names(bare)[3]).toBe('stages false');
});
