import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { ask, head, setUpSession } from '../support/session-bench.ts';

/** A run of ten seconds at one reading a second, told as far as it went. */
async function setUp() {
  const bench = await setUpSession();
  const { session, time, probeHub } = bench;
  onTestFinished(() => probeHub.heardTo(Number.POSITIVE_INFINITY));
  const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
  const startS = time.clock.monotonicS();
  for (let second = 1; second <= 10; second += 1) {
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
    probeHub.heardTo(time.clock.monotonicS());
  }
  /** Time passes and every timer runs, but nothing that was heard meanwhile has come yet. */
  const halt = (seconds: number) => time.pass(seconds);
  const heardMeanwhile = (seconds: number) => {
    for (let second = 1; second <= seconds; second += 1) {
      probeHub.send('readings', [head(startS + 10 + second, 21)]);
    }
    probeHub.heardTo(time.clock.monotonicS());
  };
  const recorded = async () =>
    (await ask(session, 'runs/read', { runId, fromIndex: 0 })).inputs.map(
      ({ kind, timeS }) => `${kind} ${timeS}`,
    );
  return { ...bench, runId, halt, heardMeanwhile, recorded };
}

const firstTen = Array.from({ length: 10 }, (_, index) => `reading ${index + 1}`);

test('what was heard while the services stood still keeps its moments, and no sleep is made of it', async () => {
  const { session, time, probeHub, runsFolder, runId, halt, heardMeanwhile, recorded } =
    await setUp();
  await halt(9);
  heardMeanwhile(8);
  await time.pass(2);
  expect(await recorded()).toEqual([
    ...firstTen,
    ...Array.from({ length: 8 }, (_, index) => `reading ${index + 11}`),
  ]);
  probeHub.heardTo(Number.POSITIVE_INFINITY);
  await ask(session, 'run/stop', {});
  const log = await readFile(path.join(runsFolder, runId, 'run.jsonl'), 'latin1');
  expect(log).not.toContain('"kind":"clock"');
  expect(log).not.toContain('computer-asleep');
});

test('a mark made on waking comes after what was heard before it, at its own moment', async () => {
  const { session, time, halt, heardMeanwhile, recorded } = await setUp();
  await halt(6);
  const marking = ask(session, 'run/mark', { mark: { type: 'heat-off' } });
  heardMeanwhile(5);
  await time.pass(0.1);
  expect(await marking).toMatchObject({ markId: 1, timeS: 16 });
  expect(await recorded()).toEqual([
    ...firstTen,
    ...Array.from({ length: 5 }, (_, index) => `reading ${index + 11}`),
    'mark 16',
  ]);
});

test('a mark stands between what was measured before it and what after it, though all came in one piece', async () => {
  const { session, time, probeHub, recorded } = await setUp();
  await time.pass(2);
  const marking = ask(session, 'run/mark', { mark: { type: 'heat-off' } });
  await time.pass(0.25);
  const nowS = time.clock.monotonicS();
  probeHub.send(
    'readings',
    [-1.25, -0.75, -0.125, 0].map((agoS) => head(nowS + agoS, 21)),
  );
  expect(await marking).toMatchObject({ timeS: 12 });
  expect((await recorded()).slice(10)).toEqual([
    'reading 11',
    'reading 11.5',
    'mark 12',
    'reading 12.125',
    'reading 12.25',
  ]);
});

test('a run that is stopped on waking still has all that was heard before the stop, and nothing after', async () => {
  const { session, time, probeHub, halt, heardMeanwhile, recorded } = await setUp();
  await halt(6);
  const stopping = ask(session, 'run/stop', {});
  heardMeanwhile(5);
  probeHub.send('readings', [head(time.clock.monotonicS() + 0.01, 99)]);
  await time.pass(0.1);
  await stopping;
  expect(await recorded()).toEqual([
    ...firstTen,
    ...Array.from({ length: 5 }, (_, index) => `reading ${index + 11}`),
  ]);
});

test('marks and the stop do not wait for ever for a serial process that says nothing', async () => {
  const { session, time, recorded } = await setUp();
  const marking = ask(session, 'run/mark', { mark: { type: 'heat-off' } });
  await time.pass(0.4);
  // Heard up to exactly now, so only a later mark has to wait.
  expect(await marking).toMatchObject({ timeS: 10 });
  const late = ask(session, 'run/mark', { mark: { type: 'note', text: 'late' } });
  const stopping = ask(session, 'run/stop', {});
  await time.pass(0.6);
  expect(await late).toMatchObject({ markId: 2, timeS: 10.4 });
  await stopping;
  expect(await recorded()).toEqual([...firstTen, 'mark 10', 'mark 10.4']);
});
