import { expect, test } from 'vitest';
import { alarmTitles, createMonitor, defaultRunSettings, recordedChangeSchema } from '#shared-core';
import { decodeRecord } from '../../../shared-core/run-log/decode-record.ts';
import { libraryWithRun } from '../support/library-with-run.ts';
import { logHeader } from '../support/log-header.ts';

/** As version 4 of the models wrote it, when all that could be wrong with the probe was one alarm. */
const oldLine =
  '{"seq":1,"prev":"1f0c2a9b","monoS":2406.5,"wallMs":1741947300123,"kind":"change","change":{"kind":"alarm-changed","timeS":1406,"record":{"alarm":"probe-fault","priority":"high","raisedS":1406,"clearedS":null,"acknowledgedS":null,"because":"At 23 min: the probe sends nothing; last trusted value 78.2 \\u00b0C."},"state":"unacknowledged","snapshot":null},"crc":"7849d0b3"}';

test('an alarm of an earlier version is read, and told, as what it was', async () => {
  const body = decodeRecord(oldLine)?.record.body;
  if (body?.kind !== 'change' || body.change.kind !== 'alarm-changed') {
    throw new Error('The old line is not read.');
  }
  expect(alarmTitles[body.change.record.alarm]).toBe('Probe in doubt');

  const runId = '20250314T101500Z';
  const header = { kind: 'header', header: logHeader(runId) } as const;
  const library = await libraryWithRun(runId, [header, body]);
  const changes = await library.changes(runId);
  const { snapshot: _, ...recorded } = body.change;
  expect(changes).toEqual({
    ok: true,
    value: { changes: [recordedChangeSchema.parse(recorded)], modelVersions: ['1'] },
  });
});

test('an answer to it answers whatever has become of it', () => {
  const monitor = createMonitor(defaultRunSettings);
  for (let timeS = 0; timeS < 60; timeS += 1) {
    const value = 20 + (timeS % 7) / 16;
    monitor.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
  }
  const states = () => monitor.snapshot().alarms.map(({ alarm, state }) => [alarm, state]);
  monitor.advanceTo(120);
  expect(states()).toEqual([['probe-lost', 'unacknowledged']]);
  const mark = { type: 'alarm-acknowledged', alarm: 'probe-fault' } as const;
  monitor.push({ kind: 'mark', timeS: 121, markId: 1, mark });
  expect(states()).toEqual([['probe-lost', 'acknowledged']]);
});
