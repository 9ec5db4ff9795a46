import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer, type Session } from '#main';
import {
  cautionsAt,
  contractLimits,
  defaultRunSettings,
  fail,
  type RequestBody,
  type RequestName,
} from '#shared-core';
import { pearJuice } from '../support/pear-juice.ts';
import { ask, fetchTable, head, setUpSession, takeIn, teacher } from '../support/session-bench.ts';

const table = 'time_s,head_c\n0,20\n1,21\n';
const measured: RequestBody<'runs/book'>['mark'] = {
  type: 'liquid-mass',
  liquid: 'residue',
  massG: 219.4,
};
const refusal = async <N extends RequestName>(
  session: Session,
  name: N,
  body: RequestBody<N>,
): Promise<unknown> => {
  const answer = await session.handle(name, body, teacher);
  return answer.ok ? null : answer.error;
};

describe('what is measured after a run', () => {
  test('goes to its run, numbered, also while another is being recorded', async () => {
    const { session } = await setUpSession();
    const { runId } = await takeIn(session, table);
    const { runId: running } = await ask(session, 'run/start', { settings: defaultRunSettings });
    const { markId } = await ask(session, 'runs/book', { runId, mark: measured });
    const { lateMarks } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
    expect(lateMarks).toMatchObject([{ markId, mark: measured }]);
    expect(await refusal(session, 'runs/book', { runId: running, mark: measured })).toEqual({
      kind: 'already-recording',
      runId: running,
    });
    await ask(session, 'run/stop', {});
    expect(await ask(session, 'runs/book', { runId: running, mark: measured })).toMatchObject({
      markId: expect.any(Number),
    });
    expect(await refusal(session, 'runs/book', { runId: 'none-such', mark: measured })).toEqual({
      kind: 'run-not-found',
      runId: 'none-such',
    });
  });

  test('is never lit while any run goes on: a still is hot then', async () => {
    const { session } = await setUpSession();
    const { runId } = await takeIn(session, table);
    const burned: RequestBody<'runs/book'>['mark'] = {
      type: 'proof-burned',
      cut: 1,
      volumeMl: 0.5,
      seen: 'burned-away',
      role: 'teacher',
      confirmed: cautionsAt('proof').map(({ id }) => id),
    };
    const { runId: running } = await ask(session, 'run/start', { settings: defaultRunSettings });
    expect(await refusal(session, 'runs/book', { runId, mark: burned })).toEqual({
      kind: 'already-recording',
      runId: running,
    });
    await ask(session, 'run/stop', {});
    expect(await refusal(session, 'runs/book', { runId, mark: burned })).toBeNull();
  });
});

describe('a file that comes in', () => {
  test('is counted as it comes, and gone once it was given up', async () => {
    const { session } = await setUpSession();
    const { importId } = await ask(session, 'imports/begin', { bytes: 6 });
    const add = (content: string) =>
      ask(session, 'imports/add', { importId, base64: Buffer.from(content).toString('base64') });
    expect([await add('ab'), await add('cde')]).toEqual([
      { receivedBytes: 2 },
      { receivedBytes: 5 },
    ]);
    expect(await ask(session, 'imports/cancel', { importId })).toEqual({});
    const finish = { importId, encoding: 'auto', mapping: null, settings: defaultRunSettings };
    const gone = { kind: 'request-invalid', message: expect.stringMatching(/choose it again/) };
    expect([
      await refusal(session, 'imports/add', { importId, base64: 'AA==' }),
      await refusal(session, 'imports/finish', finish as RequestBody<'imports/finish'>),
    ]).toMatchObject([gone, gone]);
    const bytes = contractLimits.importBytes + 1;
    expect(await refusal(session, 'imports/begin', { bytes })).toMatchObject({
      kind: 'request-invalid',
    });
  });
});

/** A file that lies ready, fetched piece by piece, with its name. */
async function fetched(session: Session, packId: string): Promise<Buffer> {
  const pieces: Buffer[] = [];
  for (let fromByte: number | null = 0; fromByte !== null; ) {
    const read: { base64: string; nextByte: number | null } = await ask(session, 'packs/read', {
      packId,
      fromByte,
    });
    pieces.push(Buffer.from(read.base64, 'base64'));
    fromByte = read.nextByte;
  }
  return Buffer.concat(pieces);
}

describe('what goes out as a file', () => {
  const gone = {
    kind: 'request-invalid',
    message: expect.stringMatching(/no longer here; make it again$/),
  };

  test('of runs, of ferments and of a run’s own files holds them, until it is put away', async () => {
    const { session } = await setUpSession();
    const { runId } = await takeIn(session, table);
    const { fermentId } = await ask(session, 'ferments/begin', {
      stated: pearJuice,
    });
    const packId = 'window-1';
    const told: string[] = [];
    session.on('pack', ({ packId, done }) => told.push(`${packId} ${done}`));
    const orders = [
      ['runs', /\.csv/, () => ask(session, 'packs/make', { packId, runIds: [runId] })],
      [
        'ferments',
        /\.csv/,
        () => ask(session, 'packs/make-ferments', { packId, fermentIds: [fermentId] }),
      ],
      ['files', /run\.jsonl/, () => ask(session, 'packs/make-files', { packId, runId })],
    ] as const;
    for (const [what, held, make] of orders) {
      const { fileName, bytes } = await make();
      expect(fileName, what).toMatch(/\.zip$/);
      const content = await fetched(session, packId);
      expect(content).toHaveLength(bytes);
      expect(Object.keys(unzipSync(content)).join(' ')).toMatch(held);
      expect(await ask(session, 'packs/drop', { packId })).toEqual({});
      expect(await refusal(session, 'packs/read', { packId, fromByte: 0 })).toMatchObject(gone);
    }
    // Files as they are need no going through.
    expect(told.filter((text) => text === 'window-1 100')).toHaveLength(2);
  });

  test('of a run that is being recorded holds its newest reading', async () => {
    const { session, time, probeHub } = await setUpSession();
    const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), 71.25)]);
    expect(await fetchTable(session, runId, 'csv')).toContain('71.25');
    await ask(session, 'packs/make', { packId: 'now', runIds: [runId] });
    const entries = unzipSync(await fetched(session, 'now'));
    const text = Object.entries(entries).map(([name, bytes]) =>
      name.endsWith('.csv') ? Buffer.from(bytes).toString('utf8') : '',
    );
    expect(text.join('')).toContain('71.25');
  });

  test('is not made of what is not there', async () => {
    const { session } = await setUpSession();
    const runId = 'none-such';
    const notFound = { kind: 'run-not-found', runId };
    const packId = 'a';
    expect([
      await refusal(session, 'packs/make', { packId, runIds: [runId] }),
      await refusal(session, 'packs/make-files', { packId, runId }),
      await refusal(session, 'packs/make-table', { packId, runId, format: 'csv' }),
    ]).toEqual([notFound, notFound, notFound]);
    expect(
      await refusal(session, 'packs/make-ferments', { packId, fermentIds: ['none-such'] }),
    ).not.toBeNull();
  });

  test('is refused with what the disk said where it has no room for one', async () => {
    let isFull = false;
    const faults: Partial<FileLayer> = {
      createAppend: async (target) =>
        isFull
          ? fail({ kind: 'full', path: target, message: 'ENOSPC' })
          : await nodeFileLayer.createAppend(target),
    };
    const { session } = await setUpSession({ faults });
    const { runId } = await takeIn(session, table);
    isFull = true;
    const full = { kind: 'disk-full' };
    const packId = 'a';
    expect([
      await refusal(session, 'packs/make', { packId, runIds: [runId] }),
      await refusal(session, 'packs/make-files', { packId, runId }),
      await refusal(session, 'packs/make-table', { packId, runId, format: 'csv' }),
    ]).toMatchObject([full, full, full]);
  });

  test('is told to be gone from the disk when somebody has cleared it away', async () => {
    let isCleared = false;
    const faults: Partial<FileLayer> = {
      read: async (target, from, bytes) =>
        isCleared
          ? fail({ kind: 'missing', path: target, message: 'ENOENT' })
          : nodeFileLayer.read(target, from, bytes),
    };
    const { session } = await setUpSession({ faults });
    const { runId } = await takeIn(session, table);
    await ask(session, 'packs/make-table', { packId: 'a', runId, format: 'csv' });
    isCleared = true;
    expect(await refusal(session, 'packs/read', { packId: 'a', fromByte: 0 })).toMatchObject({
      kind: 'folder-unavailable',
      message: 'ENOENT',
    });
  });
});
