import { beforeAll, describe, expect, test } from 'vitest';
import { pearFermentSetup, simulateBatch, studyRun } from '#shared-core';
import { type Film, frameIndexAt } from '../../../renderer/replay/film.ts';
import type { RunView } from '../../../renderer/stores/index.ts';
import type { BatchRun } from '../../../shared-core/column/simulate-batch.ts';
import { stillMomentAt } from '../../../shared-core/diagram/still-moment.ts';
import { filmOf, simulatedRecord } from '../../renderer/support/simulated-film.ts';

let film: Film;
let truth: BatchRun;

beforeAll(async () => {
  film = await filmOf(simulatedRecord({ name: 'pear', pressureKPa: 99.4, seed: 1 }));
  truth = simulateBatch({ ...pearFermentSetup(), pressureKPa: 99.4 }, { durationS: 2600 });
});

function viewAt(timeS: number): RunView {
  const view = film.frames[frameIndexAt(film, timeS)];
  if (view === undefined) throw new Error('no frame');
  return view;
}

describe('stillMomentAt', () => {
  test('holds the true pot and head of a simulated run within its intervals', () => {
    const later = viewAt(2800);
    for (const atS of [1300, 1900, 2500]) {
      const sample = truth.samples[atS];
      const { pot, vapour } = stillMomentAt(later, atS);
      expect(pot?.basis).toBe('pot-probe');
      expect(pot?.strengthAbv.low).toBeLessThan(sample?.potStrengthAbv ?? 0);
      expect(pot?.strengthAbv.high).toBeGreaterThan(sample?.potStrengthAbv ?? 0);
      expect(vapour?.strengthAbv.low).toBeLessThan(sample?.headVapourStrengthAbv ?? 0);
      expect(vapour?.strengthAbv.high).toBeGreaterThan(sample?.headVapourStrengthAbv ?? 0);
    }
  });

  test('at the present, head and vapour are what the monitor says', () => {
    const view = viewAt(1900);
    const { headC, vapour } = stillMomentAt(view, 1900);
    expect(vapour?.strengthAbv).toEqual(view.snapshot?.vapour?.alcoholByVolume);
    expect(headC?.value).toBe(view.snapshot?.head?.temperatureC);
  });

  test.each([
    ['as good as stated', 0],
    ['that reads 1.5 K high', 1.5],
  ])(
    'at any moment the strength and its interval are those of the report, with a probe %s',
    async (_, readsHighK) => {
      const record = simulatedRecord({ name: 'pear', pressureKPa: 99.4, seed: 1 });
      const inputs = record.inputs.map((input) =>
        input.kind === 'reading' && input.channel === 'head'
          ? { ...input, value: input.value + readsHighK }
          : input,
      );
      const last = (await filmOf({ ...record, inputs })).frames.at(-1)!;
      const { settings, name } = record.identity;
      const { rows, books } = studyRun({
        runId: name,
        name,
        startedAtIso: '2026-03-18T09:15:00.000Z',
        rehearsal: false,
        settings,
        appVersion: '0.1.0',
        modelVersion: '1',
        inputs,
        endS: record.endS,
      });
      expect(rows.filter(({ vapourAbv }) => vapourAbv !== null).length).toBeGreaterThan(1500);
      const asked = rows.filter((_row, index) => index % 7 === 0);
      expect(
        asked.map(({ timeS }) => stillMomentAt(last, timeS).vapour?.strengthAbv ?? null),
      ).toEqual(asked.map(({ vapourAbv }) => vapourAbv));
      // What the last drops after the heat weigh is left to the books.
      const { meanStrengthAbv } = stillMomentAt(last, record.endS).recovery.at(-1)!;
      const whole = books.product!.strengthAbv;
      for (const end of ['value', 'low', 'high'] as const) {
        expect(Math.abs(meanStrengthAbv[end] - whole[end])).toBeLessThan(0.1);
      }
    },
  );

  test('shortly before the present, the vapour is as strong as the monitor says of it now', async () => {
    const record = simulatedRecord({ name: 'pear', pressureKPa: 99.4, seed: 1 });
    // A probe that reads 1.5 K high, as the monitor finds out while the head holds.
    const inputs = record.inputs.map((input) =>
      input.kind === 'reading' && input.channel === 'head'
        ? { ...input, value: input.value + 1.5 }
        : input,
    );
    const high = await filmOf({ ...record, inputs });
    const view = high.frames[frameIndexAt(high, 1900)];
    if (view === undefined) throw new Error('no frame');
    const now = view.snapshot?.vapour?.alcoholByVolume;
    const { vapour } = stillMomentAt(view, 1890);
    expect(vapour?.strengthAbv.value).toBeGreaterThan(now?.low ?? 100);
    expect(vapour?.strengthAbv.value).toBeLessThan(now?.high ?? 0);
  });

  test('before vapour arrives the pot is the charge, and there is neither vapour nor reflux', () => {
    const { stage, pot, vapour, reflux, recovery } = stillMomentAt(viewAt(300), 300);
    expect([stage, pot?.basis, vapour, reflux, recovery]).toEqual([
      'warm-up',
      'as-charged',
      null,
      null,
      [],
    ]);
  });

  test('estimates recovery from the bookings, with the true share inside its interval', () => {
    const { recovery } = stillMomentAt(viewAt(2500), 2500);
    const end = recovery[recovery.length - 1];
    const sample = truth.samples[end?.timeS ?? 0];
    const share =
      ((sample?.receiver.volumeMl ?? 0) * (sample?.receiver.strengthAbv ?? 0)) / (250 * 11);
    expect(end?.recovery.low).toBeLessThan(share);
    expect(end?.recovery.high).toBeGreaterThan(share);
  });

  test('without a pot probe the balance tells of the pot, and without bookings nothing does', () => {
    const { pot: _, ...tracks } = viewAt(2500).tracks;
    const unprobed: RunView = { ...viewAt(2500), tracks, snapshot: null };
    expect(stillMomentAt(unprobed, 2500).pot?.basis).toBe('balance');
    expect(stillMomentAt({ ...unprobed, marks: [] }, 2500).pot).toBe(null);
  });

  test('a withdrawn booking counts neither for rate nor for recovery', () => {
    const view = viewAt(2800);
    const withdrawn = view.marks.map(({ markId }, index) => ({
      kind: 'mark' as const,
      timeS: 2700,
      markId: 100 + index,
      mark: { type: 'mark-withdrawn' as const, withdrawnMarkId: markId },
    }));
    const moment = stillMomentAt({ ...view, marks: [...view.marks, ...withdrawn] }, 2790);
    expect([moment.bookings, moment.dripRateMlPerMin, moment.recovery]).toEqual([[], null, []]);
  });
});
