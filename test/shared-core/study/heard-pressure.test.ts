import { describe, expect, test } from 'vitest';
import { defaultRunSettings, type RunInput } from '#shared-core';
import { createMonitor } from '../../../shared-core/monitor/create-monitor.ts';
import { headCourse } from '../../../shared-core/study/head-course.ts';

const reading = (channel: string, timeS: number, value: number): RunInput => ({
  kind: 'reading',
  timeS,
  channel,
  value,
  unit: channel === 'air-pressure' ? 'kPa' : '°C',
  quality: 'good',
});

/** Five minutes with a barometer on the line that fails after the second. */
const inputs: RunInput[] = Array.from({ length: 300 }, (_, timeS) => [
  reading('head', timeS, 21),
  reading('air-pressure', timeS, timeS < 120 ? 94.2 : 61),
]).flat();

const settingsFrom = (source: 'assumed' | 'barometer') => ({
  ...defaultRunSettings,
  pressure: { ...defaultRunSettings.pressure, source },
});

describe('the air pressure that a finished run is worked through by', () => {
  test.each(['assumed', 'barometer'] as const)(
    'is the one by which it was watched (%s, with a barometer on the line that fails)',
    (source) => {
      const settings = settingsFrom(source);
      const monitor = createMonitor(settings);
      for (const input of inputs) monitor.push(input);
      const watchedKPa = monitor.advanceTo(300).plateau.pressureKPa;
      const workedKPa = headCourse({ settings, inputs, endS: 300 }).map((row) => row.pressureKPa);
      expect(new Set(workedKPa)).toEqual(new Set([watchedKPa]));
      expect(watchedKPa).toBe(source === 'assumed' ? 94.2 : settings.pressure.pressureKPa);
    },
  );

  test('follows what a person reads in the run', () => {
    const read = { type: 'pressure-read', pressureKPa: 97 } as const;
    const mark: RunInput = { kind: 'mark', timeS: 200, markId: 1, mark: read };
    const settings = settingsFrom('assumed');
    const rows = headCourse({ settings, inputs: [...inputs, mark], endS: 300 });
    expect([rows.at(100)?.pressureKPa, rows.at(250)?.pressureKPa]).toEqual([94.2, 97]);
  });
});
