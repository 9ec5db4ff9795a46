import { unzipSync } from 'fflate';
import { expect, test, vi } from 'vitest';
import { createMonitor, type Monitor, type RunSettings } from '#shared-core';
import { ask, fetchTable, setUpSession, takeIn } from '../support/session-bench.ts';

/** The real monitor, but for one reading that it cannot take. */
function failingMonitor(settings: RunSettings): Monitor {
  const monitor = createMonitor(settings);
  return {
    ...monitor,
    push(input) {
      if (input.kind === 'reading' && input.timeS === 2) throw new Error('a case nobody foresaw');
      return monitor.push(input);
    },
  };
}

async function unjudged() {
  vi.spyOn(console, 'error').mockImplementation(() => {});
  const { session } = await setUpSession({ createMonitor: failingMonitor });
  const { runId } = await takeIn(session, 'time_s,head_c\n0,20\n1,21\n2,22\n3,23\n');
  return { session, runId };
}

const why =
  'Stages, calls, estimates and the verdict are missing: the monitor failed on this record (a case nobody foresaw). Every reading and mark that was recorded is there.';

test('a table on which the monitor fails is taken in with every reading, and its record says that the monitor failed', async () => {
  const { session, runId } = await unjudged();
  const { inputs, summary } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
  expect(inputs).toHaveLength(4);
  // Nobody stood at a still: what would have been advised is no matter.
  expect(summary.leftOut).toEqual([
    'When this table was taken in, the monitor failed on it from 0:00:02 on. The readings are all there; what is told of that time was worked out later.',
  ]);
});

test('a run on which the monitor fails is exported with everything recorded, and what is missing is told with its reason', async () => {
  const { session, runId } = await unjudged();
  expect(await fetchTable(session, runId, 'csv')).toBe(
    'time_s,head_degC,head_quality,marks\r\n0,20,good,\r\n1,21,good,\r\n2,22,good,\r\n3,23,good,\r\n3,,,run-ended\r\n',
  );
  const table = { packId: 'p', runId, format: 'csv' } as const;
  const made = await ask(session, 'packs/make-table', table);
  expect(made.missing).toBe(why);
  expect(Object.keys(made.wording ?? {})).toEqual([why]);
  await ask(session, 'packs/make', { packId: 'q', runIds: [runId] });
  const { base64 } = await ask(session, 'packs/read', { packId: 'q', fromByte: 0 });
  const files = unzipSync(Buffer.from(base64, 'base64'));
  const textOf = (ending: string) =>
    Buffer.from(
      Object.entries(files).find(([name]) => name.endsWith(ending))?.[1] ?? [],
    ).toString();
  expect(textOf('README.txt').replace(/\s+/g, ' ')).toContain(why);
  const [titles = '', row = ''] = textOf('data/runs.csv').split('\r\n');
  expect(titles).toContain(',main_fraction,because,');
  expect(row).toContain(`,,"${why}"`);
  expect(
    textOf('data/readings.csv')
      .split('\r\n')
      .filter((line) => line !== ''),
  ).toHaveLength(5);
});
