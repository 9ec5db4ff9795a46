import { describe, expect, test } from 'vitest';
import { defaultRunSettings, type Mark, type MarkBody, type RunInput } from '#shared-core';
import { heardPressure } from '../../../shared-core/monitor/heard-pressure.ts';
import { pressureAfter } from '../../../shared-core/monitor/pressure-after.ts';

const { pressure } = defaultRunSettings;
const marked = (...marks: readonly MarkBody[]): readonly Mark[] =>
  marks.map((mark, index) => ({ kind: 'mark', timeS: index, markId: index + 1, mark }));
const read = (pressureKPa: number): MarkBody => ({ type: 'pressure-read', pressureKPa });

describe('the air pressure once people have read a barometer', () => {
  test('is that of the last one that stands and can be', () => {
    expect(pressureAfter(pressure, marked(read(98), read(97), { type: 'heat-on' }))).toEqual({
      ...pressure,
      pressureKPa: 97,
      standardUncertaintyKPa: 0.3,
      source: 'barometer',
    });
    const withdrawn = marked(read(98), read(97), { type: 'mark-withdrawn', withdrawnMarkId: 2 });
    expect(pressureAfter(pressure, withdrawn).pressureKPa).toBe(98);
    expect(pressureAfter(pressure, marked(read(98), read(51))).pressureKPa).toBe(98);
    expect(pressureAfter(pressure, marked({ type: 'heat-on' }))).toBe(pressure);
  });

  test('is known no worse than it was before', () => {
    const exact = { ...pressure, standardUncertaintyKPa: 0.1 };
    expect(pressureAfter(exact, marked(read(98))).standardUncertaintyKPa).toBe(0.1);
  });
});

describe('the air pressure that a barometer on the line has shown', () => {
  const line = (
    valueKPa: number,
    channel = 'air-pressure',
    quality: 'good' | 'bad' = 'good',
  ): readonly RunInput[] =>
    Array.from({ length: 120 }, (_, timeS) => ({
      kind: 'reading',
      timeS,
      channel,
      value: valueKPa,
      unit: 'kPa',
      quality,
    }));

  test('fills in what nobody read, by good readings of that channel', () => {
    expect(heardPressure(pressure, line(94.2))).toMatchObject({
      pressureKPa: 94.2,
      source: 'channel',
    });
    expect(heardPressure(pressure, line(94.2, 'air-pressure', 'bad'))).toBe(pressure);
    expect(heardPressure(pressure, line(94.2, 'head'))).toBe(pressure);
    expect(heardPressure(pressure, line(94.2).slice(0, 10))).toBe(pressure);
  });

  test('takes no place of what a person read, and that of an altitude only within its weather', () => {
    const known = { ...pressure, source: 'barometer' } as const;
    expect(heardPressure(known, line(94.2))).toBe(known);
    const high = {
      ...pressure,
      pressureKPa: 95,
      standardUncertaintyKPa: 1,
      source: 'altitude',
    } as const;
    expect(heardPressure(high, line(97.9)).pressureKPa).toBe(97.9);
    expect(heardPressure(high, line(98.1))).toBe(high);
  });
});
