import { expect, test } from 'vitest';
import { type LiveView, pageInputs } from '#main';
import { inputsOfRecord, type LogBody, type LogRecord } from '#shared-core';
import { libraryWithRun } from '../support/library-with-run.ts';
import { logHeader } from '../support/log-header.ts';

const runId = '20250314T101500Z';
const header = logHeader(runId);
const reading = (timeS: number): LogBody => ({
  kind: 'readings',
  readings: [[timeS, 'head', 20]],
});
const stamp = (seq: number): LogRecord['stamp'] => ({ seq, monoS: seq, wallMs: seq });

/** A library with one run whose readings stand in the records 1 to `count`, each at the second of its number. */
async function oneRun(count: number) {
  const bodies = [
    { kind: 'header', header } as const,
    ...Array.from({ length: count }, (_, index) => reading(index + 1)),
  ];
  const library = await libraryWithRun(runId, bodies);
  const known = await library.summary(runId);
  if (!known.ok) throw new Error(known.error.kind);
  /** While it is recorded: the records of these numbers may not be in the file yet. */
  const live = (...seqs: readonly number[]): LiveView => ({
    known: known.value,
    unsaved: seqs.map((seq) => ({ body: reading(seq), stamp: stamp(seq), timeS: seq, fromS: seq })),
  });
  const page = async (fromIndex: number) => {
    const read = await library.page(runId, fromIndex);
    if (!read.ok) throw new Error(read.error.kind);
    return {
      timesS: read.value.inputs.map(({ timeS }) => timeS),
      nextIndex: read.value.nextIndex,
    };
  };
  const wholeTimesS = async (...unsaved: readonly number[]) => {
    const read = await library.whole(runId, live(...unsaved));
    if (!read.ok) throw new Error(read.error.kind);
    return read.value.inputs.map(({ timeS }) => timeS);
  };
  return { library, page, live, wholeTimesS };
}

test('of a run that is being recorded what is not saved yet comes once, after what is', async () => {
  const { wholeTimesS } = await oneRun(3);
  expect(await wholeTimesS(2, 3, 4, 5)).toEqual([1, 2, 3, 4, 5]);
  expect(await wholeTimesS()).toEqual([1, 2, 3]);
});

test('of a run of which nothing came to the disk yet all comes from what is not saved', async () => {
  const { live } = await oneRun(0);
  const library = await libraryWithRun(runId, []);
  const read = await library.whole(runId, live(0, 1, 2));
  expect(read.ok && read.value.inputs.map(({ timeS }) => timeS)).toEqual([0, 1, 2]);
});

test('what is not saved yet comes after the last page, also where the page before it was just full', async () => {
  const { page, wholeTimesS } = await oneRun(pageInputs);
  const first = await page(0);
  expect([first.timesS.length, first.timesS.at(-1), first.nextIndex]).toEqual([
    pageInputs,
    pageInputs,
    pageInputs,
  ]);
  expect(await page(pageInputs)).toEqual({ timesS: [], nextIndex: null });
  const timesS = await wholeTimesS(pageInputs + 1);
  expect([timesS.length, timesS.at(-1)]).toEqual([pageInputs + 1, pageInputs + 1]);
});

test('a page beyond the end of a run holds nothing and is the last', async () => {
  const { page } = await oneRun(3);
  expect(await page(3)).toEqual({ timesS: [], nextIndex: null });
  expect(await page(9)).toEqual({ timesS: [], nextIndex: null });
});

test('a whole run holds every page of it, the versions that recorded it and what was measured after it', async () => {
  const { library, live } = await oneRun(2 * pageInputs + 7);
  const residue = { type: 'liquid-mass', liquid: 'residue', massG: 310 } as const;
  await library.book(runId, residue);
  const endS = 2 * pageInputs + 7;
  const { known, unsaved } = live(endS + 1);
  const whole = await library.whole(runId, { known, unsaved });
  expect(whole).toEqual({
    ok: true,
    value: {
      summary: known.summary,
      settings: header.settings,
      appVersion: header.appVersion,
      modelVersion: header.modelVersion,
      inputs: Array.from({ length: endS + 1 }, (_, index) =>
        inputsOfRecord({ body: reading(index + 1) }),
      ).flat(),
      endS,
      lateMarks: [{ kind: 'mark', markId: 1, mark: residue, timeS: endS }],
    },
  });
});

test('what is put right of a run stands in its pages at once', async () => {
  const { library } = await oneRun(pageInputs + 5);
  expect((await library.page(runId, 0)).ok).toBe(true);
  const charge = { volumeMl: 321, strengthAbv: 10, standardUncertaintyAbv: 0.5 };
  await library.correct(runId, { charge, reason: 'misread' });
  const read = await library.page(runId, pageInputs);
  expect(read.ok && [read.value.settings.charge.volumeMl, read.value.inputs.length]).toEqual([
    321, 5,
  ]);
});
