import { describe, expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { chargeDoubtHints } from '../../../renderer/draft/charge-doubt-hints.ts';
import {
  correctionOf,
  nothingStated,
  statedDraftOf,
  statedFrom,
} from '../../../renderer/take-in/stated-draft.ts';

const typed = { ...nothingStated, volumeMl: '250', strengthAbv: '11,5', pressureKPa: '99.4' };

describe('what is said of a table that is taken in', () => {
  test('is asked: nothing is taken over from elsewhere', () => {
    const stated = statedFrom(nothingStated, defaultRunSettings);
    expect(stated.ok ? [] : Object.keys(stated.error)).toEqual([
      'volumeMl',
      'strengthAbv',
      'pressureKPa',
    ]);
  });

  test('becomes charge, pressure and rig, with either decimal sign', () => {
    const stated = statedFrom(
      { ...typed, rigDescription: ' beads ', plates: '5' },
      defaultRunSettings,
    );
    expect(stated.ok && stated.value).toMatchObject({
      charge: { volumeMl: 250, strengthAbv: 11.5 },
      pressure: { pressureKPa: 99.4, source: 'barometer' },
      rig: { description: 'beads', plates: 5 },
    });
  });
});

describe('the uncertainty of a charge', () => {
  const chargeOf = (doubts: Partial<typeof typed>) => {
    const stated = statedFrom({ ...typed, ...doubts }, defaultRunSettings);
    return stated.ok ? stated.value.charge : Object.keys(stated.error);
  };

  test('is the usual one where none is stated, and the stated one where one is', () => {
    expect(chargeOf({})).toEqual({ volumeMl: 250, strengthAbv: 11.5, standardUncertaintyAbv: 0.5 });
    expect(chargeOf({ volumeDoubtMl: '2,5', strengthDoubtAbv: '0.2' })).toEqual({
      volumeMl: 250,
      strengthAbv: 11.5,
      standardUncertaintyAbv: 0.2,
      standardUncertaintyMl: 2.5,
    });
    expect(chargeOf({ volumeDoubtMl: 'some' })).toEqual(['volumeDoubtMl']);
  });

  test('that is usual is shown for the volume as typed', () => {
    const words = {
      quantity: (value: number, digits: number, unit: string) => `${value.toFixed(digits)} ${unit}`,
    };
    expect(chargeDoubtHints('350', words)).toEqual({
      volume: 'Standard uncertainty (k = 1); empty: 1.8 mL.',
      strength: 'Standard uncertainty (k = 1); empty: 0.5 % vol.',
    });
  });
});

describe('a correction', () => {
  test('holds only what was changed and needs a reason', () => {
    const same = statedDraftOf(defaultRunSettings, ',');
    const unchanged = statedFrom(same, defaultRunSettings);
    if (!unchanged.ok) throw new Error('not read');
    expect(correctionOf(unchanged.value, defaultRunSettings, 'why')).toBe(null);
    const stated = statedFrom({ ...same, volumeMl: '300' }, defaultRunSettings);
    if (!stated.ok) throw new Error('not read');
    expect(correctionOf(stated.value, defaultRunSettings, ' ')).toBe(null);
    expect(correctionOf(stated.value, defaultRunSettings, 'misread')).toEqual({
      charge: { ...defaultRunSettings.charge, volumeMl: 300 },
      reason: 'misread',
    });
  });
});
