import { describe, expect, test } from 'vitest';
import { createMarksLedger } from '../../../shared-core/monitor/marks-ledger.ts';
import type { MarkBody } from '../../../shared-core/run/mark.ts';

type Timed = readonly [timeS: number, mark: MarkBody];

/** A ledger with these marks, numbered from 1. */
function ledger(...marks: readonly Timed[]) {
  const made = createMarksLedger();
  for (const [index, [timeS, mark]] of marks.entries()) {
    made.add({ kind: 'mark', timeS, markId: index + 1, mark });
  }
  return made;
}
const withdrawn = (withdrawnMarkId: number): MarkBody => ({
  type: 'mark-withdrawn',
  withdrawnMarkId,
});
const volume = (volumeMl: number): MarkBody => ({ type: 'volume-read', volumeMl });

describe('what the marks say of the heat', () => {
  test('is unknown before the first, and then what the last says', () => {
    const none = ledger();
    expect([none.heat(), none.heatChangedS()]).toEqual(['unknown', null]);
    const marks = ledger(
      [10, { type: 'heat-off' }],
      [20, { type: 'heat-eased' }],
      [30, { type: 'heat-on' }],
      [40, { type: 'heat-off' }],
    );
    expect([marks.heat(), marks.heatChangedS()]).toEqual(['off', 40]);
    expect([5, 10, 20, 30, 45].map((timeS) => marks.heatUntil(timeS))).toEqual([
      { heat: 'unknown', firstOnS: null },
      { heat: 'off', firstOnS: null },
      { heat: 'eased', firstOnS: 20 },
      { heat: 'on', firstOnS: 20 },
      { heat: 'off', firstOnS: 20 },
    ]);
  });

  test('is as before once the last is withdrawn, though a mark was made', () => {
    const marks = ledger([10, { type: 'heat-on' }], [20, { type: 'heat-off' }], [30, withdrawn(2)]);
    expect([marks.heat(), marks.heatChangedS()]).toEqual(['on', 10]);
    expect(marks.standing()).toEqual([{ timeS: 10, markId: 1, body: { type: 'heat-on' } }]);
  });
});

describe('what the marks say of the distillate', () => {
  test('adds up receivers and the last reading of the present one, a mass at the density of 90 % vol', () => {
    const marks = ledger(
      [100, volume(3)],
      [200, { type: 'receiver-changed', volumeMl: 5 }],
      [300, { type: 'mass-read', massG: 8.29 }],
      [400, { type: 'receiver-changed', volumeMl: null }],
      [500, volume(2)],
      [600, { type: 'note', text: 'pear' }],
    );
    expect(marks.bookings()).toEqual([
      { markId: 1, timeS: 100, collectedMl: 3 },
      { markId: 2, timeS: 200, collectedMl: 5 },
      { markId: 3, timeS: 300, collectedMl: expect.closeTo(15, 9) },
      { markId: 5, timeS: 500, collectedMl: expect.closeTo(17, 9) },
    ]);
    // The second receiver went away without a volume: what came after its reading nobody knows.
    expect(marks.takenAway()).toEqual([
      { markId: 4, timeS: 400, collectedMl: expect.closeTo(15, 9) },
    ]);
    expect([marks.collectedMl(), marks.collectedS()]).toEqual([expect.closeTo(17, 9), 500]);
    expect([ledger().collectedMl(), ledger().collectedS(), ledger().bookings()]).toEqual([
      null,
      null,
      [],
    ]);
  });

  test('takes back what followed from a mark that is withdrawn', () => {
    const marks = ledger(
      [100, volume(3)],
      [200, { type: 'receiver-changed', volumeMl: 50 }],
      [300, volume(2)],
      [400, withdrawn(2)],
    );
    expect(marks.collectedMl()).toBe(2);
  });

  test('counts drops', () => {
    const drops: MarkBody = { type: 'drops-counted', count: 30, overS: 60 };
    expect(ledger([10, drops], [20, { ...drops, count: 12 }]).dropsCounted()).toBe(42);
    expect(ledger([10, drops], [20, withdrawn(1)]).dropsCounted()).toBe(0);
  });

  test('says that nothing comes where readings two minutes apart are the same to a quarter of a millilitre', () => {
    const isStill = (...marks: readonly Timed[]) => ledger(...marks).isReceiverStill();
    expect(isStill([100, volume(3)])).toBe(false);
    expect(isStill([100, volume(3)], [219, volume(3)])).toBe(false);
    expect(isStill([100, volume(3)], [220, volume(3.2)])).toBe(true);
    expect(isStill([100, volume(3)], [220, volume(3.25)])).toBe(false);
    expect(isStill([100, volume(3)], [160, volume(3.5)], [220, volume(3.5)])).toBe(false);
    expect(isStill([100, volume(3)], [160, volume(3.1)], [220, volume(3.1)])).toBe(true);
  });

  test('is no longer still once drops were counted', () => {
    const drops: Timed = [230, { type: 'drops-counted', count: 3, overS: 60 }];
    const still: readonly Timed[] = [
      [100, volume(3)],
      [220, volume(3)],
    ];
    expect(ledger(...still, drops).isReceiverStill()).toBe(false);
    expect(ledger(...still, drops, [240, volume(3)]).isReceiverStill()).toBe(false);
    expect(ledger(...still, drops, [240, volume(3)], [360, volume(3)]).isReceiverStill()).toBe(
      true,
    );
  });
});

test('what a barometer showed last is the air pressure, until that is withdrawn', () => {
  const read = (pressureKPa: number): MarkBody => ({ type: 'pressure-read', pressureKPa });
  expect(ledger().airPressureKPa()).toBeNull();
  expect(ledger([10, read(98)], [20, read(97)]).airPressureKPa()).toBe(97);
  expect(ledger([10, read(98)], [20, read(97)], [30, withdrawn(2)]).airPressureKPa()).toBe(98);
});
