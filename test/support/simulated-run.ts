import {
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  type MarkBody,
  pearFermentSetup,
  type Reading,
  type RunInput,
  type RunSettings,
  simulateBatch,
} from '#shared-core';

export interface SimulatedRun {
  readonly name: string;
  readonly pressureKPa: number;
  readonly seed: number;
}

/** Simulates a careful run of the pear ferment, pot probe and bookings included. */
export function simulatedRun({ name, pressureKPa, seed }: SimulatedRun): {
  readonly settings: RunSettings;
  readonly inputs: readonly RunInput[];
  readonly endS: number;
} {
  const setup = { ...pearFermentSetup(), pressureKPa };
  const uncut = simulateBatch(setup, {
    durationS: 4800,
    stopWhen: (state) => state.distillateVolumeMl > 5 && state.headVapourStrengthAbv < 78,
  });
  const limitS = uncut.truth.limitReachedS ?? 3000;
  const offS = Math.round(limitS) + 20;
  const endS = offS + 480;
  const schedule = [...(setup.schedule ?? []), { timeS: offS, kind: 'heat-off' as const }];
  const { samples, truth } = simulateBatch({ ...setup, schedule }, { durationS: endS });
  const probe = createProbeSignal({ random: createRandom(seed), whiteNoiseK: 0.04, biasK: 0.05 });
  const arrivedS = Math.round(truth.vapourArrivalS ?? 900);
  const volumeAt = (timeS: number) => samples[timeS]?.distillateVolumeMl ?? 0;
  const marks: (readonly [number, MarkBody])[] = [
    [1, { type: 'heat-on' }],
    [760, { type: 'heat-eased' }],
    ...[300, 700, 1100, 1500].flatMap((afterS): [number, MarkBody][] => {
      const timeS = arrivedS + afterS;
      return timeS < offS - 60
        ? [[timeS, { type: 'volume-read', volumeMl: Math.round(volumeAt(timeS) * 2) / 2 }]]
        : [];
    }),
    [offS, { type: 'heat-off' }],
    [offS + 60, { type: 'receiver-changed', volumeMl: Math.round(volumeAt(offS + 60) * 2) / 2 }],
  ];
  const reading = (timeS: number, channel: string, value: number): Reading => ({
    kind: 'reading',
    timeS,
    channel,
    value,
    unit: '°C',
    quality: 'good',
  });
  const readings = samples.flatMap((sample): Reading[] => {
    const head = probe.read(sample.timeS, sample.bulbTemperatureC);
    if (head === null) return [];
    const pot = Math.round(sample.potTemperatureC * 10) / 10;
    return [
      reading(sample.timeS, 'head', Math.round(head * 100) / 100),
      ...(sample.timeS % 5 === 0 ? [reading(sample.timeS, 'pot', pot)] : []),
    ];
  });
  const made = marks.map(
    ([timeS, mark], index): RunInput => ({ kind: 'mark', timeS, markId: index + 1, mark }),
  );
  return {
    settings: {
      ...defaultRunSettings,
      name,
      charge: { volumeMl: 250, strengthAbv: 11, standardUncertaintyAbv: 0.5 },
      rig: { description: 'wire packing', plates: 6, heatW: 64, columnLossW: 30 },
      pressure: {
        pressureKPa,
        standardUncertaintyKPa: 0.3,
        source: 'barometer',
        altitudeM: null,
      },
      attentionCheckS: null,
    },
    inputs: [...readings, ...made].toSorted((a, b) => a.timeS - b.timeS),
    endS,
  };
}
