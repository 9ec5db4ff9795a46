import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { Session } from '#main';
import {
  booksOfRun,
  defaultRunSettings,
  type RequestAnswer,
  type RunInput,
  readSettingsFile,
  writeReadingsCsv,
} from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';
import { ask, setUpSession as setUp, takeIn, teacher } from '../support/session-bench.ts';

/** Going through a run several times takes its minutes on a busy machine. */
const patience = { timeout: 180_000 };
const pear = pearRun().run;
const settings = { ...pear.settings, attentionCheckS: null };
const pearInputs = pear.inputs.filter(
  (input): input is RunInput => input.kind !== 'reading' || input.timeS % 10 === 0,
);
const pearCsv = [
  ...writeReadingsCsv({ inputs: pearInputs, stages: null, endS: pear.endS }, 'csv'),
].join('');

const takeInAs = async (
  session: Session,
  csv: string,
  says: Parameters<typeof takeIn>[2] = {},
): Promise<string> => (await takeIn(session, csv, { settings, ...says })).runId;

const read = (session: Session, runId: string): Promise<RequestAnswer<'runs/read'>> =>
  ask(session, 'runs/read', { runId, fromIndex: 0 });

describe('an imported run', patience, () => {
  test('began when its file or the person says, never at the moment of import', async () => {
    const { session } = await setUp();
    const start = async (csv: string, startedAtIso: string | null = null) =>
      (await read(session, await takeInAs(session, csv, { startedAtIso }))).summary;
    const local = await start('Time,Head (°C)\n2026-03-18 09:15:00,20\n2026-03-18 09:16:00,21\n');
    expect(new Date(local.startedAtIso).getTime()).toBe(new Date(2026, 2, 18, 9, 15).getTime());
    expect(local.imported).toBe(true);
    const zoned = await start(
      'Time,Head (°C)\n2026-03-18T09:15:00+02:00,20\n2026-03-18T09:16:00+02:00,21\n',
    );
    expect(zoned.startedAtIso).toBe('2026-03-18T07:15:00.000Z');
    const bare = 'time_s,head_degC\n0,20\n1,21\n';
    expect((await start(bare)).startedAtIso).toBe('');
    expect((await start(bare, '2026-03-18T08:00:00.000Z')).startedAtIso).toBe(
      '2026-03-18T08:00:00.000Z',
    );
  });
});

describe('a correction of charge and pressure', patience, () => {
  test('counts for books and verdicts, with its reason, and leaves the log as it was', async () => {
    const { session, runsFolder } = await setUp();
    const runId = await takeInAs(session, pearCsv, {
      settings: { ...settings, charge: { ...settings.charge, volumeMl: 500 } },
    });
    const log = path.join(runsFolder, runId, 'run.jsonl');
    const before = await readFile(log);
    const { charge, pressure } = settings;
    const reason = 'the flask held half of it';
    const correction = { charge, pressure: { ...pressure, pressureKPa: 98 }, reason };
    const summary = await ask(session, 'runs/correct', { runId, correction });
    expect(summary.corrections).toEqual([
      'Corrected after the run: charge 500 mL of 11 % vol → 250 mL of 11 % vol; air pressure 99.4 kPa → 98 kPa. Reason: the flask held half of it',
    ]);
    const page = await read(session, runId);
    expect([page.settings.charge.volumeMl, page.settings.pressure.pressureKPa]).toEqual([250, 98]);
    expect(await readFile(log)).toEqual(before);
    const { inputs, endS } = page;
    const verdicts = analyseRun(page.settings, inputs, endS);
    const recovery = booksOfRun({ settings: page.settings, inputs, verdicts, endS }).balance
      ?.ethanol.recoveryPercent.value;
    expect(recovery).toBeGreaterThan(40);
    const refused = { runId, correction: { charge, reason: ' ' } };
    expect((await session.handle('runs/correct', refused, teacher)).ok).toBe(false);
  });
});

describe('the settings that go with a pack', patience, () => {
  test('taken in with the raw table give the same verdicts; the table alone does not', async () => {
    const { session } = await setUp();
    const own = { ...settings, leastStrengthAbv: 88 };
    const runId = await takeInAs(session, pearCsv, { settings: own });
    await ask(session, 'packs/make', { packId: 'p', runIds: [runId] });
    const pieces: Buffer[] = [];
    for (let from: number | null = 0; from !== null; ) {
      const piece: RequestAnswer<'packs/read'> = await ask(session, 'packs/read', {
        packId: 'p',
        fromByte: from,
      });
      pieces.push(Buffer.from(piece.base64, 'base64'));
      from = piece.nextByte;
    }
    const entries = Object.entries(unzipSync(Buffer.concat(pieces)));
    const file = (pattern: RegExp) =>
      Buffer.from(entries.find(([name]) => pattern.test(name))?.[1] ?? []).toString('utf8');
    const kept = readSettingsFile(file(/settings\/.*\.json$/));
    if (!kept.ok) throw new Error(kept.error);
    const raw = file(/(^|\/)data\/raw\/.*\.csv$/);
    const first = await read(session, runId);
    const again = await read(
      session,
      await takeInAs(session, raw, { settings: kept.value.settings }),
    );
    const verdictsOf = ({ settings: so, inputs, endS }: RequestAnswer<'runs/read'>) =>
      analyseRun(so, inputs, endS);
    expect(verdictsOf(again)).toEqual(verdictsOf(first));
    const alone = await read(
      session,
      await takeInAs(session, raw, { settings: defaultRunSettings }),
    );
    expect(verdictsOf(alone)).not.toEqual(verdictsOf(first));
  });
});
