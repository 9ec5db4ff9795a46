import { describe, expect, test } from 'vitest';
import {
  heatOffAt,
  leavesPlateau,
  shownLimitC,
  vapourArrives,
} from '../../../shared-core/exercises/curve-facts.ts';
import { headRows, mark, plainHeadC, plainInputs, plainStudy } from './support/plain-study.ts';

const plain = plainStudy();
const arrivesWith = (headAtC: (timeS: number) => number) =>
  vapourArrives({ ...plain, rows: headRows(headAtC, 4200) });

describe('when vapour arrives', () => {
  test('is the first row at 60 °C, read to a fortieth of the run', () => {
    expect(arrivesWith((timeS) => (timeS < 700 ? 59.9 : 60))).toEqual({
      timeS: 700,
      toleranceS: 4200 / 40,
    });
  });

  test('is not when a breath of it passes, but when it stays for two minutes', () => {
    const breath = (lengthS: number) =>
      arrivesWith((timeS) => (timeS >= 1500 || (timeS >= 700 && timeS < 700 + lengthS) ? 78 : 20))
        ?.timeS;
    expect([breath(120), breath(130)]).toEqual([1500, 700]);
  });

  test('is not seen where it never comes, or was there before', () => {
    expect(arrivesWith(() => 59)).toBeNull();
    expect(arrivesWith(() => 78)).toBeNull();
    expect(vapourArrives({ ...plain, rows: [] })).toBeNull();
  });
});

describe('when the head leaves the plateau', () => {
  const offAt = (offS: number) => ({
    ...plain,
    inputs: [...plainInputs.slice(0, -2), mark(offS, { type: 'heat-off' })],
  });
  const leavesWith = (headAtC: (timeS: number) => number) =>
    leavesPlateau({ ...plain, rows: headRows(headAtC, 4200) });

  test('is when it was last at the limit as printed', () => {
    // 82.7 °C for 80 % vol at 98.3 kPa; a kelvin a minute from 78.4 °C at 3000 s: passed at 3258 s.
    expect(shownLimitC(plain)).toBe(82.7);
    expect(leavesPlateau(plain)).toEqual({ timeS: 3250, toleranceS: (4200 - 900) / 40 });
    expect([
      shownLimitC({ ...plain, plateau: null }),
      leavesPlateau({ ...plain, plateau: null }),
    ]).toEqual([null, null]);
  });

  test('is asked for only where two minutes of the tail are seen', () => {
    expect([leavesPlateau(offAt(3369)), leavesPlateau(offAt(3370))?.timeS]).toEqual([null, 3250]);
  });

  test('is not told by the head that cools, nor by one before the plateau', () => {
    const cools = (timeS: number) => (timeS > 3900 ? 20 : plainHeadC(timeS));
    expect(leavesWith(cools)?.timeS).toBe(3250);
    expect(leavesPlateau({ ...plain, rows: headRows(() => 90, 4200) })).toBeNull();
  });

  test('without a mark is told while the head is hot', () => {
    const inputs = plainInputs.slice(0, 1);
    const cools = (timeS: number) => (timeS > 3400 ? 20 : plainHeadC(timeS));
    const leaves = (hotUntilS: number) =>
      leavesPlateau({
        ...plain,
        inputs,
        rows: headRows((timeS) => (timeS > hotUntilS ? 20 : plainHeadC(timeS)), 4200),
      });
    expect(leavesPlateau({ ...plain, inputs, rows: headRows(cools, 4200) })?.timeS).toBe(3250);
    expect([leaves(3360), leaves(3370)?.timeS]).toEqual([null, 3250]);
  });

  test('is the vaguer the slower, and not asked for beyond an eighth of the curve', () => {
    const toleranceS = (perMinuteK: number) =>
      leavesPlateau({
        ...offAt(4200),
        rows: headRows((timeS) => 82.699 + ((timeS - 3600) / 60) * perMinuteK, 4200),
      })?.toleranceS;
    // Half a kelvin to either side takes 400 s and 429 s; the curve shows 3300 s, an eighth of which is 412 s.
    expect([toleranceS(0.075), toleranceS(0.07)]).toEqual([expect.closeTo(400, -1), undefined]);
  });

  test('is as vague as the time since the plateau ended, where that came within half a kelvin of the limit', () => {
    // 82.6 °C at 3000 s; 83.2 °C after another 360 s.
    const leaves = leavesWith((timeS) => 82.599 + Math.max(0, timeS - 3000) / 600);
    expect(leaves?.toleranceS).toBe(180);
  });

  test('of a short curve is read to half a minute at best', () => {
    const quick = (timeS: number) => (timeS <= 1000 ? 78.4 : 78.4 + (timeS - 1000) / 10);
    const statistics = { ...plain.plateau!.statistics, span: { fromS: 950, toS: 1000 } };
    const study = {
      ...plain,
      plateau: { ...plain.plateau!, statistics },
      rows: headRows(quick, 1500),
      endS: 1500,
      inputs: [],
    };
    // The last at 82.7 °C was the row at 1040 s; a fortieth of 600 s is 15 s.
    expect(leavesPlateau(study)).toEqual({ timeS: 1040, toleranceS: 30 });
  });
});

test('heat is off by the last word of the marks', () => {
  const off = (...marks: Parameters<typeof mark>[]) =>
    heatOffAt({ ...plain, inputs: marks.map((one) => mark(...one)) });
  expect([
    off([10, { type: 'heat-on' }], [500, { type: 'heat-off' }], [600, { type: 'note', text: '' }]),
    // Who eases a flame has one.
    off([10, { type: 'heat-on' }], [500, { type: 'heat-off' }], [600, { type: 'heat-eased' }]),
    off([500, { type: 'heat-off' }], [600, { type: 'heat-on' }]),
    off([500, { type: 'heat-off' }], [600, { type: 'heat-on' }], [700, { type: 'heat-off' }]),
    off([500, { type: 'heat-off' }], [510, { type: 'mark-withdrawn', withdrawnMarkId: 501 }]),
    off(),
  ]).toEqual([500, null, null, 700, null, null]);
});
