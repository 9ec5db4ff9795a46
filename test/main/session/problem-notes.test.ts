import { expect, test } from 'vitest';
import { type EventBody, fail, type ServiceProblem, succeed } from '#shared-core';
import { createProblemLog } from '../../../main/problem-report/problem-log.ts';
import { createEventHub } from '../../../main/session/event-hub.ts';
import { noteProblems, noteRefusal } from '../../../main/session/problem-notes.ts';
import { createFakeProbeHub } from '../support/fake-probe-hub.ts';
import { createManualTime } from '../support/manual-time.ts';

const missing: ServiceProblem = { kind: 'port-not-found', path: '/dev/ttyACM0' };
const full: ServiceProblem = { kind: 'disk-full', path: '/runs' };

function setUp() {
  const log = createProblemLog(createManualTime().clock);
  const events = createEventHub();
  const probeHub = createFakeProbeHub();
  const stop = noteProblems(log, events, probeHub);
  const status = probeHub.status();
  const idle: EventBody<'recording'> = {
    state: 'idle',
    runId: null,
    startedAtIso: null,
    savedToS: null,
    problem: null,
  };
  return {
    log,
    events,
    probeHub,
    stop,
    probe: (problem: ServiceProblem | null) => events.emit('probe', { ...status, problem }),
    recording: (more: Partial<EventBody<'recording'>>) =>
      events.emit('recording', { ...idle, ...more }),
    noted: () => log.recent().map(({ what, times }) => `${times} ${what}`),
  };
}

test('what stands for a while is noted once, and again when it comes back', () => {
  const { probe, recording, noted } = setUp();
  for (const problem of [null, missing, missing, null, missing]) probe(problem);
  for (const problem of [null, full, full]) recording({ problem });
  for (const adviceStopped of ['a bug', 'a bug']) recording({ problem: full, adviceStopped });
  expect(noted()).toEqual([
    '2 probe: port-not-found at /dev/ttyACM0',
    '1 recording: disk-full at /runs',
    '1 advice stopped: a bug',
  ]);
});

test('each loss and return of the probe is noted, until nobody notes any more', () => {
  const { probe, recording, probeHub, noted, stop } = setUp();
  probeHub.send('link', { atS: 1, state: 'lost', reason: 'unplugged' });
  probeHub.send('link', { atS: 2, state: 'back', reason: 'unplugged' });
  probeHub.send('link', { atS: 3, state: 'lost', reason: 'unplugged' });
  const before = ['1 link back: unplugged', '2 link lost: unplugged'];
  expect(noted()).toEqual(before);
  for (const end of stop) end();
  probeHub.send('link', { atS: 4, state: 'lost', reason: 'silent' });
  probe(missing);
  recording({ problem: full, adviceStopped: 'a bug' });
  expect(noted()).toEqual(before);
});

test('a refusal is noted with its request, what a viewer may not do is not, nor what was done', () => {
  const { log, noted } = setUp();
  noteRefusal(log, 'run/start', fail(full));
  noteRefusal(log, 'run/start', fail({ kind: 'viewer-may-not-command' }));
  noteRefusal(log, 'run/start', succeed({}));
  noteRefusal(log, 'x'.repeat(200), fail({ kind: 'not-recording' }));
  expect(noted()).toEqual([
    '1 run/start: disk-full at /runs',
    `1 ${'x'.repeat(80)}: not-recording`,
  ]);
});
