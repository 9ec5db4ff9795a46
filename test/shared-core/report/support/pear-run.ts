import {
  type BookEntries,
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  type MarkBody,
  pearFermentSetup,
  type RunInput,
  simulateBatch,
} from '#shared-core';
import type { ReceiverState } from '../../../../shared-core/column/batch-state.ts';
import type { BatchRun } from '../../../../shared-core/column/simulate-batch.ts';
import type { RunToStudy } from '../../../../shared-core/study/study-run.ts';

/** The rehearsal rig's run with its truth, and what a careful person would have written down. */
export interface PearRun {
  readonly run: RunToStudy;
  readonly batch: BatchRun;
  /** Contents of each receiver at its end. */
  readonly receivers: readonly ReceiverState[];
}

const changesS = [1080, 2900];
const heatOffS = 3000;
const durationS = 4800;

/** A pear-juice ferment distilled, probed at 1 Hz, with marks and books as measured afterwards. */
export function pearRun(seed = 'pear run'): PearRun {
  const setup = pearFermentSetup();
  const batch = simulateBatch(
    {
      ...setup,
      schedule: [
        ...(setup.schedule ?? []),
        ...changesS.map((timeS) => ({ timeS, kind: 'receiver-changed' }) as const),
        { timeS: heatOffS, kind: 'heat-off' },
      ],
    },
    { durationS },
  );
  const probe = createProbeSignal({
    random: createRandom(seed),
    whiteNoiseK: 0.03,
    quantumK: 1 / 16,
    powerOnReadings: 0,
  });
  const readings = batch.samples.flatMap(({ timeS, bulbTemperatureC }): RunInput[] => {
    const value = probe.read(timeS, bulbTemperatureC);
    return value === null
      ? []
      : [{ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' }];
  });
  const receivers = batch.samples.flatMap((sample, index) => {
    const next = batch.samples[index + 1];
    return next?.receiverIndex === sample.receiverIndex ? [] : [sample.receiver];
  });
  const [first, main, last] = receivers;
  const marks: readonly (readonly [number, MarkBody])[] = [
    [0, { type: 'heat-on' }],
    [600, { type: 'heat-eased' }],
    [1080, { type: 'receiver-changed', volumeMl: round(first?.volumeMl) }],
    [1200, { type: 'note', text: '=HYPERLINK("http://example.org") smells of pear' }],
    [2900, { type: 'receiver-changed', volumeMl: round(main?.volumeMl) }],
    [heatOffS, { type: 'heat-off' }],
    [4200, { type: 'volume-read', volumeMl: round(last?.volumeMl) }],
  ];
  const inputs = [
    ...readings,
    ...marks.map(
      ([timeS, mark], index): RunInput => ({
        kind: 'mark',
        timeS,
        markId: index + 1,
        mark,
      }),
    ),
  ].sort((a, b) => a.timeS - b.timeS);
  return {
    batch,
    receivers,
    run: {
      runId: '20260318-0915',
      name: 'Pear-juice ferment',
      startedAtIso: '2026-03-18T09:15:00.000Z',
      rehearsal: true,
      settings: {
        ...defaultRunSettings,
        charge: { volumeMl: 250, strengthAbv: 11, standardUncertaintyAbv: 0.2 },
        pressure: {
          pressureKPa: 99.4,
          standardUncertaintyKPa: 0.1,
          source: 'barometer',
          altitudeM: null,
        },
        probe: { standardUncertaintyK: 0.1, lagT90S: 15, offsetK: 0, gain: 1, silenceS: 5 },
      },
      appVersion: '0.1.0',
      modelVersion: '1',
      inputs,
      endS: durationS,
      entries: booksOf(batch, receivers),
    },
  };
}

/** What the bench would measure: alcoholometer readings on every cut and on the pot's residue. */
function booksOf(batch: BatchRun, receivers: readonly ReceiverState[]): BookEntries {
  const end = batch.samples.at(-1);
  return {
    cuts: receivers.map(({ strengthAbv }, index) => ({
      number: index + 1,
      strength: {
        by: 'alcoholometer',
        indicatedAbv: { value: round(strengthAbv), standardUncertainty: 0.3 },
        temperatureC: { value: 20, standardUncertainty: 0.5 },
      },
    })),
    residue: {
      amount: {
        by: 'volume',
        volumeMl: { value: round(end?.potVolumeMl), standardUncertainty: 1 },
        temperatureC: { value: 20, standardUncertainty: 0.5 },
      },
      strength: {
        by: 'stated',
        strengthAbv: { value: round(end?.potStrengthAbv), standardUncertainty: 0.1 },
      },
    },
    sugarG: { value: 47, standardUncertainty: 1 },
    refluxRatio: 3,
  };
}

const round = (value = 0) => Math.round(10 * value) / 10;
