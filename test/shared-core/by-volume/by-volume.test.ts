import { describe, expect, test } from 'vitest';
import {
  booksOfRun,
  createRandom,
  defaultRunSettings,
  type MarkBody,
  massFractionFromAlcoholByVolume,
  moleFractionFromStrength,
  type RunInput,
  type RunSettings,
  readReadingsCsv,
  runByVolume,
  studyRun,
} from '#shared-core';
import { simpleDistillation } from '../../../shared-core/bookkeeping/simple-distillation.ts';
import { batchByVolume } from '../../../shared-core/by-volume/batch-by-volume.ts';
import { carefulRun } from '../exercises/support/varied-runs.ts';
import { pearRun } from '../report/support/pear-run.ts';

const table = (rows: readonly (readonly [number, number])[]) => {
  const read = readReadingsCsv(
    `volume_mL,head_degC\n${rows.map((row) => row.join(',')).join('\n')}`,
  );
  if (!read.ok) throw new Error(read.error.kind);
  return read.value;
};

/** 30 mL of 40 % vol at sea level, as many school texts charge a still. */
const settings: RunSettings = {
  ...defaultRunSettings,
  charge: { volumeMl: 30, strengthAbv: 40, standardUncertaintyAbv: 0.5 },
  pressure: {
    pressureKPa: 101.325,
    standardUncertaintyKPa: 0.1,
    source: 'barometer',
    altitudeM: null,
  },
  probe: { ...defaultRunSettings.probe, standardUncertaintyK: 0.25, offsetK: 0, gain: 1 },
  leastStrengthAbv: 78,
};
const study = (inputs: readonly RunInput[], changes: Partial<RunSettings> = {}) =>
  studyRun({
    runId: 'a',
    name: 'Table',
    startedAtIso: '',
    rehearsal: false,
    imported: true,
    settings: { ...settings, ...changes },
    appVersion: '0',
    modelVersion: '1',
    inputs,
    endS: 0,
  });

/** What a simple still gives, read every millilitre on a thermometer with marks of 0.5 °C. */
const simple = batchByVolume({
  chargeMl: 30,
  chargeAbv: 40,
  pressureKPa: 101.325,
  upToMl: 12,
  column: null,
});
const simpleTable = Array.from({ length: 12 }, (_, index): [number, number] => {
  const point = simple.find(({ volumeMl }) => volumeMl >= index + 1 - 1e-9);
  return [index + 1, Math.round(2 * (point?.headC ?? 0)) / 2];
});

describe('the course that a simple still is expected to give', () => {
  test('leaves as much in the pot as Rayleigh’s integral does', () => {
    const ethanolMl =
      simple.slice(1).reduce((sum, { strengthAbv, volumeMl }, index) => {
        const before = simple[index]!;
        return sum + ((volumeMl - before.volumeMl) * (strengthAbv + before.strengthAbv)) / 2;
      }, 0) / 100;
    const gPerMl = (abv: number) =>
      (0.7892 * abv) / 100 / massFractionFromAlcoholByVolume({ alcoholByVolume: abv });
    const molIn = (ml: number, abv: number) => {
      const grams = ml * gPerMl(abv);
      const ethanolG = (0.7892 * ml * abv) / 100;
      return ethanolG / 46.07 + (grams - ethanolG) / 18.015;
    };
    const meanAbv = (100 * ethanolMl) / 12;
    const byIntegral = simpleDistillation({
      chargeMol: molIn(30, 40),
      potMoleFraction: moleFractionFromStrength(40),
      distillateMol: molIn(12, meanAbv),
      pressureKPa: 101.325,
    });
    expect(Math.abs(byIntegral.strengthAbv - meanAbv)).toBeLessThan(0.4);
  });

  test('of a column is stronger at first, and that of a column without plates is the same', () => {
    const batch = { chargeMl: 30, chargeAbv: 40, pressureKPa: 101.325, upToMl: 12 };
    const column = batchByVolume({ ...batch, column: { plates: 5, refluxRatio: 3 } });
    expect(column[0]!.strengthAbv).toBeGreaterThan(simple[0]!.strengthAbv + 8);
    expect(column.at(-1)!.strengthAbv).toBeLessThan(column[0]!.strengthAbv);
    expect(batchByVolume({ ...batch, column: { plates: 0, refluxRatio: 3 } })).toEqual(simple);
  });
});

describe('a table with volumes and no times', () => {
  test('is judged by its temperatures, with cuts, and without a single time', () => {
    const { verdicts, byVolume, rows, plateau } = study(table(simpleTable).inputs);
    expect({ ...verdicts, verdict: verdicts.verdict.mainFraction, rows, plateau }).toEqual({
      stages: [],
      alarms: [],
      forecasts: [],
      estimates: [],
      events: [],
      problems: [],
      verdict: true,
      rows: [],
      plateau: null,
    });
    const crossed = simple.find(({ strengthAbv }) => strengthAbv < 78)!;
    const [strong, weak] = byVolume!.verdict.cuts;
    expect(Math.abs(strong!.toMl - crossed.volumeMl)).toBeLessThan(1.5);
    expect(weak).toMatchObject({ cut: 'weaker', fromMl: strong!.toMl, toMl: 12 });
    expect(Math.abs(byVolume!.aboveRayleighK!.greatest)).toBeLessThan(0.5);
    expect(byVolume!.doubt).toBeNull();
  });

  test('holds nothing as strong as wanted where the still can’t give it', () => {
    const { verdicts } = study(table(simpleTable).inputs, { leastStrengthAbv: 85 });
    expect(verdicts.verdict).toMatchObject({
      mainFraction: false,
      because: expect.stringMatching(/^At no volume was the vapour as strong as 85 % vol/),
    });
  });

  test('whose head runs up to 99 °C while the pot still holds ethanol by its own account is doubted', () => {
    // The ends of a usual student table, from memory: 12 mL from 30 mL of 40 % vol, 83 to 99 °C; between them a straight line of ours.
    const rows = Array.from({ length: 12 }, (_, index): [number, number] => [
      index + 1,
      83 + (16 * index) / 11,
    ]);
    const { verdicts } = study(table(rows).inputs);
    expect(verdicts.problems.map(({ problem }) => problem)).toEqual([
      expect.stringMatching(/don’t agree.*12\.0 mL of ethanol.*99\.0 °C/),
    ]);
  });

  test('never throws, whatever stands in it', () => {
    const random = createRandom('tables').uniform;
    for (let trial = 0; trial < 200; trial++) {
      const rows = Array.from({ length: 6 }, (_, index): [number, number] => [
        index * random() * 30,
        -60 + 220 * random(),
      ]).toSorted((a, b) => a[0] - b[0]);
      const { byVolume } = study(table(rows).inputs, {
        charge: {
          volumeMl: 10 + 50 * random(),
          strengthAbv: 95 * random(),
          standardUncertaintyAbv: 0,
        },
      });
      for (const { collectedAbv } of byVolume?.course ?? []) {
        expect(collectedAbv === null || Number.isFinite(collectedAbv.value)).toBe(true);
      }
    }
  });
});

describe('a run with times', () => {
  const mark = (timeS: number, markId: number, body: MarkBody): RunInput => ({
    kind: 'mark',
    timeS,
    markId,
    mark: body,
  });
  const { run, batch } = pearRun();
  const { rows, verdicts } = studyRun(run);
  const readings = run.inputs.filter(({ kind }) => kind === 'reading');
  const off = mark(3000, 9, { type: 'heat-off' });
  const trueMl = (timeS: number) =>
    batch.samples.find((sample) => sample.timeS >= timeS)?.distillateVolumeMl ?? 0;
  const against = (inputs: readonly RunInput[], more: { drip?: number } = {}) =>
    runByVolume({
      settings: run.settings,
      inputs,
      rows,
      refluxRatio: null,
      distillate: booksOfRun({
        settings: run.settings,
        inputs,
        endS: run.endS,
        verdicts,
        entries: more.drip === undefined ? undefined : { cuts: [], dripRateMlPerMin: more.drip },
      }).distillate,
    });
  const headAt = (found: ReturnType<typeof against>, volumeMl: number) =>
    found?.course.find((point) => point.volumeMl >= volumeMl)?.headC ?? Number.NaN;
  const trueHeadAt = (volumeMl: number) =>
    rows.find(({ timeS }) => trueMl(timeS) >= volumeMl)?.headC ?? Number.NaN;

  test.each([
    [
      'booked',
      [900, 1500, 2000, 2500, 2800, 3000].map((timeS, index) =>
        mark(timeS, index + 1, { type: 'volume-read', volumeMl: trueMl(timeS) }),
      ),
    ],
    [
      'receiver-mass',
      Array.from({ length: 160 }, (_, index): RunInput => {
        const timeS = 600 + 15 * index;
        const value = 100 + 0.82 * trueMl(timeS);
        return { kind: 'reading', timeS, channel: 'receiver', value, unit: 'g', quality: 'good' };
      }),
    ],
  ] as const)('has its head temperature against the volume from what is %s', (basis, measured) => {
    const inputs = [...readings, ...measured, off].toSorted((a, b) => a.timeS - b.timeS);
    const found = against(inputs);
    expect(found?.basis).toBe(basis);
    for (const volumeMl of [5, 15, 25]) {
      expect(Math.abs(headAt(found, volumeMl) - trueHeadAt(volumeMl))).toBeLessThan(0.6);
    }
  });

  test('begins when the bulb has followed the front, not while it warms up as if in stronger vapour', () => {
    const still = { rig: 'simpleHead', volumeMl: 250, abv: 40, pressureKPa: 99.4 } as const;
    const { byVolume } = studyRun(
      carefulRun({ ...still, limitAbv: 60, easedW: 60, lateS: 300 }, 2),
    );
    // A still without a column follows Rayleigh from its first drop on; the warming bulb was 5 K below.
    expect(Math.abs(byVolume?.aboveRayleighK?.greatest ?? 99)).toBeLessThan(1);
  });

  test('takes a stated drip rate where nothing was measured, and makes nothing up where none is stated', () => {
    expect(against([...readings, off])).toBeNull();
    const found = against([...readings, off], { drip: 0.8 });
    expect(found?.basis).toBe('drip-rate');
    expect(found?.course.at(-1)?.volumeMl).toBeGreaterThan(20);
  });
});
