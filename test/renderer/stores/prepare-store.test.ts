import { expect, test } from 'vitest';
import { firstDraft, withConfirms } from '../../../renderer/stores/prepare-draft.ts';
import { createPrepareStore } from '../../../renderer/stores/prepare-store.ts';

function storage(kept = new Map<string, string>()) {
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

test('what was typed outlives a reload; the checks, made for one run, do not', () => {
  const kept = storage();
  const before = createPrepareStore(kept).getState();
  before.change({
    pressureFrom: 'barometer',
    stationPressure: '98',
    chargeVolumeMl: '500',
    leastStrengthAbv: '75',
  });
  const correction = { offsetK: -0.2, gain: 1.002, standardUncertaintyK: 0.06 };
  const { draft, replace } = createPrepareStore(kept).getState();
  replace(withConfirms({ ...draft, correction }, ['attended'], true, '2026-03-18T09:15:00.000Z'));
  expect(createPrepareStore(kept).getState().draft).toEqual({
    ...firstDraft,
    pressureFrom: 'barometer',
    stationPressure: '98',
    chargeVolumeMl: '500',
    leastStrengthAbv: '75',
    correction,
  });
});

test('a damaged or foreign entry in the storage means starting from nothing', () => {
  for (const stored of ['{', '{"name":5}', '[]', 'null']) {
    const kept = storage(new Map([['prepare-draft', stored]]));
    expect(createPrepareStore(kept).getState().draft).toEqual(firstDraft);
  }
});

test('an entry kept before steam could be read still opens', () => {
  const kept = new Map<string, string>();
  createPrepareStore(storage(kept)).getState().change({ chargeVolumeMl: '420' });
  const { steamReading: _, steamTaken: __, ...older } = JSON.parse(kept.get('prepare-draft') ?? '');
  kept.set('prepare-draft', JSON.stringify(older));
  expect(createPrepareStore(storage(kept)).getState().draft).toEqual({
    ...firstDraft,
    chargeVolumeMl: '420',
  });
});
