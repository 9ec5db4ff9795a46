import { expect, test } from 'vitest';
import { type AlarmView, defaultRunSettings } from '#shared-core';
import { ask, head, setUpSession } from '../support/session-bench.ts';

const timeScale = 60;

async function startRehearsal() {
  const bench = await setUpSession({ timeScale });
  const { session, time, probeHub } = bench;
  const alarms = new Set<AlarmView['alarm']>();
  session.on('snapshot', ({ snapshot }) => {
    for (const { alarm } of snapshot.alarms) alarms.add(alarm);
  });
  await ask(session, 'run/start', { settings: defaultRunSettings });
  /** Seconds of the simulated still, told together at the end: what a busy computer makes of them. */
  const pass = async (stillS: number) => {
    const fromS = time.clock.monotonicS();
    await time.pass(stillS / timeScale);
    const readings = Array.from({ length: stillS }, (_, index) =>
      head(fromS + (index + 1) / timeScale, 22 + 0.0625 * (Math.floor(index / 3) % 3)),
    );
    probeHub.send('readings', readings);
  };
  return { ...bench, alarms, pass };
}

test('a computer that stutters in a rehearsal makes no silence of the simulated still', async () => {
  const { alarms, pass, session } = await startRehearsal();
  for (const stillS of [60, 6, 120, 6, 240, 60]) await pass(stillS);
  expect([...alarms]).toEqual([]);
  expect(session.recordingStatus().state).toBe('recording');
});

test('what a person does in a rehearsal happens when the newest reading was made, so that log and table agree', async () => {
  const { pass, session, time } = await startRehearsal();
  await pass(60);
  await time.pass(0.5);
  expect(await ask(session, 'run/mark', { mark: { type: 'heat-off' } })).toMatchObject({
    timeS: 60,
  });
});

test('the simulated still is let go when the rehearsal stops', async () => {
  const { pass, session } = await startRehearsal();
  await pass(60);
  expect(await ask(session, 'probe/status', {})).toMatchObject({ source: { kind: 'demo' } });
  await ask(session, 'run/stop', {});
  expect(await ask(session, 'probe/status', {})).toMatchObject({ state: 'none', source: null });
});

test('a probe stays connected when a run of it stops', async () => {
  const { session } = await setUpSession();
  await ask(session, 'run/start', { settings: defaultRunSettings });
  await ask(session, 'run/stop', {});
  expect(await ask(session, 'probe/status', {})).toMatchObject({ source: { kind: 'serial' } });
});
