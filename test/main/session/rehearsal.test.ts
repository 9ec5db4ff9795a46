import { expect, test } from 'vitest';
import type { Session } from '#main';
import {
  type AlarmView,
  defaultRunSettings,
  fail,
  type ProbeSource,
  type ServiceProblem,
  serialSourceSchema,
} from '#shared-core';
import { demoSourceSchema } from '../../../shared-core/contract/probe-schemas.ts';
import { eventually } from '../../support/eventually.ts';
import { ask, head, setUpSession, teacher } from '../support/session-bench.ts';

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

const still: ProbeSource = demoSourceSchema.parse({ kind: 'demo', timeScale });
const sourceOf = async (session: Session) => (await ask(session, 'probe/status', {})).source;

/** A probe, then a rehearsal from its beginning until it is stopped. */
async function rehearsedBesideAProbe() {
  const { session, time, probeHub } = await setUpSession();
  const probe = await sourceOf(session);
  await ask(session, 'probe/connect', { source: still });
  await ask(session, 'run/start', { settings: defaultRunSettings });
  expect(await sourceOf(session)).toMatchObject({ kind: 'demo' });
  return { session, probe, time, probeHub };
}

test('the probe that a rehearsal took the place of is connected again when it stops', async () => {
  const { session, probe } = await rehearsedBesideAProbe();
  await ask(session, 'run/stop', {});
  await eventually(async () => expect(await sourceOf(session)).toEqual(probe));
});

test('a probe that can’t be opened again after a rehearsal is told with the reason, until something is connected or let go of', async () => {
  const problem: ServiceProblem = { kind: 'port-busy', path: '/dev/ttyACM0' };
  const gone: ServiceProblem = { kind: 'port-not-found', path: '/dev/ttyACM0' };
  const { session, probe, probeHub } = await rehearsedBesideAProbe();
  const told: unknown[] = [];
  session.on('probe', ({ notBack }) => told.push(notBack));
  probeHub.refuse(problem);
  await ask(session, 'run/stop', {});
  const notBack = { source: probe, problem };
  await eventually(() => expect(told.at(-1)).toEqual(notBack));
  const status = () => ask(session, 'probe/status', {});
  expect(await status()).toMatchObject({ state: 'none', source: null, notBack });
  // Asked for again by the person, and refused again: it is still offered, with the newest reason.
  probeHub.refuse(gone);
  await session.handle('probe/connect', { source: probe }, teacher);
  expect([(await status()).notBack, told.at(-1)]).toEqual([
    { source: probe, problem: gone },
    { source: probe, problem: gone },
  ]);
  // After one more rehearsal it is tried again.
  probeHub.refuse(null);
  await ask(session, 'probe/connect', { source: still });
  expect((await status()).notBack).toBeUndefined();
  await ask(session, 'run/start', { settings: defaultRunSettings });
  probeHub.refuse(problem);
  await ask(session, 'run/stop', {});
  await eventually(async () => expect((await status()).notBack).toEqual(notBack));
  await ask(session, 'probe/disconnect', {});
  expect([(await status()).notBack, told.at(-1)]).toEqual([undefined, undefined]);
});

test('the probe comes back too when the rehearsal can’t begin, for want of room on the disk', async () => {
  const full = { kind: 'full', path: '/runs', message: 'no space left on device' } as const;
  const { session } = await setUpSession({ faults: { claimFolder: async () => fail(full) } });
  const probe = await sourceOf(session);
  await ask(session, 'probe/connect', { source: still });
  const started = await session.handle('run/start', { settings: defaultRunSettings }, teacher);
  expect(started).toMatchObject({ ok: false, error: { kind: 'disk-full' } });
  await eventually(async () => expect(await sourceOf(session)).toEqual(probe));
});

test('the probe comes back too when the still can’t be connected', async () => {
  const { session, probeHub } = await setUpSession();
  const probe = await sourceOf(session);
  const problem: ServiceProblem = { kind: 'no-probe' };
  let tries = 0;
  probeHub.whileConnecting(() => {
    tries += 1;
    // The hub lets go of the one before it connects the next.
    if (tries === 1) void probeHub.disconnect();
    probeHub.refuse(tries === 1 ? problem : null);
  });
  const connected = await session.handle('probe/connect', { source: still }, teacher);
  expect(connected).toEqual(fail(problem));
  await eventually(() => expect(tries).toBe(2));
  expect(await sourceOf(session)).toEqual(probe);
});

test('a simulated still that another took the place of leaves that one connected', async () => {
  const { session, probeHub } = await setUpSession();
  await ask(session, 'probe/connect', { source: still });
  probeHub.refuse({ kind: 'superseded' });
  await session.handle('probe/connect', { source: still }, teacher);
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(await sourceOf(session)).toEqual(still);
});

test('a rehearsal under way keeps its still when somebody asks for another start', async () => {
  const { session } = await rehearsedBesideAProbe();
  const again = await session.handle('run/start', { settings: defaultRunSettings }, teacher);
  expect(again).toMatchObject({ ok: false, error: { kind: 'already-recording' } });
  expect(await sourceOf(session)).toMatchObject({ kind: 'demo' });
});

test('a still that can’t be connected takes nothing away that somebody connected meanwhile', async () => {
  const { session, probeHub } = await setUpSession();
  const other = serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM7' });
  let isFirst = true;
  probeHub.whileConnecting(() => {
    if (!isFirst) return;
    isFirst = false;
    void probeHub.connect(other);
    probeHub.refuse({ kind: 'no-probe' });
  });
  await session.handle('probe/connect', { source: still }, teacher);
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(await sourceOf(session)).toEqual(other);
});

test('a probe that somebody let go of is not brought back by a rehearsal, nor by the next', async () => {
  const { session } = await rehearsedBesideAProbe();
  await ask(session, 'run/stop', {});
  await eventually(async () => expect(await sourceOf(session)).toMatchObject({ kind: 'serial' }));
  await ask(session, 'probe/disconnect', {});
  await ask(session, 'probe/connect', { source: still });
  await ask(session, 'run/start', { settings: defaultRunSettings });
  await ask(session, 'run/stop', {});
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(await sourceOf(session)).toBeNull();
});

test('a probe stays connected when a run of it stops', async () => {
  const { session } = await setUpSession();
  await ask(session, 'run/start', { settings: defaultRunSettings });
  await ask(session, 'run/stop', {});
  expect(await ask(session, 'probe/status', {})).toMatchObject({ source: { kind: 'serial' } });
});
