import { expect, test } from 'vitest';
import { bookTables, cutsByVolumeTable, type Mark, type MarkBody, studyRun } from '#shared-core';
import { pearRun } from '../report/support/pear-run.ts';

/*
 * One receiver, read now and then, and a strength that nobody measured: the books and the view against volume tell of the same liquid. It was
 * hard to see that they did not: the books took minutes for millilitres, 87.1–90.9 beside 88–92 % vol.
 */
const { run, batch } = pearRun();
const offS = 3000;
const trueMl = (timeS: number) =>
  batch.samples.find((sample) => sample.timeS >= timeS)?.distillateVolumeMl ?? 0;
const mark = (timeS: number, markId: number, body: MarkBody): Mark => ({
  kind: 'mark',
  timeS,
  markId,
  mark: body,
});
const readings = run.inputs.filter(({ kind }) => kind === 'reading');
const study = (reads: readonly number[], late: readonly Mark[] = []) => {
  const marks = [
    mark(0, 1, { type: 'heat-on' }),
    mark(offS, 2, { type: 'heat-off' }),
    ...reads.map((timeS, index) =>
      mark(timeS, index + 3, { type: 'volume-read', volumeMl: trueMl(timeS) }),
    ),
  ];
  const inputs = [...readings, ...marks].toSorted((a, b) => a.timeS - b.timeS);
  return studyRun({ ...run, inputs, lateMarks: late, entries: undefined });
};

test('the books and the view against volume say the same of all that came over, to the last digit printed', () => {
  for (const reads of [[3100], [900, 1500, 2000, 2500, 2800, 3100]]) {
    const { books, byVolume, product } = study(reads);
    const [cut] = books.cuts;
    expect(books.cuts).toHaveLength(1);
    expect(byVolume?.collected?.abv).toEqual({
      value: expect.closeTo(cut?.strengthAbv?.value ?? 0, 6),
      low: expect.closeTo(cut?.strengthAbv?.low ?? 0, 6),
      high: expect.closeTo(cut?.strengthAbv?.high ?? 0, 6),
    });
    expect(byVolume?.collected?.volumeMl).toBeCloseTo(cut?.booked?.volumeMl.value ?? 0, 6);
    expect(product?.strengthAbv.low).toBeCloseTo(cut?.strengthAbv?.low ?? 0, 6);
    const strength = bookTables(books)[0]?.rows[0]?.[5];
    const all = cutsByVolumeTable(byVolume!).rows.at(-1);
    expect(strength).toMatch(/^\d/);
    expect(all?.[3]).toBe(strength);
  }
});

test('a slip of the pen that was put right after the run is put right against volume too', () => {
  const slip = mark(3100, 90, { type: 'volume-read', volumeMl: 280 });
  const marks = [mark(0, 1, { type: 'heat-on' }), mark(offS, 2, { type: 'heat-off' }), slip];
  const inputs = [...readings, ...marks].toSorted((a, b) => a.timeS - b.timeS);
  const right: MarkBody = {
    type: 'liquid-volume',
    liquid: 'cut-1',
    volumeMl: 28,
    temperatureC: 20,
  };
  const put = studyRun({
    ...run,
    inputs,
    lateMarks: [mark(run.endS, 91, right)],
    entries: undefined,
  });
  expect(put.books.cuts[0]?.booked?.volumeMl.value).toBeCloseTo(28, 6);
  expect(put.byVolume?.collected?.volumeMl).toBeCloseTo(28, 6);
});
