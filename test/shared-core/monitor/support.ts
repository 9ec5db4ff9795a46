import {
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  type MarkBody,
  pearFermentSetup,
  type RunInput,
  type RunSettings,
  simulateBatch,
  teachingRigs,
} from '#shared-core';
import type { BatchEvent } from '../../../shared-core/column/batch-event.ts';
import type { ProbeFlaws } from '../../../shared-core/column/create-probe-signal.ts';

/** What the monitor is told of the pear ferment at 99.4 kPa. */
export const pearSettings: RunSettings = {
  ...defaultRunSettings,
  charge: { volumeMl: 330, strengthAbv: 10.5, standardUncertaintyAbv: 0.3 },
  pressure: {
    pressureKPa: 99.4,
    standardUncertaintyKPa: 1,
    source: 'barometer',
    altitudeM: null,
  },
  attentionCheckS: null,
};

/** A bench with a good barometer at 98.6 kPa, and nobody who answers. */
export const barometerSettings = {
  ...defaultRunSettings,
  attentionCheckS: null,
  pressure: {
    pressureKPa: 98.6,
    standardUncertaintyKPa: 0.1,
    source: 'barometer',
    altitudeM: null,
  },
  /** Somebody looked how the bulb hangs. */
  safetyConfirms: [{ check: 'bulb', role: 'technician' }],
} as const satisfies RunSettings;

export function head(timeS: number, value: number): RunInput {
  return { kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' };
}

export function mark(timeS: number, markId: number, body: MarkBody): RunInput {
  return { kind: 'mark', timeS, markId, mark: body };
}

export interface Scenario {
  readonly rig?: keyof typeof teachingRigs;
  readonly extraEvents?: readonly BatchEvent[];
  readonly strengthAbv?: number;
  readonly durationS: number;
  readonly flaws?: Partial<ProbeFlaws>;
}

/** Readings of a simulated pear ferment, once a second. */
export function simulatedReadings(scenario: Scenario): RunInput[] {
  const base = pearFermentSetup();
  const schedule = [...(base.schedule ?? []), ...(scenario.extraEvents ?? [])].sort(
    (a, b) => a.timeS - b.timeS,
  );
  const { samples } = simulateBatch(
    {
      ...base,
      rig: teachingRigs[scenario.rig ?? 'glassBeads'],
      charge: { ...base.charge, strengthAbv: scenario.strengthAbv ?? 10.5 },
      schedule,
    },
    { durationS: scenario.durationS },
  );
  const probe = createProbeSignal({
    random: createRandom('scenario'),
    whiteNoiseK: 0.04,
    slowNoiseK: 0.04,
    ...scenario.flaws,
  });
  return samples.flatMap(({ timeS, bulbTemperatureC }) => {
    const value = probe.read(timeS, bulbTemperatureC);
    return value === null ? [] : [head(timeS, value)];
  });
}
