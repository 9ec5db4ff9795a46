import { expect, test } from 'vitest';
import { createTwinFeed } from '../../../../shared-core/monitor/conclude/twin-feed.ts';
import { createMarksLedger } from '../../../../shared-core/monitor/marks-ledger.ts';
import type { MarkBody } from '../../../../shared-core/run/index.ts';
import type { Observation } from '../../../../shared-core/twin/index.ts';

/** A feed whose twins keep what they are shown. */
function feeding() {
  const marks = createMarksLedger();
  const twins: Observation[][] = [];
  let markId = 0;
  const mark = (timeS: number, body: MarkBody) => {
    markId += 1;
    marks.add({ kind: 'mark', timeS, markId, mark: body });
    return markId;
  };
  const begin = () => {
    const seen: Observation[] = [];
    twins.push(seen);
    return {
      see: (observation: Observation) => {
        seen.push(observation);
      },
      update: () => true,
      outlook: () => {
        throw new Error('Nobody looks ahead here.');
      },
    };
  };
  return { mark, twins, feed: () => createTwinFeed(begin, marks) };
}

const volume = (boiledS: number, value: number, sd: number) => ({
  kind: 'booked',
  boiledS,
  value,
  sd: expect.closeTo(sd, 9),
});

test('marks made before vapour came are no news, each later one is shown once', () => {
  const { mark, twins, feed } = feeding();
  mark(100, { type: 'volume-read', volumeMl: 2 });
  const { showMarks } = feed();
  showMarks(10, null);
  mark(700, { type: 'volume-read', volumeMl: 12 });
  // 0.5 mL on the receiver and 20 s of what flows meanwhile.
  showMarks(600, 0.03);
  showMarks(601, 0.03);
  expect(twins).toEqual([[volume(600, 12, Math.hypot(0.5, 20 * 0.03))]]);
});

test('a flow that nobody knows yet is that of the volume since boiling began, over a minute at least', () => {
  const { mark, twins, feed } = feeding();
  const { showMarks } = feed();
  mark(700, { type: 'volume-read', volumeMl: 6 });
  showMarks(30, null);
  mark(900, { type: 'volume-read', volumeMl: 12 });
  showMarks(600, null);
  expect(twins[0]).toEqual([
    volume(30, 6, Math.hypot(0.5, (20 * 6) / 60)),
    volume(600, 12, Math.hypot(0.5, (20 * 12) / 600)),
  ]);
});

test('heat eased after the heat-up and drops counted are told; other marks are not', () => {
  const { mark, twins, feed } = feeding();
  const { showMarks } = feed();
  mark(700, { type: 'heat-eased' });
  showMarks(60, null);
  mark(800, { type: 'heat-eased' });
  showMarks(61, null);
  mark(900, { type: 'drops-counted', count: 60, overS: 30 });
  mark(901, { type: 'note', text: 'clear' });
  showMarks(200, null);
  expect(twins).toEqual([
    [
      { kind: 'eased', boiledS: 61 },
      // Forty drops a millilitre, known to three parts in ten.
      { kind: 'flow', boiledS: 200, value: 60 / 40 / 30, sd: 0.3 },
    ],
  ]);
});

test('a mark that is withdrawn was never made: a new twin is shown everything else, volumes as they now add up', () => {
  const { mark, twins, feed } = feeding();
  const { show, showMarks, twin } = feed();
  const changed = mark(700, { type: 'receiver-changed', volumeMl: 5 });
  showMarks(100, 0.03);
  show({ kind: 'head', boiledS: 120, value: 0.7, sd: 0.05 });
  mark(900, { type: 'volume-read', volumeMl: 4 });
  showMarks(300, 0.03);
  const first = twin();
  mark(1000, { type: 'mark-withdrawn', withdrawnMarkId: changed });
  showMarks(400, 0.03);
  const sd = Math.hypot(0.5, 20 * 0.03);
  const measured = { kind: 'head', boiledS: 120, value: 0.7, sd: 0.05 };
  expect(twins).toEqual([
    [volume(100, 5, sd), measured, volume(300, 9, sd)],
    [measured, volume(300, 4, sd)],
  ]);
  expect(twin()).not.toBe(first);
});

test('one mark that is withdrawn makes one new twin, which is shown what is marked later', () => {
  const { mark, twins, feed } = feeding();
  const { showMarks } = feed();
  const mistaken = mark(700, { type: 'volume-read', volumeMl: 60 });
  showMarks(100, 0.03);
  mark(800, { type: 'mark-withdrawn', withdrawnMarkId: mistaken });
  showMarks(200, 0.03);
  mark(900, { type: 'volume-read', volumeMl: 6 });
  showMarks(300, 0.03);
  const sd = Math.hypot(0.5, 20 * 0.03);
  expect(twins).toEqual([[volume(100, 60, sd)], [volume(300, 6, sd)]]);
});

test('a receiver that went away unmeasured is told with what had been booked, anew where a mark before it is withdrawn', () => {
  const { mark, twins, feed } = feeding();
  const { showMarks } = feed();
  const first = mark(700, { type: 'receiver-changed', volumeMl: 5 });
  showMarks(100, 0.03);
  mark(800, { type: 'receiver-changed', volumeMl: null });
  showMarks(200, 0.03);
  mark(1000, { type: 'volume-read', volumeMl: 7 });
  showMarks(400, 0.03);
  const sd = Math.hypot(0.5, 20 * 0.03);
  const away = (bookedMl: number) => ({ kind: 'taken-away', boiledS: 200, bookedMl });
  expect(twins).toEqual([[volume(100, 5, sd), away(5), volume(400, 12, sd)]]);
  mark(1100, { type: 'mark-withdrawn', withdrawnMarkId: first });
  showMarks(500, 0.03);
  expect(twins[1]).toEqual([away(0), volume(400, 7, sd)]);
});

test('a withdrawn mark had misled the twin from its own time on, whatever stands that was shown earlier', () => {
  const { mark, feed } = feeding();
  const { show, showMarks, takeMistakenFromS } = feed();
  show({ kind: 'head', boiledS: 100, value: 0.7, sd: 0.05 });
  mark(700, { type: 'volume-read', volumeMl: 6 });
  showMarks(300, 0.03);
  const mistaken = mark(900, { type: 'volume-read', volumeMl: 60 });
  showMarks(500, 0.03);
  mark(1000, { type: 'mark-withdrawn', withdrawnMarkId: mistaken });
  showMarks(600, 0.03);
  expect(takeMistakenFromS()).toBe(500);
});

test('who asks learns once from which time of boiling on withdrawn marks had misled the twin', () => {
  const { mark, feed } = feeding();
  const { showMarks, takeMistakenFromS } = feed();
  const first = mark(700, { type: 'volume-read', volumeMl: 6 });
  showMarks(300, 0.03);
  const second = mark(900, { type: 'volume-read', volumeMl: 12 });
  showMarks(500, 0.03);
  expect(takeMistakenFromS()).toBeNull();
  mark(1000, { type: 'mark-withdrawn', withdrawnMarkId: second });
  showMarks(600, 0.03);
  mark(1010, { type: 'mark-withdrawn', withdrawnMarkId: first });
  showMarks(610, 0.03);
  expect([takeMistakenFromS(), takeMistakenFromS()]).toEqual([300, null]);
});
