import {
  type BookEntries,
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  type MarkBody,
  type RunInput,
  readReadingsCsv,
  simulateBatch,
  teachingRigs,
} from '#shared-core';
import type { ReceiverState } from '../../../../shared-core/column/batch-state.ts';
import type { RunToStudy } from '../../../../shared-core/study/study-run.ts';

export interface Still {
  readonly rig: keyof typeof teachingRigs;
  readonly volumeMl: number;
  readonly abv: number;
  readonly pressureKPa: number;
  readonly limitAbv: number;
  readonly easedW: number;
  /** From the limit to heat-off [s]; negative is early. */
  readonly lateS: number;
}

const stills: readonly Still[] = [
  {
    rig: 'wirePacking',
    volumeMl: 250,
    abv: 11,
    pressureKPa: 99.4,
    limitAbv: 80,
    easedW: 64,
    lateS: 240,
  },
  {
    rig: 'wirePacking',
    volumeMl: 250,
    abv: 12,
    pressureKPa: 90,
    limitAbv: 80,
    easedW: 66,
    lateS: -300,
  },
  {
    rig: 'glassBeads',
    volumeMl: 300,
    abv: 12,
    pressureKPa: 101.3,
    limitAbv: 85,
    easedW: 60,
    lateS: 30,
  },
  { rig: 'vigreux', volumeMl: 250, abv: 9, pressureKPa: 97, limitAbv: 70, easedW: 60, lateS: 600 },
  { rig: 'vigreux', volumeMl: 250, abv: 4, pressureKPa: 95, limitAbv: 80, easedW: 60, lateS: 300 },
  {
    rig: 'simpleHead',
    volumeMl: 250,
    abv: 11,
    pressureKPa: 99.4,
    limitAbv: 80,
    easedW: 60,
    lateS: 300,
  },
  {
    rig: 'simpleHead',
    volumeMl: 200,
    abv: 40,
    pressureKPa: 101,
    limitAbv: 60,
    easedW: 60,
    lateS: 300,
  },
  {
    rig: 'wirePacking',
    volumeMl: 300,
    abv: 5,
    pressureKPa: 103,
    limitAbv: 80,
    easedW: 62,
    lateS: 180,
  },
  {
    rig: 'glassBeads',
    volumeMl: 250,
    abv: 8,
    pressureKPa: 85,
    limitAbv: 75,
    easedW: 58,
    lateS: 400,
  },
  {
    rig: 'simpleHead',
    volumeMl: 300,
    abv: 6,
    pressureKPa: 98,
    limitAbv: 80,
    easedW: 60,
    lateS: 900,
  },
];

const kinds = [
  'careful',
  'imported from a logger of once a minute',
  'stopped early',
  'eleven hours',
] as const;

/** The stills by their number and what they are. */
export const variedStills = stills.map(
  ({ rig, abv }, index) => [index, `${rig} ${abv} % vol`] as const,
);

/** The runs of one still, no two alike: recorded by careful people, taken in from a slow logger's file, cut short, and drawn out. */
export function variedRunsOf(index: number): readonly (readonly [string, RunToStudy])[] {
  const still = stills[index];
  if (still === undefined) return [];
  const base = carefulRun(still, index);
  return kinds.map((kind) => [kind, variant(base, kind)] as const);
}

function variant(base: RunToStudy, kind: (typeof kinds)[number]): RunToStudy {
  const { inputs, entries, ...run } = base;
  switch (kind) {
    case 'careful':
      return base;
    case 'imported from a logger of once a minute': {
      const kept = inputs.filter(
        (input) => input.kind === 'reading' && Math.floor(input.timeS) % 60 === 0,
      );
      const probe = { ...run.settings.probe, silenceS: 180 };
      const settings = { ...run.settings, probe };
      return { ...run, rehearsal: false, imported: true, settings, inputs: throughFile(kept) };
    }
    case 'stopped early': {
      const endS = Math.round(0.55 * run.endS);
      return { ...run, inputs: inputs.filter(({ timeS }) => timeS < endS), endS };
    }
    case 'eleven hours': {
      const factor = 39_600 / run.endS;
      const drawnOut = inputs.map((input) => ({ ...input, timeS: input.timeS * factor }));
      const probe = { ...run.settings.probe, silenceS: 60 };
      const settings = { ...run.settings, probe };
      return { ...run, settings, entries, inputs: drawnOut, endS: 39_600 };
    }
  }
}

/** As a table of another logger comes in: written, and read again. */
function throughFile(inputs: readonly RunInput[]): readonly RunInput[] {
  const rows = inputs.flatMap((input) =>
    input.kind === 'reading' ? [`${Math.floor(input.timeS)},${input.value}`] : [],
  );
  const read = readReadingsCsv(['time_s,head_degC', ...rows].join('\n'));
  if (!read.ok) throw new Error(read.error.kind);
  return read.value.inputs;
}

/** A run at 1 Hz with its marks, and everything measured that a balance wants. */
export function carefulRun(still: Still, index: number): RunToStudy {
  const { rig: rigName, volumeMl, abv, pressureKPa, limitAbv, easedW, lateS } = still;
  const rig = teachingRigs[rigName];
  const setup = {
    charge: { volumeMl, strengthAbv: abv },
    rig,
    pressureKPa,
    roomTemperatureC: 21,
    schedule: [
      { timeS: 0, kind: 'heat-on', powerW: 130 } as const,
      { timeS: 760, kind: 'heat-eased', powerW: easedW } as const,
    ],
    leastStrengthAbv: limitAbv,
  };
  const limitS = simulateBatch(setup, { durationS: 5400 }).truth.limitReachedS ?? 3200;
  const offS = Math.max(1500, Math.round(limitS + lateS));
  const changeS = Math.round((1100 + offS) / 2);
  const endS = offS + 900;
  const batch = simulateBatch(
    {
      ...setup,
      schedule: [
        ...setup.schedule,
        { timeS: changeS, kind: 'receiver-changed' } as const,
        { timeS: offS, kind: 'heat-off' } as const,
      ],
    },
    { durationS: endS },
  );
  const probe = createProbeSignal({
    random: createRandom(`varied ${index}`),
    whiteNoiseK: 0.05,
    quantumK: 1 / 16,
    powerOnReadings: 0,
  });
  const readings = batch.samples.flatMap(({ timeS, bulbTemperatureC }): RunInput[] => {
    const value = probe.read(timeS, bulbTemperatureC);
    return value === null
      ? []
      : [{ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' }];
  });
  const receivers = batch.samples.flatMap((sample, at) =>
    batch.samples[at + 1]?.receiverIndex === sample.receiverIndex ? [] : [sample.receiver],
  );
  const marks: readonly (readonly [number, MarkBody])[] = [
    [0, { type: 'heat-on' }],
    [760, { type: 'heat-eased' }],
    [changeS, { type: 'receiver-changed', volumeMl: tenth(receivers[0]?.volumeMl) }],
    [offS, { type: 'heat-off' }],
    [endS - 100, { type: 'volume-read', volumeMl: tenth(receivers[1]?.volumeMl) }],
  ];
  const made = marks.map(
    ([timeS, mark], at): RunInput => ({ kind: 'mark', timeS, markId: at + 1, mark }),
  );
  return {
    runId: `run-${index}`,
    name: `Pear-juice ferment ${index + 1}`,
    startedAtIso: '2026-03-18T09:15:00.000Z',
    rehearsal: true,
    settings: {
      ...defaultRunSettings,
      charge: { volumeMl, strengthAbv: abv, standardUncertaintyAbv: 0.2 },
      rig: {
        ...defaultRunSettings.rig,
        plates: index % 3 === 0 ? null : Math.round(rig.plates),
      },
      pressure: { pressureKPa, standardUncertaintyKPa: 0.2, source: 'barometer', altitudeM: null },
      leastStrengthAbv: limitAbv,
      attentionCheckS: null,
    },
    appVersion: '0.1.0',
    modelVersion: '1',
    inputs: [...readings, ...made].toSorted((a, b) => a.timeS - b.timeS),
    endS,
    entries: booksOf(batch.samples.at(-1), receivers, index),
  };
}

function booksOf(
  end: { readonly potVolumeMl: number; readonly potStrengthAbv: number } | undefined,
  receivers: readonly ReceiverState[],
  index: number,
): BookEntries {
  return {
    cuts: receivers.map(({ strengthAbv }, at) => ({
      number: at + 1,
      strength: {
        by: 'alcoholometer',
        indicatedAbv: { value: tenth(strengthAbv), standardUncertainty: 0.3 },
        temperatureC: { value: 20, standardUncertainty: 0.5 },
      },
    })),
    // Some benches do not measure what is left.
    ...(index % 2 === 0
      ? {
          residue: {
            amount: {
              by: 'volume',
              volumeMl: { value: tenth(end?.potVolumeMl), standardUncertainty: 1 },
              temperatureC: { value: 20, standardUncertainty: 0.5 },
            },
            strength: {
              by: 'stated',
              strengthAbv: { value: tenth(end?.potStrengthAbv), standardUncertainty: 0.1 },
            },
          },
          sugarG: { value: 60, standardUncertainty: 1 },
        }
      : {}),
  };
}

const tenth = (value = 0) => Math.round(10 * value) / 10;
