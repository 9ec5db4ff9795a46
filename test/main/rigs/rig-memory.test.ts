import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { createRigMemory, nodeFileLayer } from '#main';
import { contractLimits, defaultRunSettings, type PortInfo, setUpSchema } from '#shared-core';
import { createManualTime } from '../support/manual-time.ts';
import { ask, setUpSession, teacher } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const setUp = setUpSchema.parse({
  name: 'Pear-juice ferment',
  charge: { volumeMl: 400, strengthAbv: 8.5 },
  source: { kind: 'serial', path: '/dev/ttyACM0', channels: { 'channel-2': 'head' } },
  probeKind: 'platinum-a',
  correction: { offsetK: -0.31, gain: 1.002, standardUncertaintyK: 0.06 },
  rig: { description: 'Short column', plates: 5, heatW: 180, columnLossW: null },
  pressureFrom: 'barometer',
  altitudeM: 540,
  leastStrengthAbv: 82,
});

const probePort: PortInfo = {
  path: '/dev/ttyACM0',
  manufacturer: null,
  vendorId: '2341',
  productId: '0043',
  serialNumber: 'A1',
  likelyProbe: true,
};

function memoryIn(runsFolder: string, ports: readonly PortInfo[] = []) {
  const { clock } = createManualTime();
  const mayWrite = () => true;
  return createRigMemory({
    files: nodeFileLayer,
    clock,
    runsFolder,
    mayWrite,
    ports: async () => ports,
  });
}

describe('set-ups kept from one lesson to the next', () => {
  test('rigs and the last set-up outlive the program, and a rehearsal is remembered as one', async () => {
    const first = await setUpSession();
    expect(await ask(first.session, 'rigs/list', {})).toEqual({
      last: null,
      rigs: [],
      hasRehearsed: false,
    });
    await ask(first.session, 'rigs/keep', { name: 'Store room', setUp });
    await ask(first.session, 'rigs/keep', { name: ' Lab 2 ', setUp });
    await ask(first.session, 'rigs/keep', { name: null, setUp });
    await first.session.close();
    const second = await setUpSession({ runsFolder: first.runsFolder });
    const known = await ask(second.session, 'rigs/list', {});
    expect(known.last?.setUp).toEqual(setUp);
    expect(known.rigs.map((rig) => [rig.name, rig.setUp])).toEqual([
      ['Lab 2', setUp],
      ['Store room', setUp],
    ]);
    const changed = { ...setUp, leastStrengthAbv: 70 };
    await ask(second.session, 'rigs/keep', { name: 'Lab 2', setUp: changed });
    const left = await ask(second.session, 'rigs/forget', { name: 'Store room' });
    expect(left.rigs.map(({ name, setUp }) => [name, setUp.leastStrengthAbv])).toEqual([
      ['Lab 2', 70],
    ]);
  });

  test('the checks and the barometer of one day have no place in a rig', () => {
    const more = { ...setUp, safetyConfirms: [{ check: 'vent' }], stationPressure: '1013' };
    expect(setUpSchema.parse(more)).toEqual(setUp);
  });

  test('a probe is looked for at the port where it is plugged in today', async () => {
    const runsFolder = await temporaryFolder();
    await memoryIn(runsFolder, [probePort]).keep('Lab 2', setUp);
    const pathNow = async (ports: readonly PortInfo[]) => {
      const known = await memoryIn(runsFolder, ports).list();
      const source = known.ok ? known.value.rigs[0]?.setUp.source : null;
      return source?.kind === 'serial' ? source.path : null;
    };
    const moved = { ...probePort, path: '/dev/ttyACM1' };
    const other = { ...probePort, serialNumber: 'B7' };
    expect([
      await pathNow([]),
      await pathNow([moved]),
      await pathNow([other, moved]),
      await pathNow([moved, { ...moved, path: '/dev/ttyACM2' }]),
    ]).toEqual(['/dev/ttyACM0', '/dev/ttyACM1', '/dev/ttyACM1', '/dev/ttyACM0']);
  });

  test('a rig of an older version opens with the usual for what it lacks; a damaged one takes no other away', async () => {
    const runsFolder = await temporaryFolder();
    const file = path.join(runsFolder, 'kept-rigs.json');
    const keptAtIso = '2026-01-01T09:00:00.000Z';
    const charge = { volumeMl: 350, strengthAbv: 9 };
    const old = { name: 'Old', keptAtIso, setUp: { name: 'Pear', charge } };
    const damaged = { name: 'Damaged', keptAtIso, setUp: { name: 'Pear', charge: 'much' } };
    const text = JSON.stringify({
      format: 'still-head-rigs',
      version: 1,
      last: null,
      rigs: [old, damaged],
    });
    await writeFile(file, text);
    const memory = memoryIn(runsFolder);
    const known = await memory.list();
    expect(known).toMatchObject({
      ok: true,
      value: { rigs: [{ name: 'Old', setUp: { leastStrengthAbv: 80, source: null } }] },
    });
    expect(await readFile(file, 'utf8')).toBe(text);
    await memory.keep('New', setUp);
    const files = await readdir(runsFolder);
    const aside = files.find((name) => name.endsWith('.not-understood')) ?? '';
    expect(await readFile(path.join(runsFolder, aside), 'utf8')).toBe(text);
    const after = await memory.list();
    expect(after.ok && after.value.rigs.map(({ name }) => name)).toEqual(['New', 'Old']);
  });

  test('what a newer version wrote is left as it is, and keeping a rig says so', async () => {
    const runsFolder = await temporaryFolder();
    const file = path.join(runsFolder, 'kept-rigs.json');
    const text = '{"format":"still-head-rigs","version":2,"shelves":[]}';
    await writeFile(file, text);
    const memory = memoryIn(runsFolder);
    expect(await memory.list()).toMatchObject({ ok: true, value: { rigs: [], last: null } });
    expect(await memory.keep('Lab 2', setUp)).toEqual({
      ok: false,
      error: { kind: 'kept-by-newer', path: file },
    });
    expect(await readdir(runsFolder)).toEqual(['kept-rigs.json']);
    expect(await readFile(file, 'utf8')).toBe(text);
  });

  test('there is an end to rigs, and a viewer keeps none', async () => {
    const { session } = await setUpSession();
    for (let index = 0; index < contractLimits.rigs; index += 1) {
      await ask(session, 'rigs/keep', { name: `Rig ${index}`, setUp });
    }
    const tooMany = await session.handle('rigs/keep', { name: 'One more', setUp }, teacher);
    const again = await session.handle('rigs/keep', { name: 'Rig 7', setUp }, teacher);
    const viewer = await session.handle(
      'rigs/keep',
      { name: 'Rig 7', setUp },
      { mayCommand: false },
    );
    expect([tooMany, again, viewer]).toMatchObject([
      { ok: false, error: { kind: 'request-invalid' } },
      { ok: true },
      { ok: false, error: { kind: 'viewer-may-not-command' } },
    ]);
  });

  test('the start of a rehearsal is noted, that of a run is not', async () => {
    const { session, probeHub } = await setUpSession();
    const settings = defaultRunSettings;
    await ask(session, 'run/start', { settings });
    await ask(session, 'run/stop', {});
    expect((await ask(session, 'rigs/list', {})).hasRehearsed).toBe(false);
    await probeHub.connect({ kind: 'demo', rig: 'glass-bead-column', timeScale: 1, seed: 1 });
    await ask(session, 'run/start', { settings });
    expect((await ask(session, 'rigs/list', {})).hasRehearsed).toBe(true);
  });
});

test('a source of a rig is a real probe, never the simulated still', () => {
  expect(setUpSchema.safeParse({ ...setUp, source: { kind: 'demo' } }).success).toBe(false);
});
