import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer, type Session } from '#main';
import { defaultRunSettings, fail, setUpSchema, usualWarmthBand } from '#shared-core';
import { nothingRead } from '../../support/nothing-read.ts';
import { ask, setUpSession, takeIn, teacher } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

/** No deed looks more often at what is there before it writes. */
const mostLooks = 12;
const charge = { volumeMl: 350, strengthAbv: 9 };
const setUp = (name: string) => setUpSchema.parse({ name, charge });

/** A disk that is away for the next looks at it, and is back between two of them. */
function createComingDisk() {
  let looksLeft = 0;
  const looked = () => {
    looksLeft = Math.max(0, looksLeft - 1);
    return looksLeft > 0;
  };
  const away = (at: string) => fail({ kind: 'missing', path: at, message: 'away' } as const);
  const asking =
    <A extends [string, ...unknown[]], R>(act: (...asked: A) => Promise<R>) =>
    async (...asked: A) =>
      looked() ? away(asked[0]) : act(...asked);
  const { createAppend, openAppend, list, sizeBytes, read, rename, remove } = nodeFileLayer;
  const faults: Partial<FileLayer> = {
    createAppend: async (at) => (looked() ? away(at) : createAppend(at)),
    openAppend: async (at) => (looked() ? away(at) : openAppend(at)),
    list: asking(list),
    sizeBytes: asking(sizeBytes),
    read: asking(read),
    rename: asking(rename),
    remove: asking(remove),
  };
  return {
    faults,
    goAwayFor(looks: number) {
      looksLeft = looks + 1;
    },
  };
}

/** What is kept of a run, a ferment and set-ups, as the program shows it. */
async function shown(session: Session, runId: string) {
  const { summary, lateMarks } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
  const { rigs } = await ask(session, 'rigs/list', {});
  const { ferments } = await ask(session, 'ferments/list', {});
  return {
    name: summary.name,
    measured: lateMarks?.map(({ markId }) => markId) ?? [],
    rigs: rigs.map(({ name }) => name),
    entries: ferments.flatMap(({ entries }) => entries.map(({ entryId }) => entryId)),
  };
}

async function before(faults: Partial<FileLayer>) {
  const runsFolder = await temporaryFolder();
  const { session, time } = await setUpSession({ runsFolder, faults });
  const { runId } = await takeIn(session, 'time_s,head_c\n0,20\n1,21\n');
  await ask(session, 'runs/rename', { runId, name: 'First', notes: '' });
  await ask(session, 'runs/book', { runId, mark: measured(1) });
  await ask(session, 'rigs/keep', { name: 'Lab 1', setUp: setUp('Pear') });
  const beganAtIso = new Date(time.clock.wallMs() - 86_400_000).toISOString();
  const atIso = new Date(time.clock.wallMs()).toISOString();
  const { fermentId } = await ask(session, 'ferments/begin', {
    stated: { name: 'Pear', beganAtIso, volumeMl: 1000, sugarG: null, wentIn: 'pear juice' },
  });
  const entry = { fermentId, read: { ...nothingRead, atIso, massG: 900 } };
  await ask(session, 'ferments/enter', entry);
  return { session, runsFolder, runId, entry };
}

const measured = (massG: number) => ({ type: 'liquid-mass', liquid: 'residue', massG }) as const;

type Kept = Awaited<ReturnType<typeof before>>;

test.each<[string, (kept: Kept) => [string, unknown], Partial<Awaited<ReturnType<typeof shown>>>]>([
  [
    'a set-up',
    () => ['rigs/keep', { name: 'Lab 2', setUp: setUp('Pear') }],
    { rigs: ['Lab 1', 'Lab 2'] },
  ],
  [
    'a name',
    ({ runId }) => ['runs/rename', { runId, name: 'Second', notes: '' }],
    { name: 'Second' },
  ],
  [
    'a measurement',
    ({ runId }) => ['runs/book', { runId, mark: measured(2) }],
    { measured: [1, 2] },
  ],
  ['an entry', ({ entry }) => ['ferments/enter', entry], { entries: [1, 2] }],
])(
  '%s that is given while the folder comes back takes nothing away that was kept before',
  async (_what, deed, after) => {
    let told = 0;
    for (let looks = 0; looks < mostLooks; looks += 1) {
      const disk = createComingDisk();
      const kept = await before(disk.faults);
      const { session, runsFolder, runId } = kept;
      const first = await shown(session, runId);
      const [name, body] = deed(kept);
      disk.goAwayFor(looks);
      const { ok } = await session.handle(name, body, teacher);
      if (ok) told += 1;
      disk.goAwayFor(0);
      const expected = ok ? { ...first, ...after } : first;
      expect(await shown(session, runId), `after ${looks} looks`).toEqual(expected);
      await session.close();
      const next = await setUpSession({ runsFolder });
      expect(await shown(next.session, runId)).toEqual(expected);
      await next.session.close();
    }
    expect(told).toBeGreaterThan(0);
  },
);

test('a folder that is away is not told as one in which nothing is kept', async () => {
  const disk = createComingDisk();
  const { session, entry } = await before(disk.faults);
  const { fermentId } = entry;
  const keep = { fermentId, band: usualWarmthBand, channel: 'ferment' };
  for (const [name, body] of [
    ['rigs/list', {}],
    ['ferments/list', {}],
    ['ferments/enter', entry],
    ['runs/list', {}],
    ['runs/trashed', {}],
    ['warmth/report', { fermentId }],
    ['packs/make-ferments', { packId: 'week', fermentIds: [fermentId] }],
    ['run/start', { settings: defaultRunSettings }],
  ] as const) {
    disk.goAwayFor(1000);
    const answer = await session.handle(name, body, teacher);
    expect(answer, name).toMatchObject({ ok: false, error: { kind: 'folder-unavailable' } });
  }
  disk.goAwayFor(0);
  await ask(session, 'warmth/keep', keep);
});
